using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>How many things of each look the components hold. A look is one value (or null for any) for each attribute that the supply tells apart.</summary>
internal sealed class SupplyLooks
{
    private readonly KindFacts _kind;
    private readonly bool[] _counted;
    private readonly ImmutableArray<int?>[] _rows;
    private readonly bool _isComplete;

    public SupplyLooks(KindFacts kind)
    {
        _kind = kind;
        _counted = [.. kind.Attributes.Select(a => kind.Supply.OfEach.Any(r => r.Values.Any(v => ReferenceEquals(v.Attribute, a.Attribute))))];
        _rows = [.. kind.Supply.OfEach.Select(r => LookOf(r.Values))];
        long looks = kind.Attributes.Where((_, i) => _counted[i]).Aggregate(1L, (n, a) => n * a.Values.Length);
        _isComplete = _rows.Length > 0 && looks == _rows.Length && _rows.All(r => r.Where((_, i) => _counted[i]).All(v => v is not null));
    }

    /// <summary>The looks that some things show and those that the supply counts, those that say most first; the last says nothing and stands for
    /// the whole kind.</summary>
    public IEnumerable<ImmutableArray<int?>> Of(IEnumerable<Thing> things)
    {
        ImmutableArray<int?>[] shown = [.. things.Select(t => Reduced(t.Values))];
        return shown.Concat(_rows).Append([.. _counted.Select(_ => (int?)null)])
            .DistinctBy(l => string.Join(',', l)).OrderByDescending(l => l.Count(v => v is not null));
    }

    /// <summary>So many things can never be too many, whatever they look like.</summary>
    public long Fewest => Math.Min(_kind.Supply.Total ?? long.MaxValue, _isComplete ? _kind.Supply.OfEach.Min(r => r.Count) : _rows.Length == 0 ? long.MaxValue : 0);

    /// <summary>How many things of this look there are at most; null where the sheet does not say.</summary>
    public long? Most(ImmutableArray<int?> look)
    {
        long listed = 0;
        bool isRow = false;
        for (int i = 0; i < _rows.Length; i++)
        {
            if (Shows(_rows[i], look))
            {
                listed += _kind.Supply.OfEach[i].Count;
                isRow |= Shows(look, _rows[i]);
            }
        }

        bool isWholeKind = look.All(v => v is null);
        return isWholeKind && _kind.Supply.Total is { } total ? total : _isComplete || isRow ? listed : null;
    }

    /// <summary>How many more of one thing's look the components hold at the most than these things; null where the sheet does not say how many there are.</summary>
    public long? Left(Thing thing, IReadOnlyCollection<Thing> things) =>
        Of([thing]).Where(l => Shows(thing.Values, l)).Min(l => Most(l) - things.Count(t => ReferenceEquals(t.Kind, _kind.Kind) && (!_kind.Supply.EachPlayer || t.Owner == thing.Owner) && Shows(t.Values, l)));

    /// <summary>True where these things are already as many as the components hold of one thing's look.</summary>
    public bool IsUsedUp(Thing thing, IReadOnlyCollection<Thing> things) => Left(thing, things) <= 0;

    /// <summary>True where the components hold more of one thing's look than these things; false where the sheet does not say how many there are.</summary>
    public bool IsLeft(Thing thing, IReadOnlyCollection<Thing> things) => Left(thing, things) > 0;

    /// <summary>The look in words: <c>copper lamps</c>, <c>sticks</c>; in the singular where there is one.</summary>
    public string Tell(ImmutableArray<int?> look, long count)
    {
        var thing = new Thing(_kind.Kind, [.. look], null, Thing.Nobody, true);
        return ThingWords.Look(_kind, thing, plural: count != 1, tellsGaps: false);
    }

    /// <summary>True where the values show everything that the look asks.</summary>
    public static bool Shows(ImmutableArray<int?> values, ImmutableArray<int?> look)
    {
        for (int i = 0; i < look.Length; i++)
        {
            if (look[i] is { } asked && asked != values[i])
            {
                return false;
            }
        }

        return true;
    }

    private ImmutableArray<int?> Reduced(ImmutableArray<int?> values) => [.. values.Select((v, i) => _counted[i] ? v : null)];

    private ImmutableArray<int?> LookOf(ImmutableArray<AttributeValue> values) =>
        [.. _kind.Attributes.Select(a => values.FirstOrDefault(v => ReferenceEquals(v.Attribute, a.Attribute))?.Index)];
}
