using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>Squares or hexes in rows.</summary>
internal sealed class LatticeNet(Lattice lattice, BoardFacts board) : SpaceNet
{
    private static readonly (int Columns, int Rows)[] SquareSides = [(0, 1), (-1, 0), (1, 0), (0, -1)];
    private static readonly (int Columns, int Rows)[] SquareCorners = [(-1, 1), (1, 1), (-1, -1), (1, -1)];
    private static readonly (int Columns, int Rows)[] HexSides = [(-1, 1), (1, 1), (-2, 0), (2, 0), (-1, -1), (1, -1)];

    private static readonly (int Columns, int Rows)[] Straight = [(1, 0), (0, 1)];
    private static readonly (int Columns, int Rows)[] StraightAndDiagonal = [(1, 0), (0, 1), (1, 1), (1, -1)];
    private static readonly (int Columns, int Rows)[] HexLines = [(2, 0), (1, 1), (1, -1)];

    public override int Count => lattice.Count;

    private (int Columns, int Rows)[] SideSteps => lattice.IsHex ? HexSides : SquareSides;

    private (int Columns, int Rows)[] CornerSteps => lattice.IsHex ? [] : SquareCorners;

    private (int Columns, int Rows)[] NeighbourSteps => board.Neighbours switch
    {
        Touching.Sides => SideSteps,
        Touching.Corners => CornerSteps,
        _ => [.. SideSteps, .. CornerSteps],
    };

    private (int Columns, int Rows)[] Lines => lattice.IsHex ? HexLines : board.Neighbours == Touching.Sides ? Straight : StraightAndDiagonal;

    public override IEnumerable<int> Neighbours(int space) => Reached(space, NeighbourSteps);

    public override IEnumerable<int> Sides(int space) => Reached(space, SideSteps);

    public override IEnumerable<int> Corners(int space) => Reached(space, CornerSteps);

    public override int? Step(int space, Direction direction) =>
        lattice.By(space, lattice.IsHex && direction.Rows == 0 ? 2 * direction.Columns : direction.Columns, direction.Rows);

    public override int? Across(int s, int t) =>
        s == t ? null : lattice.At((2 * lattice.Column(t)) - lattice.Column(s), (2 * lattice.Row(t)) - lattice.Row(s));

    public override ImmutableArray<int> Between(int s, int t)
    {
        (int columns, int rows) = lattice.Offset(s, t);
        int steps = lattice.IsHex && rows == 0 ? Math.Abs(columns) / 2 : Math.Max(Math.Abs(columns), Math.Abs(rows));
        bool inLine = rows == 0 || Math.Abs(columns) == Math.Abs(rows) || (columns == 0 && !lattice.IsHex);
        return steps < 2 || !inLine
            ? []
            : [.. Enumerable.Range(1, steps - 1).Select(i => lattice.By(s, i * columns / steps, i * rows / steps)).OfType<int>()];
    }

    public override IEnumerable<ImmutableArray<int>> Straights(int length) =>
        Lines.SelectMany(d => Enumerable.Range(0, Count).Select(s => Stretch(s, d, length))).OfType<ImmutableArray<int>>();

    public override bool IsRim(int space) => NeighbourSteps.Any(d => lattice.IsOutside(space, d.Columns, d.Rows, SideSteps));

    private IEnumerable<int> Reached(int space, (int Columns, int Rows)[] steps) => steps.Select(d => lattice.By(space, d.Columns, d.Rows)).OfType<int>();

    // Null where the stretch leaves the board, meets a missing space, or comes round to where it began.
    private ImmutableArray<int>? Stretch(int from, (int Columns, int Rows) step, int length)
    {
        var spaces = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < length; i++)
        {
            if (lattice.By(from, i * step.Columns, i * step.Rows) is not { } space || (i > 0 && space == from))
            {
                return null;
            }

            spaces.Add(space);
        }

        return spaces.ToImmutable();
    }
}
