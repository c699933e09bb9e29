using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <summary>Turns typed terms into nodes that work on states. What the course alone can answer (what was done before, what can be done) it asks the course for.</summary>
/// <remarks>Nothing is refused here: a part that the sheet leaves out, or that play does not know, is a node that says so when it is asked.</remarks>
/// <param name="layout">The numbering of the table.</param>
/// <param name="letters">The counter of the run's letters.</param>
/// <param name="readings">Which alternative of each choice is meant, by <see cref="Choice.Id"/>.</param>
internal sealed partial class FormulaCompiler(TableLayout layout, LetterCounter letters, Func<Choice, int> readings)
{
    private readonly BoardTables _boards = new(layout);
    private readonly LineTable _lines = new(layout);

    /// <summary>Compiles terms that only the course of play can answer; null for all others.</summary>
    public Func<Term, FrameMap, Node?> OfCourse { get; set; } = (_, _) => null;

    /// <summary>The position of the first mark among the numbers of a state.</summary>
    public int MarkBase { get; set; }

    /// <summary>The numbering of the table.</summary>
    public TableLayout Layout => layout;

    /// <summary>The shape of all boards, and the directions by number.</summary>
    public BoardTables Boards => _boards;

    /// <summary>The lines of all boards by number.</summary>
    public LineTable Lines => _lines;

    /// <summary>The fits of drawings by number.</summary>
    public FitTable FitsKnown => _fits;

    private Sheet Sheet => layout.Sheet;

    /// <summary>A frame in which nothing is kept yet.</summary>
    public FrameMap Frame() => new(letters);

    /// <summary>The node of a term.</summary>
    public Node Compile(Term term, FrameMap frame) => OfCourse(term, frame) ?? term switch
    {
        Term.Fork fork => Compile(fork.Alternatives[readings(fork.Choice)], frame),
        Term.Idiomatic idiom => Compile(idiom.Inner, Frame()),
        Term.Number number => new Constant(checked((int)number.Amount)),
        Term.Constant constant => new Constant(checked((int)constant.Which.Amount)),
        Term.Truth truth => new Constant(truth.IsYes ? 1 : 0),
        Term.Nothing => Constant.None,
        Term.Variable variable => Variable(variable, frame),
        Term.Apply apply => Operate(apply, frame),
        Term.Matches matches => Matches(matches, frame),
        Term.Call call => Call(call, frame),
        Term.If condition => If(condition, frame),
        Term.Filtered filtered => Through(filtered.Through, frame),
        Term.Property property => Shown(new PropertyNode(Compile(property.Subject, frame), TableOf(property.Attribute)), property.Sort),
        Term.CardCell cell => Cell(cell, frame),
        Term.LookUp lookUp => LookUp(lookUp, frame),
        Term.Within within => Within(within, frame),
        Term.TheOnly only => new OnlyNode(Within(only.All, frame), only.All.Look.Words, only.Origin.Shown),
        Term.Listed listed => Listed(listed, frame),
        Term.AllOf all => ThingsOn(_inTheGame, LookTestOf(all.Look, Sort.Thing)),
        Term.Done or Term.LastChoice or Term.CanDo => ByCourse(term),
        Term.NotModelled gap => new Missing($"{Capital(gap.What)} is not modelled, so the game cannot go on.", gap.Origin.Shown),
        Term.NotYet gap => new Missing($"{Capital(gap.What)} is not worked out yet, so the game cannot go on.", gap.Origin.Shown),
        _ => Single(term, frame),
    };

    /// <summary>The node of a term as a number: a value that is a numeral counts as its number.</summary>
    public Node Number(Term term, FrameMap frame) => AsNumber(Compile(term, frame), term.Sort);

    /// <summary>The node of a term as a set or list; empty where it is neither.</summary>
    public ManyNode Many(Term term, FrameMap frame) => Compile(term, frame) switch
    {
        ManyNode many => many,
        Node loose when term.Sort.IsMany => new LooseMany(loose),
        _ => ConstantMany.Empty,
    };

    private static Missing ByCourse(Term term) => new($"'{term.Origin.Shown.Text}' is known only while a game is played.", term.Origin.Shown);

    // Every spot but the box.
    private readonly ConstantMany _inTheGame = new([.. Enumerable.Range(0, layout.Box.First)]);

    // The face of a die of which the kind is open is a value too.
    private Node AsNumber(Node node, Sort sort) => sort.Kind == SortKind.Value || node is PropertyNode ? Looked(node, _numberOfValue) : node;

    // An attribute whose values are all numerals gives numbers.
    private Node Shown(PropertyNode property, Sort sort) => sort.Kind == SortKind.Number ? Looked(property, _numberOfValue) : property;

    private readonly int[] _numberOfValue = [.. layout.Values.All.Select(v => v.Number is { } number ? checked((int)number) : Node.Nothing)];

    private Node If(Term.If term, FrameMap frame)
    {
        Node condition = Compile(term.Condition, frame);
        if (term.Sort.IsMany)
        {
            return new ManyIf(condition, Many(term.Then, frame), Many(term.Otherwise, frame));
        }

        return new IfNode(condition, Of(term.Then, term.Sort, frame), Of(term.Otherwise, term.Sort, frame));
    }

    // A value beside a number is meant as its number.
    private Node Of(Term term, Sort wanted, FrameMap frame) => wanted.Kind == SortKind.Number ? Number(term, frame) : Compile(term, frame);

    private ManyNode Listed(Term.Listed listed, FrameMap frame)
    {
        Node[] items = [.. listed.Items.Select(i => Of(i, listed.Sort.Element ?? Sort.Any, frame))];
        return items.All(i => i is Constant) ? new ConstantMany([.. items.Select(i => ((Constant)i).Amount)]) : new ListedNode(items);
    }

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
