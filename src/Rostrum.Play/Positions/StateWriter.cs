using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Positions;

/// <summary>Tells a state as a position, for tallies with their reasons and for pictures.</summary>
internal static class StateWriter
{
    /// <summary>The position that a state of a game is, with what the game remembers.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="state">The state; it may be played on, the position stays.</param>
    /// <param name="name">For messages.</param>
    /// <param name="me">The 0-based seat whose turn it is.</param>
    public static Position Write(CoursePlan plan, TableState state, string name, int me) =>
        Write(state, name, me, plan.MarkBase) with { Record = new KeptRecord(plan, state.Copy()) };

    /// <summary>The position that a state is; what lies in the supply or in the box is left out, as in every position, and what was done before is not given.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">For messages.</param>
    /// <param name="me">The 0-based seat whose turn it is.</param>
    /// <param name="markBase">The position of the first mark among the numbers of the state.</param>
    public static Position Write(TableState state, string name, int me, int markBase)
    {
        TableLayout layout = state.Layout;
        Sheet sheet = layout.Sheet;
        return new Position(
            sheet,
            name,
            layout.Seats,
            me,
            [.. sheet.Boards.Select(b => Layers(state, b.Place))],
            [.. sheet.Places.Select(p => Layers(state, p.Place))],
            [.. sheet.Marks.Select(m => Marks(state, m, markBase))]);
    }

    private static ImmutableArray<ImmutableArray<Stack>> Layers(TableState state, Place place)
    {
        int seats = place.EachPlayer ? state.Layout.Seats : 1;
        return [.. Enumerable.Range(0, seats).Select(s => Stacks(state, state.Layout.HolderOf(place, s)))];
    }

    private static ImmutableArray<Stack> Stacks(TableState state, Holder holder) =>
        [.. Enumerable.Range(holder.First, holder.Length).Select(spot => new Stack(Things(state, spot)))];

    private static ImmutableArray<Thing> Things(TableState state, int spot)
    {
        var things = ImmutableArray.CreateBuilder<Thing>(state.Count(spot));
        for (int foot = state.Bottom(spot); foot != TableState.None; foot = state.Above(foot))
        {
            things.Add(ThingOf(state, state.Layout.ThingOfFoot[foot]));
        }

        return things.ToImmutable();
    }

    /// <summary>A thing as a position gives it.</summary>
    public static Thing ThingOf(TableState state, int thing)
    {
        ThingClass of = state.Layout.Class(thing);
        int?[] values = [.. of.Kind.Attributes.Select((a, i) => of.Card is not null && !a.Attribute.IsState ? (int?)of.Values[i] : of.Values[i] < 0 ? null : of.Values[i])];
        int owner = of.Owner;
        bool isFaceUp = true;
        for (int i = 0; i < of.States.Length; i++)
        {
            int value = state.StateOf(thing, i);
            if (of.States[i].Attribute < 0)
            {
                isFaceUp = value == ThingClass.FaceUp;
                continue;
            }

            values[of.States[i].Attribute] = value < 0 ? null : value;
            owner = of.Kind.Attributes[of.States[i].Attribute] is { HoldsPlayer: true, Attribute.Name: "owner" } && value >= 0 ? value : owner;
        }

        return new Thing(of.Kind.Kind, [.. values], of.Card, of.Kind.Supply.EachPlayer ? of.Owner : owner, isFaceUp) { Covers = CoversOf(state, thing) };
    }

    private static ImmutableArray<int> CoversOf(TableState state, int thing)
    {
        Holder holder = state.Layout.SpotHolder[state.Spot(thing)];
        return holder.Board is not null && state.Layout.Class(thing).IsLarge ? [.. state.SpotsOf(thing).Select(s => s - holder.First)] : [];
    }

    private static ImmutableArray<long?> Marks(TableState state, Mark mark, int markBase)
    {
        int first = markBase + state.Layout.MarkStart[mark.Index];
        return [.. Enumerable.Range(0, state.Layout.MarkSize(mark)).Select(s => (long?)MarkTable.ToPosition(state.Layout, mark, s, state.Numbers[first + s]))];
    }
}
