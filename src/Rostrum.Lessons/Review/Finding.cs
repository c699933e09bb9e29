using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Review;

/// <summary>What a finding of a recording is about.</summary>
public enum FindingKind
{
    /// <summary>A number that the sheet gives otherwise.</summary>
    WrongValue,

    /// <summary>A rule that was never said.</summary>
    NeverSaid,

    /// <summary>A table of which a row was passed over.</summary>
    RowMissing,

    /// <summary>A word that the sheet does not use for the thing.</summary>
    WrongTerm,
}

/// <summary>Something in a recording that does not agree with the sheet.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Time">When it is said; for a rule that was never said null.</param>
/// <param name="Said">The words that were heard; empty where nothing was said.</param>
/// <param name="Sheet">What the sheet says, as a sentence.</param>
/// <param name="Clause">The clause's name.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
/// <param name="Confidence">How sure it is, 0 to 1.</param>
/// <param name="Because">Why it is taken for one.</param>
public sealed record Finding(FindingKind Kind, TimeSpan? Time, string Said, string Sheet, string Clause, Citation? Cite, double Confidence, string Because)
{
    /// <summary>True where the presenter's script says so and no clause by itself, such as a number of an example.</summary>
    public bool IsOfScript { get; init; }

    /// <summary>The right number, for a wrong value; null otherwise.</summary>
    public long? Right { get; init; }

    /// <summary>The number that was said, for a wrong value; null otherwise.</summary>
    public long? Heard { get; init; }
}

/// <summary>A recording held against the sheet.</summary>
/// <param name="Certain">What is certainly wrong; by time, rules that were never said last.</param>
/// <param name="Listen">What somebody should listen to: it may be wrong.</param>
/// <param name="Coverage">Every rule with the time at which it is said; null where it is not.</param>
/// <param name="Refused">Why the recording was not held against the sheet, as a sentence; null where it was.</param>
/// <param name="Words">How many words were heard.</param>
/// <param name="Length">From the first word to the last.</param>
public sealed record RecordingReport(ImmutableArray<Finding> Certain, ImmutableArray<Finding> Listen, ImmutableArray<RuleHeard> Coverage, string? Refused, int Words, TimeSpan Length)
{
    /// <summary>The topics as they were filmed, with their times and their pace.</summary>
    public FilmedTopics Topics { get; init; } = FilmedTopics.None;

    /// <summary>The pace of the whole, pauses included; 0 where nothing was heard.</summary>
    public double WordsAMinute => Length > TimeSpan.Zero ? Words / Length.TotalMinutes : 0;
}

/// <summary>A rule, and when it was said.</summary>
/// <param name="Clause">Its name.</param>
/// <param name="Section">Its section of the sheet.</param>
/// <param name="Said">How much of it was said at its best place, 0 to 1.</param>
/// <param name="Time">When; null where it was not said.</param>
public sealed record RuleHeard(string Clause, string Section, double Said, TimeSpan? Time);
