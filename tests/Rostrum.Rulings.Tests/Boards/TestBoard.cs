using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Boards;

/// <summary>Boards of squares for tests: columns A, B, C …, rows 1, 2, 3 … from below.</summary>
internal sealed record TestBoard(BoardFacts Facts)
{
    private readonly Dictionary<string, int> _byName = Facts.Spaces.ToDictionary(s => s.Name.Name, s => s.Name.Index);

    public BoardGeometry Geometry { get; } = BoardGeometry.Of(Facts);

    public int this[string space] => _byName[space];

    public static TestBoard Grid(int across, int up, Touching neighbours = Touching.Sides, bool wraps = false, string missing = "") =>
        new(Of(new Place("board", PlaceForm.Board, false, 0, null), across, up, missing) with { Neighbours = neighbours, Wraps = wraps });

    public static BoardFacts Of(Place place, int across, int up, string missing = "")
    {
        string[] left = missing.Split(' ');
        var places = from row in Enumerable.Range(0, up).Reverse()
                     from column in Enumerable.Range(0, across)
                     select (Name: $"{(char)('A' + column)}{row + 1}", column, row);
        ImmutableArray<BoardSpace> spaces =
        [
            .. places.Where(p => !left.Contains(p.Name)).Select((p, i) => new BoardSpace(new SpaceName(p.Name, place, i, null), p.column, p.row)),
        ];
        return new BoardFacts(
            place,
            spaces,
            [.. Enumerable.Range(0, across).Select(c => $"{(char)('A' + c)}")],
            [.. Enumerable.Range(1, up).Select(r => $"{r}")],
            [],
            new SpaceNoun("shelf", "shelves", place, null));
    }

    /// <summary>A drawing from rows such as <c>"##"</c>, <c>".#"</c>, top row first; every letter but <c>.</c> is a cell, <c>[</c> the marked one,
    /// <c>x</c> and <c>y</c> cells that must be alike.</summary>
    public static Drawing Draw(params string[] rows)
    {
        var cells = from row in Enumerable.Range(0, rows.Length)
                    from column in Enumerable.Range(0, rows[row].Length)
                    where rows[row][column] != '.'
                    select Cell(column, rows.Length - 1 - row, rows[row][column]);
        return new Drawing(rows.Max(r => r.Length), rows.Length, [.. cells], new SourceText("drawing", "").Whole);
    }

    public static DrawingCell Cell(int column, int row, char sign) =>
        new(column, row, null, sign == '_', null, false, sign is 'x' or 'y' ? sign : null, sign == '[');

    /// <summary>Spaces by name, parted by blanks, in the order given.</summary>
    public string Names(IEnumerable<int> spaces) => string.Join(' ', spaces.Select(s => Facts.Spaces[s].Name.Name));

    public string Names(ReadOnlySpan<int> spaces) => Names(spaces.ToArray().AsEnumerable());

    public string Name(int? space) => space is { } s ? Facts.Spaces[s].Name.Name : "nothing";

    public static Direction Going(string name) => Direction.All.First(d => d.Name == name);
}
