using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>Which spaces of a board of squares touch, lie in line or lie so many steps apart. Holds nothing of any position.</summary>
/// <remarks>Spaces are named by <see cref="SpaceName.Index"/>. Built once for a board (time grows with its spaces); ask <see cref="Of"/> once and
/// keep the answer. Safe to share between threads: distances are worked out when first asked, and two threads that ask at once work out the same.</remarks>
public sealed partial class BoardGeometry
{
    private static readonly (int Columns, int Rows)[] SideSteps = [(0, 1), (-1, 0), (1, 0), (0, -1)];
    private static readonly (int Columns, int Rows)[] CornerSteps = [(-1, 1), (1, 1), (-1, -1), (1, -1)];

    private readonly SquareGrid _grid;
    private readonly Touching _touching;
    private readonly int[][] _sides;
    private readonly int[][] _corners;
    private readonly int[][] _neighbours;
    private readonly int[]?[] _distances;

    private BoardGeometry(SquareGrid grid, Touching touching)
    {
        _grid = grid;
        _touching = touching;
        _sides = TouchedBy(SideSteps);
        _corners = TouchedBy(CornerSteps);
        _neighbours = TouchedBy(NeighbourSteps);
        _distances = new int[grid.Count][];
    }

    /// <summary>How many spaces the board has.</summary>
    public int Count => _grid.Count;

    private (int Columns, int Rows)[] NeighbourSteps => _touching switch
    {
        Touching.Sides => SideSteps,
        Touching.Corners => CornerSteps,
        _ => [.. SideSteps, .. CornerSteps],
    };

    /// <summary>The geometry of a board.</summary>
    /// <param name="board">A board of squares; no two of its spaces share column and row.</param>
    public static BoardGeometry Of(BoardFacts board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return new BoardGeometry(new SquareGrid(board), board.Neighbours);
    }

    /// <summary>The spaces that touch a space in the way that the board says; in reading order, never the space itself.</summary>
    public ReadOnlySpan<int> Neighbours(int space) => _neighbours[space];

    /// <summary>The spaces that share a side with a space, whatever the board calls neighbours; in reading order.</summary>
    public ReadOnlySpan<int> Sides(int space) => _sides[space];

    /// <summary>The spaces that share only a corner with a space, whatever the board calls neighbours; in reading order.</summary>
    public ReadOnlySpan<int> Corners(int space) => _corners[space];

    /// <summary>The space one step away, round the edge of a board that wraps; null past the edge or where no space is.</summary>
    public int? Step(int space, Direction direction)
    {
        ArgumentNullException.ThrowIfNull(direction);
        return StepBy(space, direction.Columns, direction.Rows);
    }

    /// <summary>The fewest steps from neighbour to neighbour; 0 from a space to itself, null where there is no way.</summary>
    /// <remarks>Breadth-first search. Cost: one walk over the board for each <paramref name="from"/> that is ever asked.</remarks>
    public int? Distance(int from, int to)
    {
        int[] all = _distances[from] ??= DistancesFrom(from);
        return all[to] < 0 ? null : all[to];
    }

    /// <summary>The spaces that lack a neighbour which an inner space has: past the edge or at a missing space.</summary>
    /// <returns>In reading order; empty for a board that wraps and misses no space.</returns>
    public ImmutableArray<int> Rim() =>
        [.. Enumerable.Range(0, Count).Where(s => NeighbourSteps.Any(d => StepBy(s, d.Columns, d.Rows) is null))];

    private int? StepBy(int space, int columns, int rows) => _grid.At(_grid.Column(space) + columns, _grid.Row(space) + rows);

    private int[][] TouchedBy((int Columns, int Rows)[] steps) =>
        [.. Enumerable.Range(0, Count).Select(s => Distinct(s, steps.Select(d => StepBy(s, d.Columns, d.Rows))))];

    // A board that wraps and is one or two wide reaches a space in two ways, or itself.
    private static int[] Distinct(int self, IEnumerable<int?> spaces) => [.. spaces.OfType<int>().Where(s => s != self).Distinct().Order()];

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
