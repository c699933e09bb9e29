using System.Runtime.InteropServices;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Solving;

/// <summary>How far a graph of positions goes.</summary>
internal enum GraphReach
{
    /// <summary>To the end of the turn.</summary>
    Turn,

    /// <summary>To the end of the game.</summary>
    Game,
}

/// <summary>Everything that may happen from a position on, as nodes with what follows each, in flat arrays. Made once through the machine; never changes.</summary>
/// <remarks>
/// A node is a decision, a chance event or an end. Ends with the same measure are one node. So are decisions of one seat, made right after a chance event,
/// between the same followers; and chance events that differ only in how the dice lay that are about to be rolled. Safe to share between threads.
/// </remarks>
internal sealed class PositionGraph
{
    /// <summary>The kind of a node at which chance decides; a node at which a seat decides has its number.</summary>
    public const int Chance = -1;

    /// <summary>The kind of a node at which play stops.</summary>
    public const int End = -2;

    private readonly List<sbyte> _kinds = [];
    private readonly List<int> _firsts = [];
    private readonly List<int> _counts = [];
    private readonly List<int> _measured = [];
    private readonly List<int> _targets = [];
    private readonly List<long> _weights = [];

    /// <summary>The graph from a position on.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="from">Where play goes on; it is not changed.</param>
    /// <param name="reach">Where it stops.</param>
    /// <param name="measure">What is asked there.</param>
    /// <exception cref="NotPlayableException">Somebody decides in secret, or there are more than <see cref="GraphBuilder.MostPositions"/> positions.</exception>
    public static PositionGraph Of(CoursePlan plan, TableState from, GraphReach reach, Measure measure)
    {
        var graph = new PositionGraph();
        graph.Root = new GraphBuilder(plan, graph, reach, measure).Build(from.Copy());
        return graph;
    }

    /// <summary>Where play goes on.</summary>
    public int Root { get; private set; }

    /// <summary>How many nodes there are.</summary>
    public int Count => _kinds.Count;

    /// <summary>How many arrows lead from a node to one that follows.</summary>
    public int Arrows => _targets.Count;

    /// <summary>The seat that decides, <see cref="Chance"/> or <see cref="End"/>.</summary>
    public int Kind(int node) => _kinds[node];

    /// <summary>What was measured at an end.</summary>
    public int Measured(int node) => _measured[node];

    /// <summary>The nodes that follow, none twice.</summary>
    public ReadOnlySpan<int> Followers(int node) => CollectionsMarshal.AsSpan(_targets).Slice(_firsts[node], _counts[node]);

    /// <summary>By follower: its weight; the chance of one is its weight over their sum. Of a decision they mean nothing.</summary>
    public ReadOnlySpan<long> Weights(int node) => CollectionsMarshal.AsSpan(_weights).Slice(_firsts[node], _counts[node]);

    /// <summary>Adds a node whose followers are not known yet.</summary>
    internal int Add(int kind, int measured = 0)
    {
        _kinds.Add(checked((sbyte)kind));
        _firsts.Add(0);
        _counts.Add(0);
        _measured.Add(measured);
        return Count - 1;
    }

    /// <summary>Says what follows a node.</summary>
    internal void Link(int node, ReadOnlySpan<(int Node, long Weight)> followers)
    {
        (_firsts[node], _counts[node]) = (_targets.Count, followers.Length);
        foreach ((int follower, long weight) in followers)
        {
            _targets.Add(follower);
            _weights.Add(weight);
        }
    }
}
