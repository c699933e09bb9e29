using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Everything that the web page of one lesson shows: words and values only, no rules.</summary>
/// <param name="Game">The game's name, such as <c>Kiln Night</c>.</param>
/// <param name="Title">The lesson's name; the one level 1 heading of the page.</param>
/// <param name="Presenter">Who speaks the lesson.</param>
/// <param name="CorrectAsOf">The day up to which the rules were checked, as readers see it, such as <c>25 November 2026</c>.</param>
/// <param name="Printing">Which printing of the rules is taught, such as <c>first printing</c>.</param>
/// <remarks>Lists compare by reference, so two pages with equal content are not equal records; compare what the writer makes of them.</remarks>
public sealed record LessonPage(string Game, string Title, string Presenter, string CorrectAsOf, string Printing)
{
    /// <summary>The language of all texts, as BCP 47 writes it.</summary>
    public string Language { get; init; } = "en";

    /// <summary>One to three sentences under the title; empty if there are none.</summary>
    public string Lead { get; init; } = "";

    /// <summary>The figure beside the title: usually the lesson's first one, taken out of its topic. Null for none.</summary>
    public PageBlock.Figure? Opening { get; init; }

    /// <summary>The slip that lies beside the opening figure, such as <c>E1/total</c>; null for none.</summary>
    public string? OpeningSlipId { get; init; }

    /// <summary>The topics in the order of the lesson.</summary>
    public ImmutableArray<PageTopic> Topics { get; init; } = [];

    /// <summary>
    /// Every slip that a checked value points to. The page lays each beside the topic that mentions it first;
    /// slips that no topic mentions come at the end.
    /// </summary>
    public ImmutableArray<PageSlip> Slips { get; init; } = [];

    /// <summary>The sources, weightiest first.</summary>
    public ImmutableArray<PageSource> Sources { get; init; } = [];

    /// <summary>Where the sources are silent or disagree.</summary>
    public ImmutableArray<PageQuestion> Questions { get; init; } = [];

    /// <summary>How many statements were checked and how they came out; null if nobody counted.</summary>
    public ClaimsSummary? Claims { get; init; }

    /// <summary>Says that the page is unofficial, such as <c>Unofficial. Rules in our own words; check the rulebook.</c></summary>
    public string UnofficialNote { get; init; } = "";
}
