namespace Rostrum.Pictures;

/// <summary>From where the camera sees the table.</summary>
public enum TableView
{
    /// <summary>From the front: boards stand on the table, pieces on the planks of their shelves.</summary>
    Front,

    /// <summary>From above: boards and pieces lie on the table.</summary>
    Above,
}

/// <summary>Where the names of spaces are written.</summary>
public enum SpaceNames
{
    /// <summary>Nowhere.</summary>
    None,

    /// <summary>Labels of columns below and of rows to the left of each board; on the spaces themselves where labels do not name them.</summary>
    Edges,

    /// <summary>At the edges and in every free space that is large enough.</summary>
    Everywhere,
}

/// <summary>Everything on the table that a picture shall show.</summary>
/// <param name="Title">A few words that name the picture, written above it.</param>
/// <param name="Boards">From left to right; at least one.</param>
public sealed record TablePicture(string Title, ValueList<BoardPicture> Boards)
{
    /// <summary>Spaces to point out, such as those that a question is about.</summary>
    public ValueList<SpaceMark> Marks { get; init; }

    /// <summary>Arrows from space to space, drawn over the pieces.</summary>
    public ValueList<SpaceArrow> Arrows { get; init; }

    /// <summary>What lies beside the boards: supplies, discards, sticks.</summary>
    public ValueList<Heap> Heaps { get; init; }

    /// <summary>A sentence or two on a slip of paper below; null for none.</summary>
    public string? Caption { get; init; }

    /// <summary>False where the words around the picture say its title already; it stays the picture's name for a screen reader.</summary>
    public bool ShowsTitle { get; init; } = true;

    /// <summary>Where spaces are named. Default: at the edges.</summary>
    public SpaceNames Names { get; init; } = SpaceNames.Edges;

    /// <summary>From where the table is seen. Default: from the front.</summary>
    public TableView View { get; init; }
}

/// <summary>A space of a board.</summary>
/// <param name="Board">Name of the board.</param>
/// <param name="Space">Name of the space.</param>
public sealed record SpaceAt(string Board, string Space);

/// <summary>Why a space is pointed out.</summary>
public enum MarkKind
{
    /// <summary>The question is about it: dashed, with a question mark.</summary>
    Asked,

    /// <summary>It counts or is allowed: a tick.</summary>
    Good,

    /// <summary>It breaks a rule or does not count: a cross.</summary>
    Bad,
}

/// <summary>A space that is pointed out.</summary>
/// <param name="At">Which one; must exist.</param>
/// <param name="Kind">Why.</param>
/// <param name="Label">A number or a word or two; empty for none. What does not fit in the space goes on the slip.</param>
public sealed record SpaceMark(SpaceAt At, MarkKind Kind, string Label = "");

/// <summary>An arrow from one space to another.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends; another space.</param>
/// <param name="Label">A word or two on a tag at its middle; empty for none.</param>
public sealed record SpaceArrow(SpaceAt From, SpaceAt To, string Label = "")
{
    /// <summary>The spaces through which it leads, in order; empty for a straight arrow.</summary>
    public ValueList<SpaceAt> Through { get; init; }
}

/// <summary>Things beside the boards.</summary>
/// <param name="Name">What they are, such as <c>Sticks</c>.</param>
/// <param name="Text">What is to be said of them, such as <c>4</c>; null where the pieces say it.</param>
/// <param name="Pieces">What lies there, kind by kind.</param>
public sealed record Heap(string Name, string? Text, ValueList<HeapPieces> Pieces)
{
    /// <summary>Name of the board that it belongs to and lies beside; null where it lies beside all boards.</summary>
    public string? Board { get; init; }
}

/// <summary>Equal pieces in a heap.</summary>
/// <param name="Look">How each looks.</param>
/// <param name="Count">How many; the number is written beside it where it is not 1.</param>
public sealed record HeapPieces(PieceLook Look, int Count = 1)
{
    /// <summary>What lies there in words, such as <c>4 sticks</c>; null where number and look say it.</summary>
    public string? Says { get; init; }
}
