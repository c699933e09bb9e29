namespace Rostrum.Play.Layout;

/// <summary>Everything on the table at a moment of play, with the step that is due: one fixed block of numbers, cheap to copy and to compare.</summary>
/// <remarks>
/// Every thing has a number and is in exactly one spot, so nothing is ever made or destroyed; a piece larger than a space stands on each of its spaces with a
/// foot of its own (see <see cref="TableLayout.ThingOfFoot"/>), on rising spots. The feet in a spot are chained from the lowest to the topmost; in spots without
/// an order they are chained by their numbers. Layout of the block of cells, with T things, F feet, S spots and W states a thing:
/// spot (F), below (F), above (F), bottom (S), top (S), count (S), known (S), states (T x W). Known is, for a deck, how many cards from the top down lie in an
/// order that somebody has seen; the others are any order. Not safe to share between threads while it is changed.
/// </remarks>
internal sealed class TableState
{
    /// <summary>No thing, no spot, no value of a state.</summary>
    public const int None = -1;

    private readonly TableLayout _layout;
    private readonly short[] _cells;
    private readonly int _below;
    private readonly int _above;
    private readonly int _bottom;
    private readonly int _top;
    private readonly int _count;
    private readonly int _known;
    private readonly int _states;

    /// <summary>A state in which every thing is still nowhere; <see cref="Place"/> each before anything else.</summary>
    /// <param name="layout">The numbering.</param>
    /// <param name="numbers">How many numbers the course of play keeps.</param>
    /// <param name="sets">How many sets and lists it keeps.</param>
    public TableState(TableLayout layout, int numbers, int sets)
        : this(layout, new short[(3 * layout.ThingOfFoot.Length) + (layout.Things * layout.StateWidth) + (layout.Spots * 4)], new int[numbers], new int[sets][])
    {
        Array.Fill(_cells, (short)None);
        Array.Fill(_cells, (short)0, _count, 2 * layout.Spots);
    }

    private TableState(TableLayout layout, short[] cells, int[] numbers, int[]?[] sets)
    {
        (_layout, _cells, Numbers, Sets) = (layout, cells, numbers, sets);
        _below = layout.ThingOfFoot.Length;
        _above = 2 * _below;
        _bottom = 3 * _below;
        _top = _bottom + layout.Spots;
        _count = _top + layout.Spots;
        _known = _count + layout.Spots;
        _states = _known + layout.Spots;
    }

    /// <summary>The numbering that this state follows.</summary>
    public TableLayout Layout => _layout;

    /// <summary>The numbers of the course: the step that is due, who acts, marks, choices; laid out by the course.</summary>
    public int[] Numbers { get; }

    /// <summary>The sets and lists of the course; null where nothing is kept. Each is replaced whole, never changed.</summary>
    public int[]?[] Sets { get; }

    /// <summary>A copy that changes by itself.</summary>
    public TableState Copy() => new(_layout, (short[])_cells.Clone(), (int[])Numbers.Clone(), Sets.Length == 0 ? Sets : (int[]?[])Sets.Clone());

    /// <summary>Makes this state equal to another of the same layout, without a new block.</summary>
    public void CopyFrom(TableState other)
    {
        other._cells.CopyTo(_cells.AsSpan());
        other.Numbers.CopyTo(Numbers.AsSpan());
        other.Sets.CopyTo(Sets.AsSpan());
    }

    /// <summary>The spot of a foot; of a thing, the first of its spots. <see cref="None"/> for a foot that stands nowhere.</summary>
    public int Spot(int foot) => _cells[foot];

    /// <summary>The foot below another in its spot; <see cref="None"/> for the lowest.</summary>
    public int Below(int foot) => _cells[_below + foot];

    /// <summary>The foot above another in its spot; <see cref="None"/> for the topmost.</summary>
    public int Above(int foot) => _cells[_above + foot];

    /// <summary>The lowest foot in a spot; <see cref="None"/> where it is empty.</summary>
    public int Bottom(int spot) => _cells[_bottom + spot];

    /// <summary>The topmost foot in a spot; <see cref="None"/> where it is empty.</summary>
    public int Top(int spot) => _cells[_top + spot];

    /// <summary>The topmost thing of a spot; <see cref="None"/> where it is empty.</summary>
    public int TopThing(int spot) => Top(spot) is var foot && foot == None ? None : _layout.ThingOfFoot[foot];

    /// <summary>The spots on which a thing lies, rising: of a piece larger than a space that lies on a board every one, else one.</summary>
    public IEnumerable<int> SpotsOf(int thing)
    {
        for (int i = 0; i < _layout.Class(thing).Feet && Spot(_layout.Foot(thing, i)) is var spot && spot != None; i++)
        {
            yield return spot;
        }
    }

    /// <summary>How many things lie in a spot.</summary>
    public int Count(int spot) => _cells[_count + spot];

    /// <summary>How many cards of a deck, from the top down, lie in an order that is known.</summary>
    public int Known(int spot) => _cells[_known + spot];

    /// <summary>Says how many cards of a deck lie in a known order; 0 after it was shuffled.</summary>
    public void SetKnown(int spot, int count)
    {
        _cells[_known + spot] = (short)count;
        if (count == 0)
        {
            Sort(spot);
        }
    }

    /// <summary>A changing value of a thing: 0-based among the values that its class lists; <see cref="None"/> where it has none.</summary>
    /// <param name="thing">Which thing.</param>
    /// <param name="state">The position in <see cref="ThingClass.States"/>.</param>
    public int StateOf(int thing, int state) => _cells[_states + (thing * _layout.StateWidth) + state];

    /// <summary>Gives a thing another changing value.</summary>
    public void SetState(int thing, int state, int value) => _cells[_states + (thing * _layout.StateWidth) + state] = (short)value;

    /// <summary>A number that tells what a thing looks like: equal for two things exactly where nobody could tell them apart but by where they lie.</summary>
    public int LookCode(int thing)
    {
        ThingClass of = _layout.Class(thing);
        int code = 0;
        for (int i = 0; i < of.States.Length; i++)
        {
            code = (code * of.States[i].Count) + StateOf(thing, i) + (of.States[i].Attribute < 0 ? 0 : 1);
        }

        return of.Code + code;
    }

    /// <summary>Puts a thing that is nowhere yet on top of a spot.</summary>
    public void Place(int thing, int spot)
    {
        Holder holder = _layout.SpotHolder[spot];
        if (holder.IsOrdered && !(holder.Form == Rostrum.Sheets.Model.PlaceForm.Deck && Known(spot) == 0))
        {
            Link(thing, spot, Top(spot));
            return;
        }

        int below = Top(spot);
        while (below > thing)
        {
            below = Below(below);
        }

        Link(thing, spot, below);
    }

    /// <summary>Puts a foot that is nowhere yet on top of a spot, whatever the order of its things.</summary>
    public void PutOnTop(int foot, int spot) => Link(foot, spot, Top(spot));

    /// <summary>Lays a piece larger than a space on top of each of several spaces, wherever it was.</summary>
    /// <param name="thing">The piece.</param>
    /// <param name="spots">A spot for each of its feet, rising.</param>
    public void Lay(int thing, ReadOnlySpan<int> spots)
    {
        if (Spot(thing) != None)
        {
            Lift(thing);
        }

        for (int i = 0; i < spots.Length; i++)
        {
            PutOnTop(_layout.Foot(thing, i), spots[i]);
        }
    }

    /// <summary>Says how many cards of a deck lie in a known order, and leaves the order as it is.</summary>
    public void RestoreKnown(int spot, int count) => _cells[_known + spot] = (short)count;

    /// <summary>Moves a thing on top of another spot.</summary>
    public void Move(int thing, int spot)
    {
        Lift(thing);
        if (_layout.SpotHolder[spot].Form == Rostrum.Sheets.Model.PlaceForm.Deck)
        {
            _cells[_known + spot]++;
        }

        Place(thing, spot);
    }

    /// <summary>Takes every thing up, so that each is nowhere; states stay.</summary>
    public void TakeAllUp()
    {
        Array.Fill(_cells, (short)None, 0, _count);
        Array.Fill(_cells, (short)0, _count, 2 * _layout.Spots);
    }

    /// <summary>Exchanges everything that lies in two spots.</summary>
    public void Exchange(int one, int other)
    {
        foreach (int segment in (ReadOnlySpan<int>)[_bottom, _top, _count, _known])
        {
            (_cells[segment + one], _cells[segment + other]) = (_cells[segment + other], _cells[segment + one]);
        }

        Claim(one);
        Claim(other);
    }

    /// <summary>Exchanges two things, each taking the other's place in its spot.</summary>
    public void ExchangeThings(int one, int other)
    {
        (int spot, int below) = (Spot(one), Below(one));
        (int otherSpot, int otherBelow) = (Spot(other), Below(other));
        if (spot == otherSpot && (below == other || otherBelow == one))
        {
            (int lower, int upper) = otherBelow == one ? (one, other) : (other, one);
            int under = Below(lower);
            Unlink(upper);
            Link(upper, spot, under);
            return;
        }

        Unlink(one);
        Unlink(other);
        Link(one, otherSpot, otherBelow);
        Link(other, spot, below);
    }

    private void Lift(int thing)
    {
        Unlink(thing);
        for (int i = 1; i < _layout.Class(thing).Feet && _layout.Foot(thing, i) is var foot && Spot(foot) != None; i++)
        {
            Unlink(foot);
            _cells[foot] = None;
        }
    }

    private void Claim(int spot)
    {
        for (int thing = Bottom(spot); thing != None; thing = Above(thing))
        {
            _cells[thing] = (short)spot;
        }
    }

    private void Link(int thing, int spot, int below)
    {
        int above = below == None ? Bottom(spot) : Above(below);
        _cells[thing] = (short)spot;
        _cells[_below + thing] = (short)below;
        _cells[_above + thing] = (short)above;
        _cells[below == None ? _bottom + spot : _above + below] = (short)thing;
        _cells[above == None ? _top + spot : _below + above] = (short)thing;
        _cells[_count + spot]++;
    }

    private void Unlink(int thing)
    {
        int spot = Spot(thing);
        (int below, int above) = (Below(thing), Above(thing));
        _cells[below == None ? _bottom + spot : _above + below] = (short)above;
        _cells[above == None ? _top + spot : _below + above] = (short)below;
        _cells[_count + spot]--;
        if (Known(spot) > 0)
        {
            _cells[_known + spot]--;
        }
    }

    // The order of a shuffled deck is nobody's knowledge, so equal decks must be equal here.
    private void Sort(int spot)
    {
        int[] things = new int[Count(spot)];
        for (int thing = Bottom(spot), i = 0; thing != None; thing = Above(thing), i++)
        {
            things[i] = thing;
        }

        Array.Sort(things);
        foreach (int thing in things)
        {
            Unlink(thing);
            Link(thing, spot, Top(spot));
        }
    }
}
