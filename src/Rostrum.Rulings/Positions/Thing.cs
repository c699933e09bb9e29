using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>A piece, card or die as a position gives it. What the position does not say is <c>null</c>: not given, which is not the same as nothing.</summary>
/// <param name="Kind">Its kind; null where even that is not given.</param>
/// <param name="Values">By <see cref="Sheets.Model.Attribute.Index"/>: the 0-based index of its value among the attribute's values, or the 0-based
/// seat for a state that holds a player; null where not given. Empty where the kind is not given.</param>
/// <param name="Card">Which card; null for pieces and dice, and for a card whose face is not given.</param>
/// <param name="Owner">The 0-based seat of its owner; <see cref="Nobody"/> for nobody's; null where not given.</param>
/// <param name="IsFaceUp">For cards: whether the face is seen; null where not given. Always true for pieces.</param>
public sealed record Thing(Kind? Kind, ImmutableArray<int?> Values, Card? Card, int? Owner, bool? IsFaceUp)
{
    /// <summary>The owner of what belongs to nobody.</summary>
    public const int Nobody = -1;

    /// <summary>For a piece that is larger than a space, the spaces on which it lies, in reading order: it is in the stack of each of them. Empty for
    /// every other thing, and while it lies on no board.</summary>
    public ImmutableArray<int> Covers { get; init; } = [];

    /// <inheritdoc />
    public bool Equals(Thing? other) =>
        other is not null && ReferenceEquals(Kind, other.Kind) && ReferenceEquals(Card, other.Card) && Owner == other.Owner
        && IsFaceUp == other.IsFaceUp && Covers.AsSpan().SequenceEqual(other.Covers.AsSpan()) && Values.AsSpan().SequenceEqual(other.Values.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        hash.Add(Kind);
        hash.Add(Card);
        hash.Add(Owner);
        foreach (int? value in Values)
        {
            hash.Add(value);
        }

        return hash.ToHashCode();
    }
}
