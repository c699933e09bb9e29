using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>Where the spaces of a board of squares or hexes lie: columns counted from the left, rows from the lowest, both 0-based. On hexes columns
/// count half steps, so that only every other place of a row can be a space.</summary>
internal sealed class Lattice
{
    private const int Missing = -1;

    private readonly BoardFacts _board;
    private readonly int[,] _spaces;

    public Lattice(BoardFacts board)
    {
        _board = board;
        IsHex = board.Layout == BoardLayout.Hexes;
        int width = Math.Max(board.Columns.Length, board.Spaces.Select(s => s.Column + 1).DefaultIfEmpty(0).Max());
        // On hexes that come round the last half step of the longer rows belongs to the width.
        Width = IsHex && board.Wraps ? width + (width % 2) : width;
        Height = Math.Max(board.Rows.Length, board.Spaces.Select(s => s.Row + 1).DefaultIfEmpty(0).Max());
        _spaces = new int[Width, Height];
        for (int i = 0; i < Width * Height; i++)
        {
            _spaces[i % Width, i / Width] = Missing;
        }

        foreach (BoardSpace space in board.Spaces)
        {
            _spaces[space.Column, space.Row] = space.Name.Index;
        }
    }

    /// <summary>True for hexes.</summary>
    public bool IsHex { get; }

    /// <summary>How many spaces there are.</summary>
    public int Count => _board.Spaces.Length;

    /// <summary>Columns, those without a space included.</summary>
    public int Width { get; }

    /// <summary>Rows, those without a space included.</summary>
    public int Height { get; }

    /// <summary>The space so far away, round the edge where the board wraps; null where there is none.</summary>
    public int? By(int space, int columns, int rows) => At(Column(space) + columns, Row(space) + rows);

    public int Column(int space) => _board.Spaces[space].Column;

    public int Row(int space) => _board.Spaces[space].Row;

    /// <summary>The space there, round the edge where the board wraps; null where there is none.</summary>
    public int? At(int column, int row) => _board.Wraps && Count > 0 ? AtPlain(Round(column, Width), Round(row, Height)) : AtPlain(column, row);

    /// <summary>The space there, never round the edge; null where there is none.</summary>
    public int? AtPlain(int column, int row) =>
        column >= 0 && column < Width && row >= 0 && row < Height && _spaces[column, row] != Missing ? _spaces[column, row] : null;

    /// <summary>How far it is from one space to another, to the right and upwards; the shorter way round where the board wraps, and of
    /// two equally long ones that which stays inside.</summary>
    public (int Columns, int Rows) Offset(int from, int to)
    {
        int columns = Column(to) - Column(from);
        int rows = Row(to) - Row(from);
        return _board.Wraps ? (Shorter(columns, Width), Shorter(rows, Height)) : (columns, rows);
    }

    private static int Shorter(int steps, int size) => 2 * Math.Abs(steps) <= size ? steps : steps - (Math.Sign(steps) * size);

    private static int Round(int at, int size) => ((at % size) + size) % size;
}
