using System.Collections.Immutable;

namespace Rostrum.Lessons.Coverage;

/// <summary>How a lesson deals with a clause.</summary>
public enum CoverStatus
{
    /// <summary>It is said.</summary>
    Said,

    /// <summary>It is left out on purpose.</summary>
    LeftOut,

    /// <summary>Only the caption of a shot says it, so nobody hears it.</summary>
    OnlyShown,

    /// <summary>Some rows of the table are said, and some never.</summary>
    InPart,

    /// <summary>Its name is said and its rule is not found: it may be said in other words. This is wrong too often to be told unasked.</summary>
    PerhapsNeverSaid,

    /// <summary>It is never said.</summary>
    NeverSaid,
}

/// <summary>A clause with the way in which a lesson deals with it.</summary>
/// <param name="Clause">The clause.</param>
/// <param name="Status">How the lesson deals with it.</param>
/// <param name="Topics">The 0-based topics that teach it: those that the lesson names for it, else those that check a value of it or say it best.</param>
public sealed record ClauseCover(LessonClause Clause, CoverStatus Status, ImmutableArray<int> Topics)
{
    /// <summary>The numbers of a table that are never said; empty unless it is said in part.</summary>
    public ImmutableArray<long> Missing { get; init; } = [];

    /// <summary>The sentence that says it, or the caption that shows it; 0-based among those of the script, -1 for none.</summary>
    internal int Sentence { get; init; } = -1;

    /// <summary>How well the best place says it, 0 to 1: see <see cref="ClauseMatch"/>.</summary>
    internal double Score { get; init; }

    /// <summary>How many sentences say it together, from <see cref="Sentence"/> on.</summary>
    internal int Sentences { get; init; }
}
