using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Formulas about what was done before, about what somebody can do, and about things wherever they are.</summary>
public sealed class RecordTests
{
    private const string Board = """
        players: 2
        pieces: {stone: {each player: 9}}
        dice: {die: {plural: dice, count: 3, faces: 1 to 6}}
        boards: {field: {squares: 3 across 3 up, rows: row, spaces: cell}}
        actions:
          jump:
            phrase: jump from (start) to (goal)
            choose: {start: a cell in field, goal: a cell in field where it is not start of my last jump}
            do: move top of start to goal
          shift:
            phrase: shift (line)
            choose: {line: one of rows of field where it is not line of last shift, far: goal of last jump}
            do: nothing
          pass: {do: nothing}
        """;

    [Theory]
    [InlineData("shift was done this turn", DoneWhen.ThisTurn, false)]
    [InlineData("jump from was done the turn before by opponent", DoneWhen.TurnBefore, true)]
    [InlineData("pass was done this round by me", DoneWhen.ThisRound, true)]
    [InlineData("pass was done the round before", DoneWhen.RoundBefore, false)]
    [InlineData("pass was done before", DoneWhen.Before, false)]
    public void What_was_done_is_asked_of_the_record(string formula, DoneWhen when, bool hasPlayer)
    {
        var done = (Term.Done)Meaning(formula);

        Assert.Equal((when, hasPlayer), (done.When, done.By is not null));
        Assert.StartsWith(done.Action.Name, formula, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_done_is_the_other_way_round()
    {
        var not = (Term.Apply)Meaning("pass was not done this turn");

        Assert.Equal(Op.Not, not.Operation.Id);
        Assert.IsType<Term.Done>(not.Arguments[0]);
    }

    [Theory]
    [InlineData("goal of my last jump", "jump", 1, true, SortKind.Space)]
    [InlineData("start of last jump", "jump", 0, false, SortKind.Space)]
    [InlineData("line of last shift", "shift", 0, false, SortKind.Line)]
    [InlineData("far of last shift", "shift", 1, false, SortKind.Space)]
    public void What_was_chosen_last_has_the_sort_of_its_choice(string formula, string action, int choice, bool mine, SortKind sort)
    {
        var last = (Term.LastChoice)Meaning(formula);

        Assert.Equal((action, choice, mine, sort), (last.Action.Name, last.Choice, last.Mine, last.Sort.Kind));
    }

    [Theory]
    [InlineData("I can jump", "jump", 0)]
    [InlineData("me can jump from B2", "jump", 1)]
    [InlineData("me can jump from B2 to C3", "jump", 2)]
    [InlineData("opponent can pass", "pass", 0)]
    public void Somebody_can_do_an_action_with_its_first_gaps(string formula, string action, int given)
    {
        var can = (Term.CanDo)Meaning(formula);

        Assert.Equal((action, given), (can.Action.Name, can.Given.Length));
        Assert.All(can.Given, g => Assert.Equal(SortKind.Space, g.Sort.Kind));
    }

    [Theory]
    [InlineData("any(p in players where p can pass)")]
    [InlineData("any(s in field where I can jump from s and s is not empty)")]
    [InlineData("not (I can jump) or B2 is empty")]
    public void What_somebody_can_do_stands_inside_other_formulas(string formula) => Assert.Equal(SortKind.Truth, Meaning(formula).Sort.Kind);

    [Theory]
    [InlineData("count(dice where face of it is 6)")]
    [InlineData("sum(d in dice, face of d)")]
    public void A_look_of_dice_names_them_wherever_they_are(string formula)
    {
        var apply = (Term.Apply)Meaning(formula);

        var all = Assert.IsType<Term.AllOf>(apply.Pick!.Domain is Term.Filtered filtered ? filtered.Through.Domain : apply.Pick.Domain);
        Assert.Equal("die", all.Look.Kind!.Name);
    }

    [Fact]
    public void Dice_are_rolled_as_a_set()
    {
        Loaded loaded = Loaded.Of(Board + "\nturn:\n  - roll dice\n  - for each d in dice where face of d is 1: roll d\n");

        Assert.Empty(loaded.Told);
        Assert.IsType<Term.AllOf>(loaded.Sheet.Blocks[0].Steps[0].Terms[0]);
    }

    [Fact]
    public void This_action_is_the_one_that_a_law_binds()
    {
        Loaded loaded = Loaded.Of(Board + "\nlaws: {not twice: {binds: [shift, pass], forbids: this action was done the round before by me}}\n");

        Assert.Empty(loaded.Told);
        Assert.Equal(["shift", "pass"], loaded.Sheet.Laws[0].Bodies[0].Select(b => ((Term.Done)b.Demands[0].Truth).Action.Name));
    }

    [Theory]
    [InlineData("this action was done before", "ROS0205", "this action")]
    [InlineData("gaol of last jump", "ROS0201", "gaol")]
    [InlineData("me can jmup", "ROS0201", "jmup")]
    [InlineData("3 can jump", "ROS0302", "3")]
    [InlineData("me can jump from 3", "ROS0302", "3")]
    [InlineData("goal of last jump + 1", "ROS0302", "goal of last jump")]
    public void Mistakes_are_told_where_they_stand(string formula, string id, string at)
    {
        Diagnostic problem = Loaded.Problem($"{Board}\nwords: {{asked: {formula}}}\n");

        Assert.Equal((id, at), (problem.Id, problem.At.Text));
    }

    [Fact]
    public void A_choice_that_is_only_what_was_chosen_last_is_refused()
    {
        Diagnostic problem = Loaded.Problem("actions: {shift: {phrase: shift (goal), choose: {goal: one of goal of last shift}, do: nothing}}");

        Assert.Equal(("ROS0210", "goal of last shift"), (problem.Id, problem.At.Text));
    }

    private static Term Meaning(string formula)
    {
        Loaded loaded = Loaded.Of($"{Board}\nwords: {{asked: {formula}}}\n");
        Assert.Empty(loaded.Told);
        return loaded.Sheet.Meanings.Single(m => m.Word.Name == "asked").Body;
    }
}
