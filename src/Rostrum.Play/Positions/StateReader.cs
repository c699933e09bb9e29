using System.Collections.Immutable;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Positions;

/// <summary>Lays the table of a state as a position says. What the position does not put anywhere lies in the supply.</summary>
/// <remarks>The things of a position have no names, so each becomes the first thing of its look that is left. The cards of a deck that a position names are
/// known in that order.</remarks>
/// <param name="layout">The numbering; its sheet and number of players are those of the position.</param>
/// <param name="markBase">The position of the first mark among the numbers of a state.</param>
/// <param name="otherwise">How the things lie, and what the marks hold, that the position does not give; null for none.</param>
/// <param name="assumed">Gets what is taken for granted where a place or mark is not given; null where nothing is.</param>
internal sealed partial class StateReader(TableLayout layout, int markBase, TableState? otherwise, List<string>? assumed)
{
    private readonly HashSet<Holder> _open = [];
    private readonly Queue<int>[] _left = Left(layout);

    // Which piece lies on some spaces of a board as the so-manieth from below.
    private readonly Dictionary<(int Holder, string Covers, int Below), int> _lying = [];
    private Naming _naming = new(layout.Sheet, 0);

    /// <summary>Puts every thing of a fresh state where the position has it, and sets the marks.</summary>
    /// <param name="layout">The numbering that the state follows.</param>
    /// <param name="position">What lies where; everything must be given.</param>
    /// <param name="state">A state in which every thing is still nowhere.</param>
    /// <param name="markBase">The position of the first mark among its numbers.</param>
    /// <param name="otherwise">How the things lie, and what the marks hold, that the position does not give; null for none.</param>
    /// <param name="assumed">Gets a sentence for each place or mark that is not given: an open place is empty, a bag or deck holds what would begin there and
    /// lies nowhere else, a mark is as at first (as the state has it). Null, without <paramref name="otherwise"/>, where everything must be given.</param>
    /// <exception cref="NotPlayableException">Something is not given, or more things lie there than there are.</exception>
    public static void Read(TableLayout layout, Position position, TableState state, int markBase, TableState? otherwise = null, List<string>? assumed = null) =>
        new StateReader(layout, markBase, otherwise, assumed).Read(position, state);

    private static Queue<int>[] Left(TableLayout layout)
    {
        Queue<int>[] left = [.. layout.Classes.Select(_ => new Queue<int>())];
        for (int thing = 0; thing < layout.Things; thing++)
        {
            left[layout.ClassOf[thing]].Enqueue(thing);
        }

        return left;
    }

    private void Read(Position position, TableState state)
    {
        if (position.Seats != layout.Seats || !ReferenceEquals(position.Sheet, layout.Sheet))
        {
            throw new ArgumentException("The position is of another sheet or of another number of players.", nameof(position));
        }

        _naming = new Naming(layout.Sheet, position.Me);
        foreach (Holder holder in layout.Holders)
        {
            for (int part = 0; part < holder.Length; part++)
            {
                Lay(ContentOf(position, holder, part), holder, part, state);
            }
        }

        if (otherwise is not null)
        {
            LayOtherwise(position, state, otherwise);
        }

        PutAway(state);
        foreach (Mark mark in layout.Sheet.Marks)
        {
            SetMarks(mark, position, state);
        }
    }

    private Stack? ContentOf(Position position, Holder holder, int part)
    {
        int seat = Math.Max(0, holder.Seat);
        return holder.Board is { } board ? position.Boards[layout.Sheet.Boards.IndexOf(board)][seat][part]
            : holder.Facts is { } facts ? position.Places[layout.Sheet.Places.IndexOf(facts)][seat][part]
            : null;
    }

    private void Lay(Stack? content, Holder holder, int part, TableState state)
    {
        if (content is null || (!content.IsGiven && otherwise is not null))
        {
            return;
        }

        if (!content.IsGiven && assumed is not null && holder.Board is null)
        {
            Assume(holder, part);
            return;
        }

        if (!content.IsGiven)
        {
            throw new NotPlayableException($"To play on, everything must be given: nobody says what lies {Where(holder, part)}.", Spot(holder, part));
        }

        int spot = holder.First + part;
        if (holder.Form == PlaceForm.Deck && content.Things.Length > 0)
        {
            state.SetKnown(spot, content.Things.Length);
        }

        for (int i = 0; i < content.Things.Length; i++)
        {
            if (content.Things[i].Covers.IsEmpty)
            {
                state.Place(Take(content.Things[i], holder, part, state), spot);
            }
            else
            {
                state.PutOnTop(FootOf(content, i, holder, part, state), spot);
            }
        }
    }

    // A piece larger than a space is taken at the first of its spaces; there, and on the others, those that lie alike are met in one order.
    private int FootOf(Stack content, int at, Holder holder, int part, TableState state)
    {
        ImmutableArray<int> covers = content.Things[at].Covers;
        int below = content.Things.Take(at).Count(t => t.Covers.AsSpan().SequenceEqual(covers.AsSpan()));
        (int, string, int) lying = (holder.Number, string.Join(' ', covers), below);
        int foot = covers.IndexOf(part);
        if (foot == 0)
        {
            _lying[lying] = Take(content.Things[at], holder, part, state);
        }

        return layout.Foot(_lying[lying], foot);
    }

    private PositionSpot Spot(Holder holder, int part) => new(
        holder.Board is not null, holder.Board is { } board ? layout.Sheet.Boards.IndexOf(board) : layout.Sheet.Places.IndexOf(holder.Facts!), Math.Max(0, holder.Seat), part);

    private string Where(Holder holder, int part) => holder.Board is { } board
        ? $"on {_naming.Space(layout.Sheet.Boards.IndexOf(board), Math.Max(0, holder.Seat), part)}"
        : holder.Facts is { Slots: > 0, SlotNoun: { } noun } ? $"in {noun.Name} {part + 1}"
        : $"in {_naming.Place(holder.Place, Math.Max(0, holder.Seat))}";

    private int Take(Thing thing, Holder holder, int part, TableState state)
    {
        ThingClass[] fitting = [.. layout.Classes.Where(c => Fits(thing, c))];
        if (fitting.Length == 0 || fitting.FirstOrDefault(c => _left[c.Number].Count > 0) is not { } found)
        {
            string look = thing.Kind is null ? "thing" : _naming.Look(thing);
            throw new NotPlayableException(fitting.Length == 0
                ? $"To play on, everything must be given: the {look} {Where(holder, part)} is not told so that it is one of the components."
                : $"More things like the {look} {Where(holder, part)} lie on the table than there are.", Spot(holder, part));
        }

        int taken = _left[found.Number].Dequeue();
        for (int i = 0; i < found.States.Length; i++)
        {
            int attribute = found.States[i].Attribute;
            state.SetState(taken, i, attribute < 0 ? FaceOf(thing, holder) : StateOf(thing, found.Kind.Attributes[attribute], holder, part));
        }

        return taken;
    }

    private static bool Fits(Thing thing, ThingClass of)
    {
        if (!ReferenceEquals(thing.Kind, of.Kind.Kind) || !ReferenceEquals(thing.Card, of.Card) || (of.Kind.Supply.EachPlayer && thing.Owner != of.Owner))
        {
            return false;
        }

        return of.Card is not null
            || of.Kind.Attributes.All(a => ThingTable.IsChanging(a) || thing.Values[a.Attribute.Index] == of.Values[a.Attribute.Index]);
    }

    private int StateOf(Thing thing, AttributeFacts state, Holder holder, int part) => thing.Values[state.Attribute.Index]
        ?? (state.Attribute.Kind.Family == KindFamily.Die && holder.Board is null ? TableState.None
            : throw new NotPlayableException($"To play on, everything must be given: nobody says the {state.Attribute.Name} of the {_naming.Look(thing)} {Where(holder, part)}.", Spot(holder, part)));

    // A card lies as the place has it, unless the position says otherwise.
    private static int FaceOf(Thing thing, Holder holder) => thing.IsFaceUp ?? holder.IsOpen ? ThingClass.FaceUp : 0;

    private void PutAway(TableState state)
    {
        foreach (ThingClass of in layout.Classes)
        {
            foreach (int thing in _left[of.Number])
            {
                Holder home = StartTable.Home(layout, of);
                home = _open.Contains(home) ? home : layout.SupplyOf(of.Owner);
                state.Place(thing, home.First);
                for (int i = 0; i < of.States.Length; i++)
                {
                    state.SetState(thing, i, StartTable.FirstState(of, of.States[i].Attribute, home));
                }
            }
        }
    }

    private void SetMarks(Mark mark, Position position, TableState state)
    {
        ImmutableArray<long?> given = position.Marks[mark.Index];
        for (int at = 0; at < given.Length; at++)
        {
            if (given[at] is null && FromElsewhere(mark, at, state))
            {
                continue;
            }

            long held = given[at] ?? throw new NotPlayableException($"To play on, everything must be given: nobody says '{mark.Name}'{Whose(mark, at)}.", null, mark.DeclaredAt);
            state.Numbers[markBase + layout.MarkStart[mark.Index] + at] = MarkTable.ToState(layout, mark, at, held);
        }
    }

    private string Whose(Mark mark, int at)
    {
        (int seat, int space) = MarkLayout.At(layout.Sheet, mark, at);
        return mark.EachSpaceOf is { } board ? $" of {_naming.Space(layout.Sheet.Boards.IndexOf(layout.Sheet.Board(board)), seat, space)}"
            : mark.EachPlayer ? $" of {_naming.Seat(seat)}" : "";
    }
}
