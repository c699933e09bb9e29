using System.Collections.Immutable;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Order;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Findings;

/// <summary>A script held against the sheet as a whole: what it says, in which order, and in which words.</summary>
public sealed record ScriptReport
{
    /// <summary>What was found and is not dismissed, what is most certain and costs most first.</summary>
    public ImmutableArray<ScriptFinding> Findings { get; init; } = [];

    /// <summary>What was found and let stand, with the note.</summary>
    public ImmutableArray<(ScriptFinding Finding, Dismissal Dismissal)> Dismissed { get; init; } = [];

    /// <summary>Every clause with the way in which the script deals with it.</summary>
    public ImmutableArray<ClauseCover> Clauses { get; init; } = [];

    /// <summary>The terms that are used too early, the costliest first.</summary>
    public ImmutableArray<ForwardReference> Forward { get; init; } = [];

    /// <summary>The best order of the topics; the present one where nothing is used too early.</summary>
    public TopicOrder Order { get; init; } = new([], 0, true);

    /// <summary>How easily each topic is followed, in the order of the lesson.</summary>
    public ImmutableArray<Readability> Readability { get; init; } = [];

    /// <summary>How easily the whole is followed.</summary>
    public Readability Whole => Readability.Aggregate(new Readability(0, 0, 0), (a, b) => a.And(b));
}
