using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>What a formula gives on a position. Closed: the records below and no more. A known value bears no blame and is equal by content.</summary>
internal abstract record Value
{
    private Value()
    {
    }

    /// <summary>There is none.</summary>
    public sealed record Nothing : Value;

    /// <summary>There may be one, or none; nobody can say which.</summary>
    public sealed record Unknown(Blame Blame) : Value;

    /// <summary>A number between two bounds, both included; an open bound is null.</summary>
    /// <param name="Low">The least it can be.</param>
    /// <param name="High">The greatest it can be.</param>
    /// <param name="MayBeNothing">True where there may be none instead.</param>
    /// <param name="Blame">Why it is not one number.</param>
    public sealed record Number(long? Low, long? High, bool MayBeNothing, Blame Blame) : Value
    {
        public bool IsKnown => Low is not null && Low == High && !MayBeNothing;
    }

    /// <summary>A truth.</summary>
    public sealed record Truth(Kleene Is, Blame Blame) : Value;

    public sealed record SpaceAt(int Board, int Seat, int Index) : Value;

    public sealed record SlotAt(int Place, int Seat, int Index) : Value;

    /// <summary>A place; <paramref name="Seat"/> is 0 for one of the table.</summary>
    public sealed record PlaceAt(Place Place, int Seat) : Value;

    /// <summary>A thing where it lies; it is the thing of that spot with that number from below.</summary>
    public sealed record ThingAt(Thing Thing, Spot Spot, int Index) : Value;

    /// <summary>A card that is only named.</summary>
    public sealed record CardIs(Card Card) : Value;

    public sealed record PlayerAt(int Seat) : Value;

    public sealed record DirectionIs(Direction Direction) : Value;

    public sealed record LineAt(int Board, int Seat, LineFamily Family, int Index) : Value;

    public sealed record DrawingIs(Drawing Drawing) : Value;

    public sealed record FitAt(int Board, int Seat, DrawingPlacement Placement, Drawing Drawing) : Value;

    public sealed record AttributeIs(AttributeValue Which) : Value;

    public sealed record LookIs(Look Look) : Value;

    public sealed record TextIs(string Words) : Value;

    /// <summary>Several: some that belong for certain, some that may, and up to <paramref name="More"/> others of which nothing is known.</summary>
    /// <param name="Members">In order for a list; none twice for a set.</param>
    /// <param name="More">How many further elements there may be; 0 for none, null for any number.</param>
    /// <param name="IsList">True for a list.</param>
    /// <param name="Blame">Why there may be more.</param>
    public sealed record Many(ImmutableArray<Member> Members, long? More, bool IsList, Blame Blame) : Value
    {
        /// <summary>True where exactly the members belong.</summary>
        public bool IsCertain => More == 0 && Members.All(m => m.Is == Kleene.Yes && m.Value is not Unknown);

        /// <inheritdoc />
        public bool Equals(Many? other) => other is not null && More == other.More && Members.Length == other.Members.Length
            && (IsList && other.IsList ? Members.SequenceEqual(other.Members) : Members.All(other.Members.Contains));

        /// <inheritdoc />
        public override int GetHashCode() => Members.Length;
    }

    /// <summary>There is none.</summary>
    public static Value None { get; } = new Nothing();

    /// <summary>Yes, for certain.</summary>
    public static Truth Yes { get; } = new(Kleene.Yes, Blame.None);

    /// <summary>No, for certain.</summary>
    public static Truth No { get; } = new(Kleene.No, Blame.None);

    /// <summary>A truth that is known.</summary>
    public static Truth Of(bool holds) => holds ? Yes : No;

    /// <summary>A truth that nobody can say.</summary>
    public static Truth Maybe(Blame blame) => new(Kleene.Unknown, blame);

    /// <summary>A known number.</summary>
    public static Number Of(long amount) => new(amount, amount, false, Blame.None);

    /// <summary>A number between bounds; where they meet it is known and bears no blame.</summary>
    public static Number Between(long? low, long? high, Blame blame, bool mayBeNothing = false) =>
        low is not null && low == high && !mayBeNothing ? Of(low.Value) : new Number(low, high, mayBeNothing, blame);

    /// <summary>Elements that all belong for certain.</summary>
    public static Many Certain(IEnumerable<Value> elements, bool isList) =>
        new([.. elements.Select(e => new Member(e, Kleene.Yes, Blame.None))], 0, isList, Blame.None);

    /// <summary>Elements of which nothing is known.</summary>
    public static Many Open(Blame blame, bool isList) => new([], null, isList, blame);

    /// <summary>True for a value that is itself and nothing else.</summary>
    public bool IsSettled => this switch
    {
        Unknown => false,
        Number number => number.IsKnown,
        Truth truth => truth.Is != Kleene.Unknown,
        Many many => many.IsCertain && many.Members.All(m => m.Value.IsSettled),
        _ => true,
    };

    /// <summary>Why it is not settled.</summary>
    public Blame WhyUnknown => this switch
    {
        Unknown unknown => unknown.Blame,
        Number number => number.Blame,
        Truth truth => truth.Blame,
        Many many => many.Members.Aggregate(many.Blame, (sum, m) => sum + m.Blame + m.Value.WhyUnknown),
        _ => Blame.None,
    };
}

/// <summary>An element of a set or list.</summary>
/// <param name="Value">Which.</param>
/// <param name="Is">Whether it belongs; never <see cref="Kleene.No"/>.</param>
/// <param name="Blame">Why that is not certain.</param>
internal readonly record struct Member(Value Value, Kleene Is, Blame Blame)
{
    /// <summary>True where it belongs for certain.</summary>
    public bool IsCertain => Is == Kleene.Yes;
}
