using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Layout;

/// <summary>What never changes about a thing. Things of one class differ only in their states and in where they lie.</summary>
/// <param name="Number">0-based among the classes.</param>
/// <param name="Kind">The kind with its attributes and states.</param>
/// <param name="Values">By <see cref="Rostrum.Sheets.Model.Attribute.Index"/>: the 0-based index of the value; -1 for a state, and for an attribute that a card lacks.</param>
/// <param name="Card">Which card; null for pieces and dice.</param>
/// <param name="Owner">The 0-based seat whose it is from the start; -1 for nobody's.</param>
/// <param name="Code">The look code of a thing of this class with all states at their lowest.</param>
internal sealed record ThingClass(int Number, KindFacts Kind, ImmutableArray<int> Values, Card? Card, int Owner, int Code)
{
    /// <summary>For each changing value of the kind: its attribute's index (-1 for the face of a card), and how many values it has, none included.</summary>
    public ImmutableArray<(int Attribute, int Count)> States { get; init; } = [];

    /// <summary>The value of the face of a card (a state with attribute -1) that is seen; a card whose back is seen has 0.</summary>
    public const int FaceUp = 1;

    /// <summary>True for pieces larger than a space, which lie on a board on every space of a fit of their shape.</summary>
    public bool IsLarge => Kind.Shape is not null;

    /// <summary>On how many spaces of a board a thing of this class lies.</summary>
    public int Feet => Kind.Shape?.Drawing.Cells.Length ?? 1;

    /// <summary>How many look codes things of this class may have.</summary>
    public int Codes => States.Aggregate(1, (product, s) => product * s.Count);
}
