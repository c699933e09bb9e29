namespace Rostrum.Pictures;

/// <summary>A board of rows and columns.</summary>
/// <param name="Name">Unique in the picture; letters, digits and hyphens, because it becomes part of ids.</param>
/// <param name="Title">Written above the board; null for none.</param>
/// <param name="Columns">Their labels from the left.</param>
/// <param name="Rows">From the lowest up; each has as many cells as there are columns.</param>
public sealed record BoardPicture(string Name, string? Title, ValueList<string> Columns, ValueList<BoardRow> Rows)
{
    /// <summary>The space with these labels.</summary>
    /// <exception cref="ArgumentException">No column or row is labelled so.</exception>
    public SpaceAt At(string column, string row) => new(
        Name,
        IndexOf(Columns, column),
        IndexOf(Rows.Select(each => each.Label), row));

    /// <summary>What a space is called: label of the column, then of the row, such as <c>B2</c>.</summary>
    public string NameOf(int column, int row) => Columns[column] + Rows[row].Label;

    private static int IndexOf(IEnumerable<string> labels, string wanted)
    {
        int index = labels.ToList().IndexOf(wanted);
        return index >= 0 ? index : throw new ArgumentException($"Nothing on the board is labelled '{wanted}'.", nameof(wanted));
    }
}

/// <summary>A row of a board.</summary>
/// <param name="Label">Such as <c>1</c>; may be empty.</param>
/// <param name="Cells">From left to right.</param>
public sealed record BoardRow(string Label, ValueList<CellPicture> Cells);

/// <summary>What is to be seen at a place of a board.</summary>
public abstract record CellPicture
{
    private CellPicture()
    {
    }

    /// <summary>There is no space.</summary>
    public static CellPicture None { get; } = new Missing();

    /// <summary>A space with nothing on it.</summary>
    public static CellPicture Empty { get; } = new Free();

    /// <summary>A space with pieces on it.</summary>
    /// <param name="pieces">From the lowest up; at least one.</param>
    public static CellPicture Holding(params ReadOnlySpan<PieceLook> pieces) => new Stack(ValueList.Create(pieces));

    /// <summary>There is no space at this place.</summary>
    public sealed record Missing : CellPicture;

    /// <summary>A space with nothing on it.</summary>
    public sealed record Free : CellPicture;

    /// <summary>A space with pieces on it.</summary>
    /// <param name="Pieces">From the lowest up; at least one. Four are drawn at most, the topmost ones.</param>
    public sealed record Stack(ValueList<PieceLook> Pieces) : CellPicture;
}
