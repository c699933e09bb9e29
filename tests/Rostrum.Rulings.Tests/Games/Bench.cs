using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>The bench: the small sheet and position that the examples of the table of operations speak of.</summary>
internal static class Bench
{
    private const string Words = """
        rule sheet: 1
        game: Bench
        players: 2
        pieces:
          ware: {plural: ware, attributes: {form: [bowl, jug, plate, lamp], glaze: [ash, iron, copper]}}
          stick: {count: 30}
        dice:
          fire die: {plural: fire dice, count: 3, faces: 1 2 3 4 5 crescent}
        cards:
          task:
            file: tasks.csv
            columns: {picture: drawing}
        signs: {b: bowl, j: jug, p: plate, l: lamp, a: ash, i: iron, c: copper}
        boards:
          field: {of: each player, squares: 3 across 3 up, stands: upright, columns: bay A to C, rows: tier 1 to 3, spaces: shelf}
        places:
          market: {row of: 3, slots: stall, holds: ware}
          sticks: {heap of: stick, of: each player}
        words:
          touching (space s, space t): s is next to t
          clash (ware v, ware w): (v is copper and w is ash) or (v is ash and w is copper)
          wide (space s): s is not empty
          set worth (set of ware w): 5 if count(w) is 2 and different(v in w, form of v) is 1 otherwise 0
        tables:
          prize: {1: 2, 2: 5, beyond: last}
        actions:
          lay: {phrase: lay on (spot), choose: {spot: a shelf in my field}, do: move a stick from supply to spot}
        """;

    private const string Table = """
        seat 1:
          field: |
            3 ji . .
            2 la bi .
            1 pa jc bc
            / A B C
          sticks: 4
        seat 2:
          sticks: 0
        turn of: seat 1
        """;

    /// <summary>The sheet.</summary>
    public static Sheet Sheet { get; } = Read();

    /// <summary>The position: a stick lies on the bowl at C1.</summary>
    public static Position Position { get; } = WithStick(Game.Position(Sheet, Table));

    /// <summary>A formula in the names of the sheet.</summary>
    public static (Term Term, int FrameSize) Bind(string formula, Sheet? sheet = null)
    {
        var problems = new DiagnosticBag();
        var bound = OutsideFormula.Bind(sheet ?? Sheet, FormulaText.Of(formula, "test"), Sort.Any, problems);
        Assert.Empty(problems.InOrder().Select(p => $"{formula}: {p.Message}"));
        return bound!.Value;
    }

    /// <summary>What a formula gives on a position.</summary>
    public static Value Ask(string formula, Position? position = null, int me = 0)
    {
        (Term term, int size) = Bind(formula, (position ?? Position).Sheet);
        return new Evaluator(position ?? Position, me, Setting.First, new SortedSet<int>()).Evaluate(term, Evaluator.Frame(size));
    }

    /// <summary>A value as the table of operations writes it.</summary>
    public static string Say(Value value) => value switch
    {
        Value.Truth { Is: Kleene.Yes } => "yes",
        Value.Truth { Is: Kleene.No } => "no",
        Value.Number { IsKnown: true, Low: < 0 and var low } => $"minus {-low}",
        Value.Number { IsKnown: true, Low: var low } => $"{low}",
        Value.Nothing => "nothing",
        _ when value.WhyUnknown.IsAny => "not given",
        _ => value.ToString(),
    };

    private static Position WithStick(Position position)
    {
        int space = Sheet.Boards[0].Spaces.Single(s => s.Name.Name == "C1").Name.Index;
        Kind stick = Sheet.Kinds.Single(k => k.Kind.Name == "stick").Kind;
        Stack stack = position.At(0, 0, space);
        return position.With(0, 0, space, stack with { Things = stack.Things.Add(Things.Fresh(Sheet, stick, [], 0)) });
    }

    private static Sheet Read()
    {
        GameFolder folder = GameFolder.InMemory("bench", ("sheet.yaml", Words), ("tasks.csv", "name,picture\nFirst order,[l] / p\n"));
        SheetReading reading = SheetReader.Read(folder, IdiomLibrary.Empty, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        return reading.Sheet!;
    }
}
