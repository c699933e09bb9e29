using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>How a place holds things.</summary>
public enum PlaceForm
{
    /// <summary>Spaces, each with a stack.</summary>
    Board,

    /// <summary>Slots in an order.</summary>
    Row,

    /// <summary>Unseen things, taken by chance.</summary>
    Bag,

    /// <summary>Unseen things in an order.</summary>
    Deck,

    /// <summary>Open things in no order.</summary>
    Heap,

    /// <summary>Things that only their owner sees.</summary>
    Hand,

    /// <summary>What no other place holds and is still in the game.</summary>
    Supply,

    /// <summary>Out of the game.</summary>
    Box,
}

/// <summary>Something that holds things: a board, a bag, a row, a heap, a deck, a hand, the supply, the box.</summary>
public sealed class Place(string name, PlaceForm form, bool eachPlayer, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How it holds things.</summary>
    public PlaceForm Form { get; } = form;

    /// <summary>True where every player has one.</summary>
    public bool EachPlayer { get; } = eachPlayer;

    /// <summary>0-based among the places of the sheet.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => Form == PlaceForm.Board ? "a board" : "a place";
}

/// <summary>The word for one space of a board, such as <c>shelf</c>.</summary>
public sealed class SpaceNoun(string name, string plural, Place board, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How many are called.</summary>
    public string Plural { get; } = plural;

    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <inheritdoc />
    public override string Role => $"a space of {Board.Name}";
}

/// <summary>The word for one slot of a row, such as <c>drying board</c>.</summary>
public sealed class SlotNoun(string name, string plural, Place row, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How many are called.</summary>
    public string Plural { get; } = plural;

    /// <summary>The row.</summary>
    public Place Row { get; } = row;

    /// <inheritdoc />
    public override string Role => $"a slot of {Row.Name}";
}

/// <summary>A named family of lines of a board, such as its bays (columns) or its tiers (rows).</summary>
public sealed class LineFamily(string name, string plural, Place board, bool areColumns, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How many are called.</summary>
    public string Plural { get; } = plural;

    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>True for columns, false for rows.</summary>
    public bool AreColumns { get; } = areColumns;

    /// <inheritdoc />
    public override string Role => $"a line of {Board.Name}";
}

/// <summary>A space of a board by its name, such as <c>B2</c>.</summary>
public sealed class SpaceName(string name, Place board, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>0-based among the spaces of the board.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => $"a space of {Board.Name}";
}

/// <summary>What a board looks like.</summary>
/// <param name="Place">The board as a place.</param>
/// <param name="Spaces">In reading order: top row first, left to right. <see cref="SpaceName.Index"/> is the position here.</param>
/// <param name="Columns">The labels of the columns, left to right; empty for a board that has none.</param>
/// <param name="Rows">The labels of the rows, lowest first.</param>
/// <param name="Families">Columns and rows, where they have names.</param>
/// <param name="Noun">The word for a space.</param>
public sealed record BoardFacts(
    Place Place,
    ImmutableArray<BoardSpace> Spaces,
    ImmutableArray<string> Columns,
    ImmutableArray<string> Rows,
    ImmutableArray<LineFamily> Families,
    SpaceNoun Noun)
{
    /// <summary>True where it is seen from the front, so that things rest on what is below.</summary>
    public bool IsUpright { get; init; }

    /// <summary>Which spaces touch.</summary>
    public Touching Neighbours { get; init; } = Touching.Sides;

    /// <summary>The most things that a space holds; null where the sheet does not say.</summary>
    public int? MostInSpace { get; init; }

    /// <summary>The kinds that may lie on its spaces; empty where any may.</summary>
    public ImmutableArray<Kind> Holds { get; init; } = [];

    /// <summary>True where the last column touches the first, and the last row the first.</summary>
    public bool Wraps { get; init; }

    /// <summary>Where the rules say so.</summary>
    public Citation? Cite { get; init; }

    /// <summary>The family with this direction, or null.</summary>
    public LineFamily? Family(bool columns) => Families.FirstOrDefault(f => f.AreColumns == columns);
}

/// <summary>A space with its coordinates.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Column">0-based from the left.</param>
/// <param name="Row">0-based from the lowest row.</param>
public sealed record BoardSpace(SpaceName Name, int Column, int Row);

/// <summary>Which spaces of a square board count as neighbours.</summary>
public enum Touching
{
    /// <summary>Those that share a side.</summary>
    Sides,

    /// <summary>Those that share a corner only.</summary>
    Corners,

    /// <summary>Both.</summary>
    SidesAndCorners,
}

/// <summary>Everything a sheet says of a place that is no board.</summary>
/// <param name="Place">The place.</param>
/// <param name="Holds">The kinds that may lie there; empty where the sheet does not say.</param>
/// <param name="Slots">How many slots a row has; 0 for other forms.</param>
/// <param name="SlotNoun">The word for a slot; null where there is none.</param>
/// <param name="Cite">Where the rules say so.</param>
public sealed record PlaceFacts(Place Place, ImmutableArray<Kind> Holds, int Slots, SlotNoun? SlotNoun, Citation? Cite);
