using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>What the evaluator looks up in a sheet again and again, worked out once a sheet.</summary>
internal sealed class SheetIndex
{
    // Remembered beside the sheet for as long as the sheet lives; a pure function of it, so nobody can tell.
    private static readonly ConditionalWeakTable<Sheet, SheetIndex> Known = [];
    private readonly Dictionary<Place, int> _boards = [];
    private readonly Dictionary<Place, int> _places = [];
    private readonly Dictionary<Rostrum.Sheets.Model.Attribute, AttributeFacts> _attributes = [];

    private readonly Sheet _sheet;
    private readonly Lazy<HashSet<ActionName>> _inCircle;
    private readonly ConcurrentDictionary<Kind, SupplyWays> _supplyWays = [];
    private readonly ConcurrentDictionary<Term, WorthReads> _worths = new(ReferenceEqualityComparer.Instance);

    private SheetIndex(Sheet sheet)
    {
        _sheet = sheet;
        _inCircle = new Lazy<HashSet<ActionName>>(() => [.. sheet.Actions.Select(a => a.Action).Where(IsInCircle)]);
        SetsStartPlayer = sheet.AllSteps.Any(s => s is { Kind: StepKind.Set, Terms: [Term.StartPlayer, ..] });
        Geometry = [.. sheet.Boards.Select(BoardGeometry.Of)];
        for (int i = 0; i < sheet.Boards.Length; i++)
        {
            _boards[sheet.Boards[i].Place] = i;
        }

        for (int i = 0; i < sheet.Places.Length; i++)
        {
            _places[sheet.Places[i].Place] = i;
        }

        foreach (AttributeFacts facts in sheet.Kinds.SelectMany(k => k.Attributes))
        {
            _attributes[facts.Attribute] = facts;
        }
    }

    /// <summary>The shape of each board.</summary>
    public ImmutableArray<BoardGeometry> Geometry { get; }

    /// <summary>True where a step makes somebody the start player, so that the first seat need not be it.</summary>
    public bool SetsStartPlayer { get; }

    /// <summary>The index of a sheet.</summary>
    public static SheetIndex Of(Sheet sheet) => Known.GetValue(sheet, s => new SheetIndex(s));

    /// <summary>The position in <see cref="Sheet.Boards"/>; -1 for a place that is no board.</summary>
    public int BoardOf(Place place) => _boards.TryGetValue(place, out int at) ? at : -1;

    /// <summary>The position in <see cref="Sheet.Places"/>; -1 for a board, the supply and the box.</summary>
    public int PlaceOf(Place place) => _places.TryGetValue(place, out int at) ? at : -1;

    /// <summary>The values of an attribute.</summary>
    public AttributeFacts Facts(Rostrum.Sheets.Model.Attribute attribute) => _attributes[attribute];

    /// <summary>How things of a kind come into a supply and out of it.</summary>
    public SupplyWays SupplyWaysOf(Kind kind) => _supplyWays.GetOrAdd(kind, k => new SupplyWays(_sheet, k));

    /// <summary>What a worth depends on.</summary>
    public WorthReads ReadsOf(Term worth) => _worths.GetOrAdd(worth, w => new WorthReads(_sheet, w));

    /// <summary>True where somebody would have to know whether an action can be done in order to say whether it can be done.</summary>
    public bool AsksItself(ActionName action) => _inCircle.Value.Contains(action);

    private bool IsInCircle(ActionName action)
    {
        var met = new HashSet<ActionName>();
        var open = new Stack<ActionName>(Asked(action));
        while (open.TryPop(out ActionName? next))
        {
            if (ReferenceEquals(next, action))
            {
                return true;
            }

            if (met.Add(next))
            {
                Asked(next).ToList().ForEach(open.Push);
            }
        }

        return false;
    }

    // The actions of which the choices and laws of one ask whether they can be done.
    private IEnumerable<ActionName> Asked(ActionName action)
    {
        IEnumerable<Term> demands = _sheet.Laws.Where(l => l.Binds.Contains(action)).SelectMany(l => l.Bodies.Select(b => b[l.Binds.IndexOf(action)]))
            .SelectMany(b => b.Truths);
        return InMeanings(_sheet.Actions[action.Index].Choices.Select(c => c.From).Concat(demands)).OfType<Term.CanDo>().Select(c => c.Action).Distinct();
    }

    // All terms inside some, through the meanings of words.
    private List<Term> InMeanings(IEnumerable<Term> terms)
    {
        var words = new HashSet<Word>();
        var all = new List<Term>();
        var open = new Stack<Term>(terms);
        while (open.TryPop(out Term? term))
        {
            all.Add(term);
            TermParts.Of(term).ToList().ForEach(open.Push);
            if (term is Term.Call call && words.Add(call.Word) && _sheet.Meanings[call.Word.Index].Body is { } body)
            {
                open.Push(body);
            }
        }

        return all;
    }
}
