using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Layout;

/// <summary>Makes the list of all things of a game from what the sheet says of their number.</summary>
internal sealed class ThingTable
{
    /// <summary>More things than this are not played with; a piece larger than a space counts once for each space on which it lies.</summary>
    public const int MostThings = 10_000;

    private readonly ImmutableArray<ThingClass>.Builder _classes = ImmutableArray.CreateBuilder<ThingClass>();
    private readonly ImmutableArray<ThingClass>.Builder _things = ImmutableArray.CreateBuilder<ThingClass>();
    private readonly Sheet _sheet;
    private readonly int _seats;
    private int _nextCode;
    private long _feet;

    /// <exception cref="NotPlayableException">The sheet does not say how many things of a kind there are.</exception>
    public ThingTable(Sheet sheet, int seats)
    {
        (_sheet, _seats) = (sheet, seats);
        foreach (KindFacts kind in sheet.Kinds)
        {
            Add(kind);
        }
    }

    /// <summary>The classes, by number.</summary>
    public ImmutableArray<ThingClass> Classes => _classes.ToImmutable();

    /// <summary>The class of each thing.</summary>
    public ImmutableArray<ThingClass> Things => _things.ToImmutable();

    private void Add(KindFacts kind)
    {
        if (kind.Kind.Family == KindFamily.Card)
        {
            AddCards(kind);
            return;
        }

        for (int seat = kind.Supply.EachPlayer ? 0 : -1; seat < (kind.Supply.EachPlayer ? _seats : 0); seat++)
        {
            AddPieces(kind, seat);
        }
    }

    private void AddCards(KindFacts kind)
    {
        foreach (CardRow row in _sheet.Cards(kind.Kind).Rows)
        {
            int[] values = [.. kind.Attributes.Select(a => a.Attribute.IsState || a.Attribute.Index >= row.Values.Length ? -1 : row.Values[a.Attribute.Index])];
            for (int seat = kind.Supply.EachPlayer ? 0 : -1; seat < (kind.Supply.EachPlayer ? _seats : 0); seat++)
            {
                Make(kind, [.. values], row.Card, seat, row.Count);
            }
        }
    }

    private void AddPieces(KindFacts kind, int seat)
    {
        AttributeFacts[] fixedOnes = [.. kind.Attributes.Where(a => !IsChanging(a))];
        if (!kind.Supply.OfEach.IsEmpty)
        {
            foreach (SupplyRow row in kind.Supply.OfEach)
            {
                AddRow(kind, row, fixedOnes, seat);
            }

            return;
        }

        if (kind.Supply.Total is not { } total || fixedOnes.Length > 0)
        {
            string of = fixedOnes.Length > 0 ? $" of each {fixedOnes[0].Attribute.Name}" : "";
            throw new NotPlayableException($"The sheet does not say how many {kind.Kind.Plural}{of} there are; to play, write 'count{of}'.", kind.Kind.DeclaredAt);
        }

        Make(kind, [.. kind.Attributes.Select(_ => -1)], null, seat, total);
    }

    private void AddRow(KindFacts kind, SupplyRow row, AttributeFacts[] fixedOnes, int seat)
    {
        if (fixedOnes.FirstOrDefault(a => !row.Values.Any(v => ReferenceEquals(v.Attribute, a.Attribute))) is { } open)
        {
            throw new NotPlayableException($"The sheet does not say how many {kind.Kind.Plural} of each {open.Attribute.Name} there are; to play, give the number of each.", kind.Kind.DeclaredAt);
        }

        int[] values = [.. kind.Attributes.Select(a => row.Values.FirstOrDefault(v => ReferenceEquals(v.Attribute, a.Attribute)) is { } value && !IsChanging(a) ? value.Index : -1)];
        Make(kind, [.. values], null, seat, row.Count);
    }

    /// <summary>True for a value that may change during play: a state, and the face of a die.</summary>
    public static bool IsChanging(AttributeFacts attribute) => attribute.Attribute.IsState || attribute.Attribute.Kind.Family == KindFamily.Die;

    private void Make(KindFacts kind, ImmutableArray<int> values, Card? card, int owner, long count)
    {
        _feet += count * (kind.Shape?.Drawing.Cells.Length ?? 1);
        if (_feet > MostThings)
        {
            throw new NotPlayableException($"The game has more than {MostThings:N0} things.", kind.Kind.DeclaredAt);
        }

        ImmutableArray<(int, int)> states =
        [
            .. kind.Attributes.Where(IsChanging).Select(a => (a.Attribute.Index, (a.HoldsPlayer ? _seats : a.Values.Length) + 1)),
            .. card is null ? [] : new[] { (-1, 2) },
        ];
        var made = new ThingClass(_classes.Count, kind, values, card, owner, _nextCode) { States = states };
        _nextCode += made.Codes;
        _classes.Add(made);
        for (int i = 0; i < count; i++)
        {
            _things.Add(made);
        }
    }
}
