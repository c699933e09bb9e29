using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>Random values of a sort, as nodes have them.</summary>
internal sealed class RandomValue(TableLayout layout, Run run, Chance chance, FormulaCompiler compiler)
{
    /// <summary>A value; null where there is none on this table, or where the sort has none that can be made by chance.</summary>
    public int? Of(Sort sort) => sort.Kind switch
    {
        SortKind.Set or SortKind.List => Many(sort),
        SortKind.Number => chance.Below(10) - 1,
        SortKind.Truth => chance.Below(2),
        SortKind.Player => chance.Below(layout.Seats),
        SortKind.Space => One(Spots(h => h.Board is not null)),
        SortKind.Slot => One(Spots(h => h.Form == PlaceForm.Row)),
        SortKind.Place => One([.. layout.Holders.Where(h => h.Board is not null || h.Facts is not null).Select(h => h.Number)]),
        SortKind.Thing => One(Things(sort.Of as Kind)),
        SortKind.Value => sort.Of is Rostrum.Sheets.Model.Attribute of ? layout.Values.First(of) + chance.Below(layout.Values.Facts(of).Values.Length) : null,
        SortKind.Line => One([.. Enumerable.Range(0, compiler.Lines.Spots.Length)]),
        SortKind.Fit => Fit(),
        _ => null,
    };

    // A way in which some piece larger than a space lies on some board; of nothing else is the drawing known here.
    private int? Fit()
    {
        if (One([.. layout.Classes.Where(c => c.IsLarge).Select(c => c.Number)]) is not { } of || One([.. layout.Holders.Where(h => h.Board is not null).Select(h => h.Number)]) is not { } board)
        {
            return null;
        }

        PieceShape shape = layout.Classes[of].Kind.Shape!;
        FitTable.Placed placed = compiler.FitsKnown.Of(compiler.FitsKnown.Number(shape.Drawing), board, shape.Rotated, shape.Mirrored);
        return placed.Spaces.Length == 0 ? null : placed.First + chance.Below(placed.Spaces.Length);
    }

    private int? One(int[] from) => from.Length == 0 ? null : from[chance.Below(from.Length)];

    private int[] Spots(Func<Holder, bool> where) => [.. layout.Holders.Where(where).SelectMany(h => Enumerable.Range(h.First, h.Length))];

    private int[] Things(Kind? kind) =>
        [.. Enumerable.Range(0, layout.Things).Where(t => (kind is null || ReferenceEquals(layout.Class(t).Kind.Kind, kind)) && layout.SpotHolder[run.State.Spot(t)] is { } h && (h.Board is not null || h.Facts is not null))];

    private int? Many(Sort sort)
    {
        Elements many = run.Rent();
        for (int i = chance.Below(6); i > 0; i--)
        {
            if (Of(sort.Element!) is { } element && (sort.Element!.IsMany || !many.Contains(element)))
            {
                many.Add(element);
            }
        }

        return run.Keep(many);
    }
}
