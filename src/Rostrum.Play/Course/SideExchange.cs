using System.Collections.Immutable;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>Two players change sides: boards, places, supplies, pieces, marks and whatever names one of them is the other's from then on.</summary>
/// <remarks>Players stay on their seats, so turns go on as before; a piece of the one becomes the piece of the other that is like it.</remarks>
internal sealed class SideExchange
{
    private readonly CoursePlan _plan;
    private readonly int _one;
    private readonly int _other;
    private readonly int[] _spots;
    private readonly int[] _things;

    /// <summary>An exchange between two seats.</summary>
    public SideExchange(CoursePlan plan, int one, int other)
    {
        (_plan, _one, _other) = (plan, one, other);
        _spots = [.. Enumerable.Range(0, Layout.Spots).Select(SpotOf)];
        _things = [.. Enumerable.Range(0, Layout.Things)];
        foreach ((int mine, int theirs) in ThingsOf(one).Zip(ThingsOf(other)))
        {
            (_things[mine], _things[theirs]) = (theirs, mine);
        }
    }

    private TableLayout Layout => _plan.Layout;

    /// <summary>Carries it out on a state.</summary>
    public void Carry(TableState state)
    {
        TableState before = state.Copy();
        state.TakeAllUp();
        for (int spot = 0; spot < Layout.Spots; spot++)
        {
            Fill(state, before, spot);
        }

        for (int thing = 0; thing < Layout.Things; thing++)
        {
            SetStates(state, before, thing);
        }

        foreach (Mark mark in Layout.Sheet.Marks)
        {
            SetMarks(state, before, mark);
        }

        SetNames(state, before);
    }

    private int Seat(int seat) => seat == _one ? _other : seat == _other ? _one : seat;

    private int SpotOf(int spot)
    {
        Holder holder = Layout.SpotHolder[spot];
        return Layout.Holders.First(h => ReferenceEquals(h.Place, holder.Place) && h.Seat == Seat(holder.Seat)).First + spot - holder.First;
    }

    private IEnumerable<int> ThingsOf(int seat) => Enumerable.Range(0, Layout.Things).Where(t => Layout.Class(t).Owner == seat);

    private void Fill(TableState state, TableState before, int spot)
    {
        int to = _spots[spot];
        state.RestoreKnown(to, before.Known(spot));
        for (int foot = before.Bottom(spot); foot != TableState.None; foot = before.Above(foot))
        {
            int thing = Layout.ThingOfFoot[foot];
            if (foot == thing)
            {
                state.Place(_things[thing], to);
            }
            else
            {
                state.PutOnTop(Layout.Foot(_things[thing], foot - Layout.SecondFoot[thing] + 1), to);
            }
        }
    }

    private void SetStates(TableState state, TableState before, int thing)
    {
        ThingClass of = Layout.Class(thing);
        for (int i = 0; i < of.States.Length; i++)
        {
            bool isPlayer = of.States[i].Attribute >= 0 && of.Kind.Attributes[of.States[i].Attribute].HoldsPlayer;
            state.SetState(_things[thing], i, isPlayer ? Seat(before.StateOf(thing, i)) : before.StateOf(thing, i));
        }
    }

    private void SetMarks(TableState state, TableState before, Mark mark)
    {
        int first = _plan.MarkBase + Layout.MarkStart[mark.Index];
        for (int at = 0; at < Layout.MarkSize(mark); at++)
        {
            (int seat, int space) = MarkLayout.At(Layout.Sheet, mark, at);
            int to = !MarkLayout.IsOfSeat(mark) ? at : mark.EachSpaceOf is null ? Seat(at) : MarkLayout.Of(Layout.Sheet, mark, Seat(seat), space);
            int held = before.Numbers[first + at];
            state.Numbers[first + to] = held < 0 ? held : mark.Sort.Kind switch
            {
                SortKind.Player => Seat(held),
                SortKind.Space or SortKind.Slot => _spots[held],
                _ => held,
            };
        }
    }

    // Things that choices and names of steps hold go on to be the same ones on the table.
    private void SetNames(TableState state, TableState before)
    {
        (ImmutableArray<bool> numbers, ImmutableArray<bool> sets) = _plan.ThingSlots;
        for (int i = 0; i < numbers.Length; i++)
        {
            state.Numbers[i] = numbers[i] && before.Numbers[i] >= 0 ? _things[before.Numbers[i]] : state.Numbers[i];
        }

        for (int i = 0; i < sets.Length; i++)
        {
            state.Sets[i] = sets[i] ? before.Sets[i]?.Select(t => t < 0 ? t : _things[t]).ToArray() : state.Sets[i];
        }
    }
}
