using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>What lies in places, on lines, in slots and on spaces.</content>
internal sealed partial class FormulaCompiler
{
    private readonly int[][] _spotsOfHolder = [.. layout.Holders.Select(SpotsOf)];
    private readonly int[][] _spacesOfHolder = [.. layout.Holders.Select(h => h.Board is null ? [] : SpotsOf(h))];
    private readonly int[][] _slotsOfHolder = [.. layout.Holders.Select(h => h.Form == PlaceForm.Row ? SpotsOf(h) : [])];

    private static int[] SpotsOf(Holder holder) => [.. Enumerable.Range(holder.First, holder.Length)];

    private ManyNode Within(Term.Within within, FrameMap frame)
    {
        Look look = within.Look;
        if (look.SpotNoun is null)
        {
            return Things(within.Container, look, frame);
        }

        ManyNode spots = look.SpotNoun is SlotNoun ? Slots(within.Container, frame) : Spaces(within.Container, frame);
        return IsPlain(look) ? spots : new LookedFor(spots, LookTestOf(look, Sort.Space));
    }

    private static bool IsPlain(Look look) => look.Owner == LookOwner.Anyone && look.Traits.IsEmpty;

    /// <summary>The things of a look in a value that holds things; all things for no look.</summary>
    private ManyNode Things(Term container, Look? look, FrameMap frame)
    {
        LookTest? test = look is null ? null : LookTestOf(look, Sort.Thing);
        return ElementKind(container.Sort) switch
        {
            SortKind.Thing => Sifted(container.Sort.IsMany ? Many(container, frame) : new AloneNode(Compile(container, frame)), test),
            _ => ThingsOn(Spots(container, frame), test),
        };
    }

    // Pieces larger than a space are met on several spots.
    private ManyNode ThingsOn(ManyNode spots, LookTest? look) => layout.HasLarge ? new LaidThings(spots, look) : new ThingsNode(spots, look);

    private static ManyNode Sifted(ManyNode many, LookTest? test) => test is null ? many : new LookedFor(many, test);

    private static SortKind ElementKind(Sort sort) => sort.IsMany ? sort.Element!.IsMany ? SortKind.Set : sort.Element.Kind : sort.Kind;

    /// <summary>Every spot of a value that holds things.</summary>
    private ManyNode Spots(Term container, FrameMap frame) => Parts(container, frame, _spotsOfHolder);

    /// <summary>The spaces of a board, a line or a fit, in reading order (a line from its first space on).</summary>
    private ManyNode Spaces(Term container, FrameMap frame) => container.Sort.Kind == SortKind.Slot ? ConstantMany.Empty : Parts(container, frame, _spacesOfHolder);

    /// <summary>The slots of a row.</summary>
    private ManyNode Slots(Term container, FrameMap frame) => container.Sort switch
    {
        { Kind: SortKind.Place } => Tabled(Compile(container, frame), _slotsOfHolder),
        { Kind: SortKind.Slot } => new AloneNode(Compile(container, frame)),
        { IsMany: true } => Many(container, frame),
        _ => ConstantMany.Empty,
    };

    private ManyNode Parts(Term container, FrameMap frame, int[][] ofHolder)
    {
        if (container.Sort.IsMany)
        {
            return PartsOfMany(container, frame, ofHolder);
        }

        Node of = Compile(container, frame);
        return container.Sort.Kind switch
        {
            SortKind.Place => Tabled(of, ofHolder),
            SortKind.Line => Tabled(of, _lines.Spots),
            SortKind.Fit => new FitSpaces(of, _fits),
            SortKind.Space or SortKind.Slot => new AloneNode(of),
            SortKind.Thing => new ThingSpaces(new AloneNode(of), _spaceItself),
            _ => ConstantMany.Empty,
        };
    }

    private ManyNode PartsOfMany(Term container, FrameMap frame, int[][] ofHolder)
    {
        ManyNode many = Many(container, frame);
        return ElementKind(container.Sort) switch
        {
            SortKind.Space or SortKind.Slot => many,
            SortKind.Place => new FlatNode(many, () => ofHolder),
            SortKind.Line => new FlatNode(many, () => _lines.Spots),
            SortKind.Set => new FlatLists(many),
            SortKind.Thing => new ThingSpaces(many, _spaceItself),
            SortKind.Fit => new FitsSpaces(many, _fits),
            _ => ConstantMany.Empty,
        };
    }

    // By spot: itself for a space of a board, nothing elsewhere.
    private readonly int[] _spaceItself = [.. layout.SpotHolder.Select((h, spot) => h.Board is null ? Node.Nothing : spot)];
}
