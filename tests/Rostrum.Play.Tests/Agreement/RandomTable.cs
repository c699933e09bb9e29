using System.Collections.Immutable;
using CsCheck;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>Random tables of any sheet: every thing somewhere that may hold it, in any state, and marks within their bounds.</summary>
internal static class RandomTable
{
    /// <summary>A table laid by a seed. Of the same seed it is the same.</summary>
    /// <param name="layout">The numbering.</param>
    /// <param name="seed">Any number.</param>
    public static TableState Of(TableLayout layout, uint seed)
    {
        var chance = new Chance(seed);
        var state = new TableState(layout, layout.MarkCount, 0);
        // Now and then nearly everything is on the table, now and then little.
        int share = 1 + chance.Below(12);
        int[] things = chance.Shuffled(layout.Things);
        foreach (int thing in things)
        {
            Lay(state, thing, chance, share);
        }

        foreach (Mark mark in layout.Sheet.Marks)
        {
            for (int i = 0; i < layout.MarkSize(mark); i++)
            {
                state.Numbers[layout.MarkStart[mark.Index] + i] = MarkTable.ToState(layout, mark, i, Held(layout, mark, chance));
            }
        }

        return state;
    }

    private static void Lay(TableState state, int thing, Chance chance, int share)
    {
        TableLayout layout = state.Layout;
        ThingClass of = layout.Class(thing);
        Holder[] homes = [.. layout.Holders.Where(h => (h.Board is { } b && (b.Holds.IsEmpty || b.Holds.Contains(of.Kind.Kind))) || (h.Facts is { } f && (f.Holds.IsEmpty || f.Holds.Contains(of.Kind.Kind))))];
        Holder home = homes.Length == 0 || chance.Below(12) >= share ? layout.SupplyOf(of.Owner) : homes[chance.Below(homes.Length)];
        if (of.IsLarge && home.Geometry is { } geometry)
        {
            LayLarge(state, thing, home, geometry.Placements(of.Kind.Shape!.Drawing, of.Kind.Shape.Rotated, of.Kind.Shape.Mirrored), chance);
            return;
        }

        int spot = home.First + chance.Below(home.Length);
        bool isFull = state.Count(spot) >= (home.Board is { MostInSpace: { } most } ? most : home.Board is not null ? 3 : 6);
        spot = isFull && home.Form is not (PlaceForm.Supply or PlaceForm.Box) ? layout.SupplyOf(of.Owner).First : spot;
        if (layout.SpotHolder[spot].Form == PlaceForm.Deck && state.Known(spot) == 0)
        {
            state.SetKnown(spot, layout.Things);
        }

        state.Place(thing, spot);
        SetStates(state, thing, chance);
    }

    // Where there is no room, it stays in the supply.
    private static void LayLarge(TableState state, int thing, Holder home, ImmutableArray<DrawingPlacement> ways, Chance chance)
    {
        int most = home.Board!.MostInSpace ?? 3;
        DrawingPlacement[] free = [.. ways.Where(w => w.Spaces.All(s => state.Count(home.First + s) < most))];
        if (free.Length == 0)
        {
            state.Place(thing, state.Layout.SupplyOf(state.Layout.Class(thing).Owner).First);
        }
        else
        {
            state.Lay(thing, [.. free[chance.Below(free.Length)].Spaces.Order().Select(s => home.First + s)]);
        }

        SetStates(state, thing, chance);
    }

    private static void SetStates(TableState state, int thing, Chance chance)
    {
        ThingClass of = state.Layout.Class(thing);
        for (int i = 0; i < of.States.Length; i++)
        {
            // A die lies with some face up; a piece that somebody may own is somebody's.
            state.SetState(thing, i, chance.Below(of.States[i].Count - 1 + (of.States[i].Attribute < 0 ? 1 : 0)));
        }
    }

    private static long Held(TableLayout layout, Mark mark, Chance chance) => mark.Sort.Kind switch
    {
        SortKind.Number => (mark.Lowest ?? 0) + chance.Below((int)Math.Min(1_000, (mark.Highest ?? 20) - (mark.Lowest ?? 0) + 1)),
        SortKind.Truth => chance.Below(2),
        SortKind.Player => chance.Below(layout.Seats + 1) - 1,
        SortKind.Space => chance.Below(layout.Sheet.Boards[0].Spaces.Length + 1) - 1,
        SortKind.Value => chance.Below(layout.Values.Facts((Rostrum.Sheets.Model.Attribute)mark.Sort.Of!).Values.Length + 1) - 1,
        _ => 0,
    };

    /// <summary>The seeds of tables.</summary>
    public static Gen<uint> Seeds { get; } = Gen.UInt;
}

/// <summary>Numbers by chance from a seed.</summary>
internal sealed class Chance(uint seed)
{
    private ulong _state = seed + 0x9E3779B97F4A7C15UL;

    /// <summary>A number from 0 up to below a bound; 0 where the bound is 0 or less.</summary>
    public int Below(int bound)
    {
        unchecked
        {
            _state = (_state * 6364136223846793005UL) + 1442695040888963407UL;
            return bound <= 0 ? 0 : (int)((_state >> 33) % (ulong)bound);
        }
    }

    /// <summary>The numbers below a count in any order.</summary>
    public int[] Shuffled(int count)
    {
        int[] all = [.. Enumerable.Range(0, count)];
        for (int i = count - 1; i > 0; i--)
        {
            int j = Below(i + 1);
            (all[i], all[j]) = (all[j], all[i]);
        }

        return all;
    }
}
