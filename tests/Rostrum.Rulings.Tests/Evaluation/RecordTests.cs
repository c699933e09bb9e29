using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Evaluation;

/// <summary>A position does not say what was done before; things wherever they are it says as far as it gives them.</summary>
public sealed class RecordTests
{
    private const string Words = """
        players: 2
        dice: {die: {plural: dice, count: 3, faces: 1 to 6}}
        places: {cup: {heap of: die}, tray: {heap of: die}}
        boards: {field: {squares: 2 across 1 up, spaces: cell}}
        actions:
          jump: {phrase: jump to (goal), choose: {goal: a cell in field}, do: nothing}
        """;

    [Theory]
    [InlineData("jump was done the turn before", GapKind.NotGiven, "what was done before is not given")]
    [InlineData("goal of my last jump is A1", GapKind.NotGiven, "what was done before is not given")]
    public void What_a_position_does_not_say_is_unknown(string formula, object kind, string told)
    {
        Value value = Ask(formula, "cup: 3 dice");

        Assert.False(value.IsSettled);
        Assert.Equal([(kind, told)], value.WhyUnknown.Gaps.Select(g => ((object)g.Kind, g.Told)));
    }

    [Theory]
    [InlineData("start player is me", "", "yes")]
    [InlineData("left of opponent is me", "", "yes")]
    [InlineData("right of me is me", "", "no")]
    [InlineData("start player is me", "turn: set start player to left of start player\n", "who the start player is is not given")]
    [InlineData("round number is 3", "", "the number of the round is not given")]
    [InlineData("turn number is at least 1", "", "yes")]
    public void Seats_are_known_and_numbers_of_rounds_are_not(string formula, string more, string told)
    {
        Value value = Ask(formula, "cup: 3 dice", more);

        Assert.Equal(told, value is Value.Truth { Is: not Kleene.Unknown } truth ? truth.Is == Kleene.Yes ? "yes" : "no" : value.WhyUnknown.Gaps.Single().Told);
    }

    [Theory]
    [InlineData("cup: [die 1, die 6]\ntray: [die 6]", "2", "13")]
    [InlineData("cup: [die 1]\ntray: [die 6]", "1 to 2", " to ")]
    [InlineData("cup: [die 1]", "0 to 2", " to ")]
    public void Dice_are_counted_wherever_they_are(string places, string sixes, string sum)
    {
        Assert.Equal(sixes, Told(Ask("count(dice where face of it is 6)", places)));
        Assert.Equal(sum, Told(Ask("sum(d in dice, face of d)", places)));
    }

    private static string Told(Value value) => value switch
    {
        Value.Number { IsKnown: true } number => $"{number.Low}",
        Value.Number number => $"{number.Low} to {number.High}",
        _ => value.ToString(),
    };

    private static Value Ask(string formula, string places, string more = "")
    {
        Sheet sheet = SheetReader.Read(GameFolder.InMemory("test", ("sheet.yaml", $"{Words}\n{more}")), IdiomLibrary.Empty, []).Sheet!;
        var problems = new DiagnosticBag();
        Position? position = PositionReader.Read(sheet, new SourceText("p.yaml", places), problems).Position;
        Assert.Empty(problems.InOrder().Select(p => p.Message));
        (Term term, int size) = Bench.Bind(formula, sheet);
        return new Evaluator(position!, 0, Setting.First, new SortedSet<int>()).Evaluate(term, Evaluator.Frame(size));
    }
}
