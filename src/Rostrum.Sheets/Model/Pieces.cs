using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>What a kind of thing is made of.</summary>
public enum KindFamily
{
    /// <summary>A piece: those of one look are interchangeable.</summary>
    Piece,

    /// <summary>A card: each is itself.</summary>
    Card,

    /// <summary>A die: shows one of its faces.</summary>
    Die,
}

/// <summary>A kind of thing: pieces, cards or dice that share their attributes.</summary>
public sealed class Kind(string name, string plural, KindFamily family, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How many are called.</summary>
    public string Plural { get; } = plural;

    /// <summary>Piece, card or die.</summary>
    public KindFamily Family { get; } = family;

    /// <inheritdoc />
    public override string Role => Family switch
    {
        KindFamily.Piece => "a kind of piece",
        KindFamily.Card => "a kind of card",
        _ => "a kind of die",
    };
}

/// <summary>A property that tells things of one kind apart; or, as a state, what may change about them.</summary>
public sealed class Attribute(string name, Kind kind, bool isState, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The kind whose things have it.</summary>
    public Kind Kind { get; } = kind;

    /// <summary>True where it may change during play; a thing starts with the first value.</summary>
    public bool IsState { get; } = isState;

    /// <summary>0-based among the attributes and then the states of its kind: the position of its value in a thing.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => IsState ? "a state" : "an attribute";
}

/// <summary>One value of an attribute, a state or the faces of a die.</summary>
public sealed class AttributeValue(string name, string plural, Attribute attribute, int index, long? number, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How many things that have it are called.</summary>
    public string Plural { get; } = plural;

    /// <summary>The attribute.</summary>
    public Attribute Attribute { get; } = attribute;

    /// <summary>0-based, in the order of the sheet.</summary>
    public int Index { get; } = index;

    /// <summary>The number that a numeral among the values is; null for a word.</summary>
    public long? Number { get; } = number;

    /// <inheritdoc />
    public override string Role => $"a value of {Attribute.Name}";
}

/// <summary>A single card with a name of its own.</summary>
public sealed class Card(string name, Kind kind, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The kind of card.</summary>
    public Kind Kind { get; } = kind;

    /// <summary>0-based among the cards of its kind.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => Rostrum.Text.Prose.A(Kind.Name);
}

/// <summary>A column of a card table.</summary>
public sealed class Column(string name, Kind kind, Sort sort, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The kind of card.</summary>
    public Kind Kind { get; } = kind;

    /// <summary>What its cells give.</summary>
    public Sort Sort { get; } = sort;

    /// <summary>0-based.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => $"a column of {Kind.Plural}";
}

/// <summary>Everything a sheet says of one kind of thing.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Attributes">Attributes first, then states; <see cref="Attribute.Index"/> counts through both.</param>
/// <param name="Supply">How many there are.</param>
/// <param name="Cite">Where the rules say so.</param>
public sealed record KindFacts(Kind Kind, ImmutableArray<AttributeFacts> Attributes, Supply Supply, Citation? Cite)
{
    /// <summary>The state between whose two values <c>flip</c> turns a piece: the only one of two values; null where there is none, and for cards and dice.</summary>
    public AttributeFacts? FlipState => Kind.Family == KindFamily.Piece && Attributes.Where(a => a.Attribute.IsState && !a.HoldsPlayer && a.Values.Length == 2).Take(2).ToArray() is [var only] ? only : null;

    /// <summary>Things of this kind have a shape that lies on several spaces; null for the usual piece on one space.</summary>
    public PieceShape? Shape { get; init; }
}

/// <summary>The shape of a piece that is larger than a space.</summary>
/// <param name="Drawing">The spaces that it covers; at least two, none of which asks anything.</param>
/// <param name="Rotated">True where it may be turned.</param>
/// <param name="Mirrored">True where it may be turned over.</param>
public sealed record PieceShape(Drawing Drawing, bool Rotated, bool Mirrored);

/// <summary>An attribute with its values in order.</summary>
/// <param name="Attribute">The attribute or state.</param>
/// <param name="Values">Never empty, except for a state whose values are the players.</param>
/// <param name="HoldsPlayer">True where the values are the players.</param>
public sealed record AttributeFacts(Attribute Attribute, ImmutableArray<AttributeValue> Values, bool HoldsPlayer = false);

/// <summary>How many things of a kind there are.</summary>
/// <param name="Total">All of them; null where the sheet does not say.</param>
/// <param name="OfEach">How many there are with given attribute values, where the sheet says: (values, count).</param>
/// <param name="EachPlayer">True where the total is what every player has.</param>
public sealed record Supply(long? Total, ImmutableArray<SupplyRow> OfEach, bool EachPlayer = false);

/// <summary>A row of a supply: so many things have all of these values.</summary>
/// <param name="Values">The attribute values that they share; never empty.</param>
/// <param name="Count">How many of each.</param>
public sealed record SupplyRow(ImmutableArray<AttributeValue> Values, long Count);
