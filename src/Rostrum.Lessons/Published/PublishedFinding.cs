using System.Collections.Immutable;
using Rostrum.Lessons.Film.Corrections;

namespace Rostrum.Lessons.Published;

/// <summary>A minute of a published video that is wrong now.</summary>
/// <param name="Video">The video.</param>
/// <param name="Time">When it is said.</param>
/// <param name="Clause">The rule, or what the value asks.</param>
/// <param name="Kind">What became of it.</param>
/// <param name="Then">What was said.</param>
/// <param name="Now">What holds now.</param>
/// <param name="Cite">Where the rules say so; <c>no page</c> where the sheet names none.</param>
/// <param name="Correction">The words of a correction line, without its time.</param>
/// <param name="Because">What is new since then and says so, such as a printing or a publisher's note; empty where nothing is.</param>
public sealed record PublishedFinding(PublishedVideo Video, VideoTime Time, string Clause, ChangeKind Kind, string Then, string Now, string Cite, string Correction, string Because)
{
    /// <summary>True for a value that is asked again, false for a rule.</summary>
    public bool IsValue { get; init; }

    /// <summary>True where what holds now is told by a formula of the sheet, for no sentence says what is new.</summary>
    public bool IsFormula { get; init; }
}

/// <summary>Something that changed since a video was published and makes nothing in it wrong.</summary>
/// <param name="Video">The video.</param>
/// <param name="About">The rule, source or position.</param>
/// <param name="Says">What is new, as a sentence.</param>
public sealed record PublishedNote(PublishedVideo Video, string About, string Says)
{
    /// <summary>A line that may be added to the description all the same, such as for a new printing; null for none.</summary>
    public Correction? Line { get; init; }
}

/// <summary>All published videos held against the sheet as it is now.</summary>
/// <param name="Videos">The videos.</param>
/// <param name="Findings">What is wrong now, by video, then by time.</param>
/// <param name="Notes">What changed and makes nothing wrong, by video.</param>
public sealed record PublishedReport(ImmutableArray<PublishedVideo> Videos, ImmutableArray<PublishedFinding> Findings, ImmutableArray<PublishedNote> Notes)
{
    /// <summary>The lines for the description of a video: one for each moment, in order; empty where nothing is wrong.</summary>
    /// <param name="video">One of the videos.</param>
    public string CorrectionsOf(PublishedVideo video) => CorrectionLines.Write(
        Findings.Where(f => ReferenceEquals(f.Video, video)).GroupBy(f => f.Time.At).Select(g => g.OrderBy(f => f.IsFormula).ThenBy(f => f.IsValue).First()).Select(f => new Correction(f.Time.At, f.Correction)));
}
