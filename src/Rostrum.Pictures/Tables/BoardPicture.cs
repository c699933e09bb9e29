namespace Rostrum.Pictures;

/// <summary>How the spaces of a board are drawn.</summary>
public enum BoardForm
{
    /// <summary>Squares in rows and columns.</summary>
    Squares,

    /// <summary>Hexes with a corner on top, each row set off by half a step.</summary>
    Hexes,

    /// <summary>Discs joined by lines.</summary>
    Map,

    /// <summary>Discs one after the other, clockwise; the last comes back to the first.</summary>
    Ring,

    /// <summary>Squares one after the other; a long track is folded in rows.</summary>
    Track,
}

/// <summary>A board with what lies on it.</summary>
/// <param name="Name">Unique in the picture; letters, digits and hyphens, because it becomes part of ids.</param>
/// <param name="Title">Written above the board; null for none.</param>
/// <param name="Form">How its spaces are drawn.</param>
/// <param name="Spaces">In the order in which they are drawn and, for rings and tracks, in which they follow each other; no two with one name.</param>
public sealed record BoardPicture(string Name, string? Title, BoardForm Form, ValueList<SpacePicture> Spaces)
{
    /// <summary>For squares, the labels of the columns from the left.</summary>
    public ValueList<string> Columns { get; init; }

    /// <summary>For squares and hexes, the labels of the rows from the lowest.</summary>
    public ValueList<string> Rows { get; init; }

    /// <summary>Places among hexes that have a name but are no space.</summary>
    public ValueList<HolePicture> Holes { get; init; }

    /// <summary>For a map, the lines from space to space: each a list of indices in <see cref="Spaces"/>, of which neighbours are joined.</summary>
    public ValueList<ValueList<int>> Ways { get; init; }

    /// <summary>Parts of the board that are told from others.</summary>
    public ValueList<AreaPicture> Areas { get; init; }

    /// <summary>Pieces that lie on several spaces and on nothing else; what is drawn of them on a single space is left out.</summary>
    public ValueList<BodyPicture> Bodies { get; init; }

    /// <summary>What the numbers on its spaces are called, in the order of <see cref="SpacePicture.Numbers"/>.</summary>
    public ValueList<string> NumberNames { get; init; }

    /// <summary>A board of squares; each space is called by the labels of its column and its row, such as <c>B2</c>.</summary>
    /// <param name="name">As <see cref="Name"/>.</param>
    /// <param name="title">As <see cref="Title"/>.</param>
    /// <param name="columns">Labels from the left.</param>
    /// <param name="rows">From the lowest up; each has as many cells as there are columns.</param>
    /// <exception cref="ArgumentException">A row has another number of cells.</exception>
    public static BoardPicture OfRows(string name, string? title, ValueList<string> columns, ValueList<BoardRow> rows)
    {
        if (rows.Any(row => row.Cells.Count != columns.Count))
        {
            throw new ArgumentException($"Every row of board '{name}' has as many cells as the board has columns.", nameof(rows));
        }

        IEnumerable<SpacePicture> spaces =
            from row in Enumerable.Range(0, rows.Count)
            from column in Enumerable.Range(0, columns.Count)
            let cell = rows[row].Cells[column]
            where cell is not CellPicture.Missing
            select new SpacePicture(columns[column] + rows[row].Label, column, row, cell);
        return new BoardPicture(name, title, BoardForm.Squares, [.. spaces]) { Columns = columns, Rows = [.. rows.Select(row => row.Label)] };
    }

    /// <summary>The space of that name.</summary>
    /// <exception cref="ArgumentException">No space is called so.</exception>
    public SpaceAt At(string space) => TryFind(space, out _) ? new SpaceAt(Name, space) : throw new ArgumentException($"No space of the board is called '{space}'.", nameof(space));

    /// <summary>The index of the space of that name; false where there is none.</summary>
    public bool TryFind(string space, out int index)
    {
        index = Spaces.Select((each, at) => (each.Name, at)).Where(each => each.Name == space).Select(each => each.at).FirstOrDefault(-1);
        return index >= 0;
    }
}

/// <summary>A place among hexes that is no space, such as a pool.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Column">As <see cref="SpacePicture.Column"/>.</param>
/// <param name="Row">As <see cref="SpacePicture.Row"/>.</param>
public sealed record HolePicture(string Name, int Column, int Row);

/// <summary>A piece that lies on several spaces.</summary>
/// <param name="Look">How it looks: its colour and emblem; its silhouette is that of the spaces.</param>
/// <param name="Spaces">Indices in <see cref="BoardPicture.Spaces"/>, side by side; the emblem stands on the first.</param>
public sealed record BodyPicture(PieceLook Look, ValueList<int> Spaces);

/// <summary>A part of a board that is told from others.</summary>
/// <param name="Label">Written on it.</param>
/// <param name="Says">The text alternative, such as <c>field north</c>.</param>
/// <param name="Spaces">Indices in <see cref="BoardPicture.Spaces"/>.</param>
public sealed record AreaPicture(string Label, string Says, ValueList<int> Spaces);

/// <summary>A row of squares.</summary>
/// <param name="Label">Such as <c>1</c>; may be empty.</param>
/// <param name="Cells">From left to right.</param>
public sealed record BoardRow(string Label, ValueList<CellPicture> Cells);
