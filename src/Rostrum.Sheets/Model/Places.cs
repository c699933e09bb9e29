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

/// <summary>Everything a sheet says of a place that is no board.</summary>
/// <param name="Place">The place.</param>
/// <param name="Holds">The kinds that may lie there; empty where the sheet does not say.</param>
/// <param name="Slots">How many slots a row has; 0 for other forms.</param>
/// <param name="SlotNoun">The word for a slot; null where there is none.</param>
/// <param name="Cite">Where the rules say so.</param>
public sealed record PlaceFacts(Place Place, ImmutableArray<Kind> Holds, int Slots, SlotNoun? SlotNoun, Citation? Cite)
{
    /// <summary>The action that is done when something is dealt from here and too little is left; null for none.</summary>
    public ActionName? WhenShort { get; init; }

    /// <summary>True where nothing lies here when the game is laid out, although the place is the only one of its kind.</summary>
    public bool StartsEmpty { get; init; }

    /// <summary>Which things lie here when the game is laid out; null where the sheet does not say.</summary>
    public Look? Starts { get; init; }

    /// <summary>The most things that may lie here, which binds every action; null for no limit, and for rows.</summary>
    public int? Most { get; init; }
}
