using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Layout;

/// <summary>A board, a place, a supply or the box as one player or the table has it: a run of spots in which things lie.</summary>
/// <param name="Number">0-based among the holders; what a formula's place is at play.</param>
/// <param name="Place">The place as the sheet names it.</param>
/// <param name="Form">How it holds things.</param>
/// <param name="Seat">The 0-based seat whose it is; -1 for the table.</param>
/// <param name="First">The number of its first spot.</param>
/// <param name="Length">How many spots it has: its spaces, its slots, or one.</param>
internal sealed record Holder(int Number, Place Place, PlaceForm Form, int Seat, int First, int Length)
{
    /// <summary>The board; null for other places.</summary>
    public BoardFacts? Board { get; init; }

    /// <summary>Which spaces of the board touch; null for other places.</summary>
    public BoardGeometry? Geometry { get; init; }

    /// <summary>What the sheet says of a place that is no board; null for boards, supplies and the box.</summary>
    public PlaceFacts? Facts { get; init; }

    /// <summary>The most things that each of its spots may hold; null where the sheet does not say.</summary>
    public int? Most => Board?.MostInSpace ?? Facts?.Most;

    /// <summary>True where the order of the things in a spot tells something: stacks on spaces and in slots, and decks.</summary>
    public bool IsOrdered => Form is PlaceForm.Board or PlaceForm.Row or PlaceForm.Deck;

    /// <summary>True where nobody sees which thing is taken: bags, and decks whose order nobody knows.</summary>
    public bool IsUnseen => Form is PlaceForm.Bag or PlaceForm.Deck;

    /// <summary>True where a card lies face up unless a step says otherwise.</summary>
    public bool IsOpen => Form is PlaceForm.Board or PlaceForm.Row or PlaceForm.Heap;

    /// <summary>True for a spot of this holder.</summary>
    public bool Holds(int spot) => spot >= First && spot < First + Length;
}
