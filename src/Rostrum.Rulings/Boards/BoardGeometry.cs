using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>Which spaces of a board touch, lie in line or lie so many steps apart. Holds nothing of any position.</summary>
/// <remarks>Spaces are named by <see cref="SpaceName.Index"/>. Built once for a board (time grows with its spaces); ask <see cref="Of"/> once and
/// keep the answer. Safe to share between threads: distances are worked out when first asked, and two threads that ask at once work out the same.</remarks>
public sealed partial class BoardGeometry
{
    private readonly Lattice? _lattice;
    private readonly SpaceNet _net;
    private readonly int[][] _sides;
    private readonly int[][] _corners;
    private readonly int[][] _neighbours;
    private readonly int[]?[] _distances;

    private BoardGeometry(BoardFacts board)
    {
        _lattice = board.Layout == BoardLayout.Points ? null : new Lattice(board);
        _net = _lattice is null ? new PointNet(board) : new LatticeNet(_lattice, board);
        _sides = [.. Enumerable.Range(0, Count).Select(s => Distinct(s, _net.Sides(s)))];
        _corners = [.. Enumerable.Range(0, Count).Select(s => Distinct(s, _net.Corners(s)))];
        _neighbours = [.. Enumerable.Range(0, Count).Select(s => Distinct(s, _net.Neighbours(s)))];
        _distances = new int[Count][];
    }

    /// <summary>How many spaces the board has.</summary>
    public int Count => _net.Count;

    /// <summary>The geometry of a board.</summary>
    /// <param name="board">A board; no two of its spaces share column and row.</param>
    public static BoardGeometry Of(BoardFacts board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return new BoardGeometry(board);
    }

    /// <summary>The spaces that touch a space in the way that the board says; in reading order, never the space itself.</summary>
    public ReadOnlySpan<int> Neighbours(int space) => _neighbours[space];

    /// <summary>The spaces that share a side with a space, whatever the board calls neighbours; in reading order. For points, all that touch.</summary>
    public ReadOnlySpan<int> Sides(int space) => _sides[space];

    /// <summary>The spaces that share only a corner with a space, whatever the board calls neighbours; in reading order. None on hexes and points.</summary>
    public ReadOnlySpan<int> Corners(int space) => _corners[space];

    /// <summary>The space one step away, round the edge of a board that wraps; null past the edge, where no space is, and where the direction
    /// has no meaning (north and south on hexes, all on points).</summary>
    public int? Step(int space, Direction direction)
    {
        ArgumentNullException.ThrowIfNull(direction);
        return _net.Step(space, direction);
    }

    /// <summary>The fewest steps from neighbour to neighbour; 0 from a space to itself, null where there is no way.</summary>
    /// <remarks>Breadth-first search. Cost: one walk over the board for each <paramref name="from"/> that is ever asked.</remarks>
    public int? Distance(int from, int to)
    {
        int[] all = _distances[from] ??= DistancesFrom(from);
        return all[to] < 0 ? null : all[to];
    }

    /// <summary>The spaces that lack a neighbour on the outside, where an inner space has one. Missing spaces are outside where they hang together,
    /// side by side, with what lies past the edge; a hole inside the board is not.</summary>
    /// <returns>In reading order; empty for a board that wraps, and for points, which have no rim of their own.</returns>
    public ImmutableArray<int> Rim() => [.. Enumerable.Range(0, Count).Where(_net.IsRim)];

    /// <summary>The space as far on the other side of <paramref name="t"/> as <paramref name="s"/> is on this side: along their line, else by the
    /// same offset; for points, along a line in which both stand.</summary>
    /// <returns>Null where no space is there, and where both are the same space.</returns>
    public int? Across(int s, int t) => _net.Across(s, t);

    /// <summary>The spaces strictly between two that stand in one line; the shorter way round on a board that wraps and in a closed line.</summary>
    /// <returns>From the side of <paramref name="s"/> on, missing spaces left out; empty where the two touch or are not in line.</returns>
    public ImmutableArray<int> Between(int s, int t) => _net.Between(s, t);

    /// <summary>All straight lines of so many spaces: along rows and columns, and along diagonals where corners count as neighbours; on hexes along
    /// the three directions; for points along the lines of the sheet.</summary>
    /// <param name="length">At least 1.</param>
    /// <returns>Each line once: rows from the left, columns from below, rising diagonals, then falling ones. Only unbroken runs of spaces that
    /// are there, none twice in one line.</returns>
    public ImmutableArray<ImmutableArray<int>> Straights(int length)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(length, 1);
        return [.. _net.Straights(length).Distinct(SameSpaces.Instance)];
    }

    // A board that wraps and is one or two wide reaches a space in two ways, or itself.
    private static int[] Distinct(int self, IEnumerable<int> spaces) => [.. spaces.Where(s => s != self).Distinct().Order()];

    // Two lines of the same spaces are one, wherever they begin.
    private sealed class SameSpaces : IEqualityComparer<ImmutableArray<int>>
    {
        public static SameSpaces Instance { get; } = new();

        public bool Equals(ImmutableArray<int> one, ImmutableArray<int> other) => one.Length == other.Length && one.Order().SequenceEqual(other.Order());

        public int GetHashCode(ImmutableArray<int> line)
        {
            int sum = line.Length;
            foreach (int space in line)
            {
                sum = unchecked(sum + ((space + 1) * (space + 7919)));
            }

            return sum;
        }
    }

    private int[] DistancesFrom(int from)
    {
        var steps = new int[Count];
        Array.Fill(steps, -1);
        steps[from] = 0;
        var waiting = new Queue<int>([from]);
        while (waiting.TryDequeue(out int space))
        {
            foreach (int next in _neighbours[space])
            {
                if (steps[next] < 0)
                {
                    steps[next] = steps[space] + 1;
                    waiting.Enqueue(next);
                }
            }
        }

        return steps;
    }
}
