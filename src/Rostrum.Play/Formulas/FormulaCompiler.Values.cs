using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>What stands by itself: values, letters, places, spaces, marks.</content>
internal sealed partial class FormulaCompiler
{
    private readonly List<string> _texts = [];
    private readonly List<Look> _looks = [];

    private Node Single(Term term, FrameMap frame) => term switch
    {
        Term.Value value => new Constant(layout.Values.Of(value.Which)),
        Term.LookOf look => new Constant(NumberIn(_looks, look.Look)),
        Term.Text text => new Constant(NumberIn(_texts, text.Words)),
        Term.Drawn drawn => new Constant(_fits.Number(drawn.Drawing)),
        Term.CardNamed card => Named(card.Card),
        Term.DirectionNamed direction => new Constant(_boards.Number(direction.Direction)),
        Term.Me => new MeNode(),
        Term.Seat seat => new Constant(seat.Index),
        Term.SpaceNamed space => OfOwner(space.Owner, frame, seat => layout.HolderOf(space.Space.Board, seat).First + space.Space.Index),
        Term.PlaceOf place => OfOwner(place.Owner, frame, seat => Holder(place.Place, place.Owner is null, seat).Number),
        Term.MarkOf mark => MarkOf(mark, frame),
        Term.LineOf line => LineOf(line, frame),
        Term.LinesOf lines => Tabled(Compile(lines.Board, frame), _lines.AllOfHolder(lines.Family)),
        Term.RegionOf region => RegionOf(region, frame),
        Term.LinkOf link => new LookedUp(Compile(link.Space, frame), _boards.BySpot((h, s) => IsOn(h, link.Link.Board) && link.Link.To[s] is { } to ? h.First + to : Node.Nothing)),
        Term.PrintedOn printed => new LookedUp(Compile(printed.Space, frame), _boards.BySpot((h, s) => IsOn(h, printed.Which.Board) && printed.Which.On[s] is { } number ? checked((int)number) : Node.Nothing)),
        _ => throw new InvalidOperationException($"A formula of an unknown form: {term.GetType().Name}."),
    };

    private static bool IsOn(Holder holder, Place board) => ReferenceEquals(holder.Place, board);

    // The table's supply is nobody's; a place of each player without a word of whose is the first seat's, as in rulings.
    private Holder Holder(Place place, bool isNobodys, int seat) =>
        place.Form == PlaceForm.Supply ? layout.SupplyOf(isNobodys ? -1 : seat) : layout.HolderOf(place, place.EachPlayer ? seat : -1);

    private static int NumberIn<T>(List<T> all, T one)
    {
        int known = all.IndexOf(one);
        if (known < 0)
        {
            all.Add(one);
        }

        return known < 0 ? all.Count - 1 : known;
    }

    private Node OfOwner(Term? owner, FrameMap frame, Func<int, int> ofSeat)
    {
        if (owner is null)
        {
            return new Constant(ofSeat(0));
        }

        int[] bySeat = [.. Enumerable.Range(0, layout.Seats).Select(ofSeat)];
        return BySeat(Compile(owner, frame), bySeat);
    }

    private static Node BySeat(Node seat, int[] bySeat) => seat switch
    {
        MeNode => new OfMe(bySeat),
        Constant constant => new Constant(constant.Amount >= 0 && constant.Amount < bySeat.Length ? bySeat[constant.Amount] : Node.Nothing),
        _ => new LookedUp(seat, bySeat),
    };

    private static Node Variable(Term.Variable variable, FrameMap frame)
    {
        FrameMap.Spot spot = frame.Of(variable.Slot);
        return spot switch
        {
            { IsMany: true, IsState: true } => new ManyState(spot.At),
            { IsMany: true } => new ManyLetter(spot.At),
            { IsState: true } => new StateNumber(spot.At),
            _ => new LetterNode(spot.At),
        };
    }

    private Node MarkOf(Term.MarkOf term, FrameMap frame)
    {
        int first = MarkBase + layout.MarkStart[term.Mark.Index];
        if (term.Mark.EachSpaceOf is { } board)
        {
            int[] at = _boards.BySpot((h, space) => IsOn(h, board) ? first + MarkLayout.Of(Sheet, term.Mark, Math.Max(0, h.Seat), space) : Node.Nothing);
            return new StateNumberBy(Compile(term.Owner!, frame), at);
        }

        return term.Owner is null || !term.Mark.EachPlayer
            ? new StateNumber(first)
            : new StateNumberOf(Compile(term.Owner, frame), first, layout.Seats);
    }

    private Node Named(Card card)
    {
        int[] copies = [.. Enumerable.Range(0, layout.Things).Where(t => ReferenceEquals(layout.Class(t).Card, card))];
        int mostSpot = layout.SupplyOf(-1).First;
        return copies.Length switch
        {
            0 => Constant.None,
            1 => new Constant(copies[0]),
            _ => new CardNode(copies, mostSpot),
        };
    }

    private Node LineOf(Term.LineOf term, FrameMap frame)
    {
        Node subject = Compile(term.Subject, frame);
        return term.Subject.Sort.Kind == SortKind.Place
            ? Looked(subject, term.Label is { } label ? _lines.OfHolder(term.Family, label) : [])
            : Looked(subject, _lines.OfSpot(term.Family));
    }

    private Node RegionOf(Term.RegionOf term, FrameMap frame)
    {
        Holder board = layout.HolderOf(term.Region.Board, 0);
        Node player = Compile(term.Player, frame);
        return term.Region.IsSpace
            ? BySeat(player, [.. Enumerable.Range(0, layout.Seats).Select(s => s < term.Region.OfSeat.Length ? board.First + term.Region.OfSeat[s][0] : Node.Nothing)])
            : Tabled(player, [.. term.Region.OfSeat.Take(layout.Seats).Select(s => BoardTables.Spots(board, s))]);
    }

    // What is known beforehand is looked up beforehand.
    private static Node Looked(Node of, int[] table) => of switch
    {
        Constant constant => new Constant(constant.Amount >= 0 && constant.Amount < table.Length ? table[constant.Amount] : Node.Nothing),
        _ => new LookedUp(of, table),
    };

    private static ManyNode Tabled(Node of, int[][] table) => of is Constant constant
        ? constant.Amount >= 0 && constant.Amount < table.Length ? new ConstantMany(table[constant.Amount]) : ConstantMany.Empty
        : new TabledMany(of, () => table);
}
