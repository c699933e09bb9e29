using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>Where the spaces of a board of squares or hexes lie: columns counted from the left, rows from the lowest, both 0-based. On hexes columns
/// count half steps, so that only every other place of a row can be a space.</summary>
internal sealed class Lattice
{
    private const int Missing = -1;

    private readonly BoardFacts _board;
    private readonly int[,] _spaces;
    private HashSet<(int Column, int Row)>? _outside;

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

    /// <summary>True where no space is so far away and what is there hangs together, side by side, with what lies past the edge.</summary>
    public bool IsOutside(int space, int columns, int rows, (int Columns, int Rows)[] sides) =>
        !_board.Wraps && By(space, columns, rows) is null && (_outside ??= Outside(sides)).Contains((Column(space) + columns, Row(space) + rows));

    // Everything past the edge, two half steps wide, and the missing places that hang together with it.
    private HashSet<(int Column, int Row)> Outside((int Columns, int Rows)[] sides)
    {
        var found = new HashSet<(int Column, int Row)>();
        var waiting = new Queue<(int Column, int Row)>(
            Enumerable.Range(-2, Width + 4).SelectMany(c => Enumerable.Range(-2, Height + 4).Select(r => (c, r))).Where(p => p.c < 0 || p.c >= Width || p.r < 0 || p.r >= Height));
        while (waiting.TryDequeue(out (int Column, int Row) at))
        {
            bool isNew = at.Column >= -2 && at.Column < Width + 2 && at.Row >= -2 && at.Row < Height + 2 && AtPlain(at.Column, at.Row) is null && found.Add(at);
            foreach ((int across, int up) in isNew ? sides : [])
            {
                waiting.Enqueue((at.Column + across, at.Row + up));
            }
        }

        return found;
    }

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
