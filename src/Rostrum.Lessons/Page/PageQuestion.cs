using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>A place where the sources are silent or disagree, and what the lesson does about it.</summary>
/// <param name="Question">The question, as one would ask the publisher.</param>
/// <param name="IsConflict">True if sources disagree, false if they are silent.</param>
/// <param name="Readings">The possible answers.</param>
/// <param name="Pages">Where the matter stands, such as <c>book 7, player aid</c>.</param>
/// <param name="Follows">What the lesson follows; empty if it leaves the question open.</param>
/// <param name="Why">The reason for that choice, or who was asked.</param>
public sealed record PageQuestion(
    string Question,
    bool IsConflict,
    ImmutableArray<SlipReading> Readings,
    string Pages,
    string Follows,
    string Why);
