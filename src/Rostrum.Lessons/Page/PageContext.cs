namespace Rostrum.Lessons.Page;

/// <summary>What the writers of one page share: where the words go and what things are called in links.</summary>
/// <param name="lesson">The page as it was given.</param>
internal sealed class PageContext(LessonPage lesson)
{
    private readonly HashSet<string> _mentions = lesson.Topics.SelectMany(PageMentions.ValuesIn).Select(value => value.SlipId).ToHashSet(StringComparer.Ordinal);
    private readonly HashSet<string> _written = new(StringComparer.Ordinal);
    private int _figures;

    /// <summary>The page so far.</summary>
    public Markup Out { get; } = new();

    /// <summary>The ids given out so far.</summary>
    public AnchorNames Names { get; } = new();

    /// <summary>The id of a slip.</summary>
    public string SlipAnchor(string slipId) => Names.Of("slip", slipId);

    /// <summary>The id of a topic.</summary>
    public string TopicAnchor(string slug) => Names.Of("topic", slug);

    /// <summary>The id that the first mention of a slip carries; null for the mentions after it.</summary>
    public string? MentionAnchor(string slipId) => _written.Add(slipId) ? Names.Of("said", slipId) : null;

    /// <summary>Where a slip leads back to; null if nothing mentions it.</summary>
    public string? BackTarget(string slipId) => _mentions.Contains(slipId) ? Names.Of("said", slipId) : null;

    /// <summary>A name for the next figure, counted from 1.</summary>
    public string NextFigure() => Names.Of("figure", (++_figures).ToString(System.Globalization.CultureInfo.InvariantCulture));
}
