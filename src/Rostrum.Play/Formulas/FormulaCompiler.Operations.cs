using Rostrum.Play.Formulas.Nodes;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Which nodes give the meaning of which operation of the table.</content>
internal sealed partial class FormulaCompiler
{
    private Node Operate(Term.Apply apply, FrameMap frame) => apply.Operation.Id switch
    {
        Op.And when apply.Arguments.Length == 2 => new BothNode(At(apply, 0, frame), At(apply, 1, frame)),
        Op.And => new EachNode([.. apply.Arguments.Select(a => Compile(a!, frame))]),
        Op.Or => new OneNode([.. apply.Arguments.Select(a => Compile(a!, frame))]),
        Op.Not => new NotNode(At(apply, 0, frame)),
        >= Op.Same and <= Op.Can => Test(apply, frame),
        >= Op.Plus and <= Op.Opponent => Sign(apply, frame),
        >= Op.Count and <= Op.Together => GoThrough(apply, frame),
        >= Op.First and <= Op.OrderOf => Element(apply, frame),
        >= Op.TopOf and <= Op.FaceOf => Property(apply, frame),
        >= Op.NeighboursOf and <= Op.Following => Geometry(apply, frame),
        Op.Groups => Groups(apply, frame),
        Op.LongestWay => LongestWay(apply, frame),
        Op.MostPairs => MostPairs(apply, frame),
        Op.BestSplit => BestSplit(apply, frame),
        Op.Fits => Fits(apply, frame),
        Op.AnchorOf => new AnchorNode(At(apply, 0, frame), _fits),
        >= Op.Difference and <= Op.Nearest => Rounded(apply, frame),
        Op.SpacesOf => Spaces(apply.Argument(0), frame),
        Op.ThingsIn => Things(apply.Argument(0), null, frame),
        Op.SlotsOf => Slots(apply.Argument(0), frame),
        Op.SeatBeside => new BesideNode(At(apply, 0, frame), apply.Argument(1) is Term.DirectionNamed { Direction.Name: "left" } ? 1 : layout.Seats - 1, layout.Seats),
        _ => throw new InvalidOperationException($"No meaning is known for '{apply.Operation.Name}'."),
    };

    private Node At(Term.Apply apply, int argument, FrameMap frame) => Compile(apply.Argument(argument), frame);

    private Node NumberAt(Term.Apply apply, int argument, FrameMap frame) => Number(apply.Argument(argument), frame);

    private ManyNode ManyAt(Term.Apply apply, int argument, FrameMap frame) => Many(apply.Argument(argument), frame);

    private Node Test(Term.Apply apply, FrameMap frame) => apply.Operation.Id switch
    {
        Op.IsNothing => new IsNothingNode(At(apply, 0, frame)),
        Op.Same => Same(apply.Argument(0), apply.Argument(1), frame),
        Op.In => In(apply.Argument(0), apply.Argument(1), frame),
        Op.NextTo => new NextToNode(At(apply, 0, frame), At(apply, 1, frame), _boards.Neighbours),
        Op.AtLeast => new AtLeastNode(NumberAt(apply, 0, frame), NumberAt(apply, 1, frame)),
        Op.AtMost => new AtLeastNode(NumberAt(apply, 1, frame), NumberAt(apply, 0, frame)),
        Op.MoreThan => new MoreThanNode(NumberAt(apply, 0, frame), NumberAt(apply, 1, frame)),
        Op.LessThan => new MoreThanNode(NumberAt(apply, 1, frame), NumberAt(apply, 0, frame)),
        Op.Between => new BetweenNode(NumberAt(apply, 0, frame), NumberAt(apply, 1, frame), NumberAt(apply, 2, frame)),
        _ => new Missing($"'{apply.Origin.Shown.Text}' is not worked out yet, so the game cannot go on.", apply.Origin.Shown),
    };

    private Node Sign(Term.Apply apply, FrameMap frame) => apply.Operation.Id switch
    {
        Op.Plus => new PlusNode(NumberAt(apply, 0, frame), NumberAt(apply, 1, frame)),
        Op.Minus => new MinusNode(NumberAt(apply, 0, frame), NumberAt(apply, 1, frame)),
        Op.Times => new TimesNode(NumberAt(apply, 0, frame), NumberAt(apply, 1, frame)),
        Op.Negative => new NegativeNode(NumberAt(apply, 0, frame)),
        Op.Except => new ExceptNode(ManyAt(apply, 0, frame), ManyAt(apply, 1, frame), LikenessOf(apply.Argument(0).Sort.Element)),
        Op.TogetherWith => new UnionNode(ManyAt(apply, 0, frame), ManyAt(apply, 1, frame), LikenessOf(apply.Argument(0).Sort.Element)),
        Op.Range => Range(apply, frame),
        Op.Players => new ConstantMany([.. Enumerable.Range(0, layout.Seats)]),
        _ => layout.Seats == 2 ? new OfMe([1, 0]) : Constant.None,
    };

    private Node Range(Term.Apply apply, FrameMap frame)
    {
        var range = new RangeNode(NumberAt(apply, 0, frame), NumberAt(apply, 1, frame), apply.Origin.Shown);
        return NumberAt(apply, 0, frame) is Constant { Amount: var low } && NumberAt(apply, 1, frame) is Constant { Amount: var high } && high - (long)low < 1000
            ? new ConstantMany([.. Enumerable.Range(low, Math.Max(0, high - low + 1))])
            : range;
    }

    private Node Rounded(Term.Apply apply, FrameMap frame)
    {
        (Node m, Node n) = (NumberAt(apply, 0, frame), NumberAt(apply, 1, frame));
        return apply.Operation.Id switch
        {
            Op.Difference => new DifferenceNode(m, n),
            Op.Down => new DividedNode(m, n, Rounding.Down, apply.Origin.Shown),
            Op.Up => new DividedNode(m, n, Rounding.Up, apply.Origin.Shown),
            _ => new DividedNode(m, n, Rounding.Nearest, apply.Origin.Shown),
        };
    }

    private Node Element(Term.Apply apply, FrameMap frame) => apply.Operation.Id switch
    {
        Op.First => new ItemNode(ManyAt(apply, 0, frame), new Constant(1)),
        Op.Last => new LastNode(ManyAt(apply, 0, frame)),
        Op.Item => new ItemNode(ManyAt(apply, 1, frame), NumberAt(apply, 0, frame)),
        _ => OrderOf(apply.Argument(0), frame),
    };

    private Node OrderOf(Term term, FrameMap frame)
    {
        Node of = Compile(term, frame);
        return term.Sort.Kind switch
        {
            SortKind.Line => Looked(of, _lines.Orders),
            SortKind.Space or SortKind.Slot => Looked(of, [.. layout.SpotHolder.Select((h, spot) => h.Form is PlaceForm.Board or PlaceForm.Row ? spot - h.First + 1 : Node.Nothing)]),
            SortKind.Player => Looked(of, [.. Enumerable.Range(1, layout.Seats)]),
            SortKind.Value => Looked(of, [.. layout.Values.All.Select(v => term is not Term.Value && layout.Values.IsNumeric(v.Attribute) ? Node.Nothing : v.Index + 1)]),
            _ => Constant.None,
        };
    }

    /// <summary>Rounding of divisions by numbers above 0.</summary>
    private static class Rounding
    {
        public static long Down(long m, long n) => (m / n) - (m % n < 0 ? 1 : 0);

        public static long Up(long m, long n) => -Down(-m, n);

        // A half goes up.
        public static long Nearest(long m, long n) => Down((2 * m) + n, 2 * n);
    }
}
