using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>Every line of play of Plank Road, turn by turn: the laws of the sheet say what may be done, its steps say what that leaves. The test itself
/// only lets the two take turns; it knows nothing of peats and planks.</summary>
internal static class PlankRoadPlay
{
    private static readonly Sheet Sheet = ShippedGames.Open("plank-road").Sheet().Sheet!;

    private static readonly ActionFacts[] Laid = [.. Sheet.Actions.Where(a => a.Choices.Length == 1)];

    private static readonly ActionFacts Pass = Sheet.Actions.Single(a => a.Action.Name == "pass");

    /// <summary>The empty marsh before the first turn.</summary>
    public static Position Start
    {
        get
        {
            Position blank = Position.Blank(Sheet, "start", 2);
            Position empty = Enumerable.Range(0, Sheet.Boards[0].Spaces.Length).Aggregate(blank, (p, s) => p.With(0, 0, s, Stack.Empty));
            return empty with { Marks = [.. Sheet.Marks.Select(_ => ImmutableArray.Create<long?>(0))] };
        }
    }

    /// <summary>The positions after one more turn, as often as lines of play lead to them.</summary>
    public static IEnumerable<Position> Next(Position position)
    {
        Position[] laid = [.. Laid.SelectMany(a => Enumerable.Range(0, Sheet.Boards[0].Spaces.Length).Select(s => After(position, a, [new Value.SpaceAt(0, 0, s)]))).OfType<Position>()];
        return laid.Length > 0 ? laid : [After(position, Pass, [])!];
    }

    /// <summary>What tells a position from the others: the marsh, whose turn it is, what was done last.</summary>
    public static string Key(Position position) =>
        $"{position.Me}{string.Concat(position.Marks.Select(m => m[0]))}{string.Join('/', position.Boards[0][0].Select(s => string.Concat(s.Things.Select(t => t.Kind!.Name[1] + $"{t.Owner}"))))}";

    // Null where a law forbids it.
    private static Position? After(Position position, ActionFacts action, ImmutableArray<Value?> chosen)
    {
        var proposal = new Proposal(action, position, chosen, []);
        var laws = new LawJudge(proposal, Setting.First, new SortedSet<int>());
        if (!laws.Laws.All(l => laws.Keeps(position, l).Is == Kleene.Yes))
        {
            return null;
        }

        Value[] frame = proposal.Frame(new Evaluator(position, position.Me, Setting.First, new SortedSet<int>()), 0);
        (Position? after, _) = new StepCarrier(position, position.Me, Setting.First, new SortedSet<int>(), frame).Carry(action.Steps);
        return after! with { Me = 1 - position.Me };
    }
}
