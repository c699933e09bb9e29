using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <content>What lies in line: rows, columns, diagonals.</content>
public sealed partial class BoardGeometry
{
    private static readonly (int Columns, int Rows)[] Straight = [(1, 0), (0, 1)];
    private static readonly (int Columns, int Rows)[] StraightAndDiagonal = [(1, 0), (0, 1), (1, 1), (1, -1)];

    /// <summary>The space as far on the other side of <paramref name="t"/> as <paramref name="s"/> is on this side: along their row, column or
    /// diagonal, else by the same offset.</summary>
    /// <returns>Null where no space is there, and where both are the same space.</returns>
    public int? Across(int s, int t) =>
        s == t ? null : _grid.At((2 * _grid.Column(t)) - _grid.Column(s), (2 * _grid.Row(t)) - _grid.Row(s));

    /// <summary>The spaces strictly between two that share a row, a column or a diagonal; the shorter way round on a board that wraps.</summary>
    /// <returns>From the side of <paramref name="s"/> on, missing spaces left out; empty where the two touch or are not in line.</returns>
    public ImmutableArray<int> Between(int s, int t)
    {
        (int columns, int rows) = _grid.Offset(s, t);
        int steps = Math.Max(Math.Abs(columns), Math.Abs(rows));
        bool inLine = columns == 0 || rows == 0 || Math.Abs(columns) == Math.Abs(rows);
        return steps < 2 || !inLine
            ? []
            : [.. Enumerable.Range(1, steps - 1).Select(i => StepBy(s, i * columns / steps, i * rows / steps)).OfType<int>()];
    }

    /// <summary>All straight lines of so many spaces: along rows and columns, and along diagonals where corners count as neighbours.</summary>
    /// <param name="length">At least 1.</param>
    /// <returns>Each line once: rows from the left, columns from below, rising diagonals, then falling ones. Only unbroken runs of spaces that
    /// are there, none twice in one line.</returns>
    public ImmutableArray<ImmutableArray<int>> Straights(int length)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(length, 1);
        (int Columns, int Rows)[] directions = _touching == Touching.Sides ? Straight : StraightAndDiagonal;
        return
        [
            .. directions.SelectMany(d => Enumerable.Range(0, Count).Select(s => Stretch(s, d, length)))
                .OfType<ImmutableArray<int>>()
                .DistinctBy(line => string.Join(',', line.Order())),
        ];
    }

    /// <summary>The spaces of a column from bottom to top, or of a row from left to right; missing ones left out.</summary>
    /// <param name="columns">True for a column, false for a row.</param>
    /// <param name="index">0-based from the left, or from the lowest row.</param>
    public ImmutableArray<int> Line(bool columns, int index) => columns
        ? [.. Enumerable.Range(0, _grid.Height).Select(row => _grid.AtPlain(index, row)).OfType<int>()]
        : [.. Enumerable.Range(0, _grid.Width).Select(column => _grid.AtPlain(column, index)).OfType<int>()];

    /// <summary>The 0-based number of the column (from the left) or row (from the lowest) in which a space stands.</summary>
    public int LineIndexOf(bool columns, int space) => columns ? _grid.Column(space) : _grid.Row(space);

    // Null where the stretch leaves the board, meets a missing space, or comes round to where it began.
    private ImmutableArray<int>? Stretch(int from, (int Columns, int Rows) step, int length)
    {
        var spaces = ImmutableArray.CreateBuilder<int>();
        for (int i = 0; i < length; i++)
        {
            if (StepBy(from, i * step.Columns, i * step.Rows) is not { } space || (i > 0 && space == from))
            {
                return null;
            }

            spaces.Add(space);
        }

        return spaces.ToImmutable();
    }
}
