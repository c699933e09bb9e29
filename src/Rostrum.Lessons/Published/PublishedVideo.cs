using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>A video that is out, with what it said and by which rules.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Date">The day up to which it was right, as year-month-day.</param>
public sealed record PublishedVideo(string Title, string Date)
{
    /// <summary>Where it is seen; only shown, never fetched. Empty where nobody said.</summary>
    public string Address { get; init; } = "";

    /// <summary>How long it is; null where nobody said.</summary>
    public VideoTime? Length { get; init; }

    /// <summary>The sources of the sheet: the name of each with its title, printing and date in words.</summary>
    public ImmutableArray<(string Name, string Words)> Sources { get; init; } = [];

    /// <summary>When it says which printing it teaches; null where it does not.</summary>
    public VideoTime? PrintingAt { get; init; }

    /// <summary>The rules that it says.</summary>
    public ImmutableArray<PublishedRule> Rules { get; init; } = [];

    /// <summary>The sentences in which a value or ruling is said that can be asked again.</summary>
    public ImmutableArray<PublishedSentence> Sentences { get; init; } = [];

    /// <summary>The positions that these ask, each with a short sum of what lies on the table.</summary>
    public ImmutableArray<(string Name, string Sum)> Positions { get; init; } = [];

    /// <summary>The rules that there were and that it does not say.</summary>
    public ImmutableArray<string> NotSaid { get; init; } = [];

    /// <summary>How many certain findings the review of its captions has; not written to the file.</summary>
    public int Findings { get; init; }

    /// <summary>How many sentences with values its script has that its captions do not hold; 0 for one that was read, for the file does not say.</summary>
    public int Unheard { get; init; }

    /// <summary>Where its title stands; null for one that is not written yet.</summary>
    public SourceSpan? At { get; init; }

    /// <summary>Title and day, which no two videos share.</summary>
    public string InWords => $"{Title} ({Date})";
}

/// <summary>A rule that a video says, as it was then.</summary>
/// <param name="Clause">Its name with its section before it, such as <c>score/plates</c>, and before that the variant that brings it.</param>
/// <param name="Times">When it is said, at least once, in order.</param>
/// <param name="Says">The sentence that it read back as.</param>
/// <param name="Means">What it meant as its author wrote it; empty where only the sentence says it.</param>
/// <param name="Status">Which reading was followed, or which were open, in words; empty for a rule with one meaning.</param>
/// <param name="Cite">Where the rules said so, in words.</param>
public sealed record PublishedRule(string Clause, ImmutableArray<VideoTime> Times, string Says, string Means, string Status, string Cite);

/// <summary>A sentence that a video says, with what its values must equal.</summary>
/// <param name="Time">When it begins.</param>
/// <param name="Said">The sentence in the form of a lesson: <c>There are [three](fact:glazes) glazes.</c></param>
public sealed record PublishedSentence(VideoTime Time, string Said);
