using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Blocks and hooks with their frames, who sits beside whom, the start player and the numbers of rounds and turns.</summary>
public sealed class HookTests
{
    private const string Game = """
        players: 3
        pieces: {stone: {each player: 9}}
        boards: {field: {squares: 3 across 3 up, spaces: cell}}
        marks: {leader: {holds: player}, coins: {holds: 0 to 9, of: each player}}
        actions:
          lay: {phrase: lay (what) on (spot), choose: {what: one of my supply, spot: a cell in field}, do: move what to spot}

        """;

    [Fact]
    public void A_block_has_a_frame_for_its_steps()
    {
        Block block = Assert.Single(Read("turn: {do: [let best be leader, for each s in field: [if s is empty and best is me: lay]]}").Blocks);

        Assert.Equal(("turn", 2, 2), (block.Name, block.Steps.Length, block.FrameSize));
    }

    [Fact]
    public void The_course_does_blocks()
    {
        Step[] steps = [.. Read("set-up: nothing\nturn: lay\ncourse: [set-up, repeat 7 times: [turn]]").Blocks.Single(b => b.Name == "course").Steps];

        Assert.Equal(("set-up", "Set-up."), (steps[0].Block, steps[0].Sentence));
        Assert.Equal((StepKind.Call, "turn", null), (steps[1].Inner[0].Kind, steps[1].Inner[0].Block, steps[1].Inner[0].Action));
    }

    [Theory]
    [InlineData("before lay", HookWhen.Before, "lay", true)]
    [InlineData("after lay", HookWhen.After, "lay", true)]
    [InlineData("instead of turn", HookWhen.InsteadOf, "turn", false)]
    [InlineData("after set-up", HookWhen.After, "set-up", false)]
    public void A_hook_says_when_it_is_done(string key, HookWhen when, string block, bool onAction)
    {
        Sheet sheet = Read($"{key}: add 1 to my coins");
        Hook hook = Assert.Single(sheet.Hooks);

        Assert.Equal((when, block, onAction, key), (hook.When, hook.Block, hook.Action is not null, hook.Key));
        Assert.Empty(sheet.Blocks);
    }

    [Fact]
    public void A_hook_on_an_action_knows_its_choices_where_they_stand()
    {
        Sheet sheet = Read("after lay: {do: [if spot is next to B2: add 1 to my coins]}");
        ActionChoice spot = sheet.Actions[0].Choices[1];

        Step step = sheet.Hooks[0].Steps[0];
        Assert.Equal(spot.Slot, ((Term.Variable)((Term.Apply)step.Terms[0]).Argument(0)).Slot);
        Assert.Equal(2, sheet.Hooks[0].FrameSize);
    }

    [Theory]
    [InlineData("left of me", Op.SeatBeside, "left")]
    [InlineData("right of leader", Op.SeatBeside, "right")]
    [InlineData("left of B2", Op.Step, "left")]
    public void Left_and_right_of_a_player_are_players(string formula, Op operation, string side)
    {
        var beside = (Term.Apply)Read($"words: {{asked: {formula}}}").Meanings[0].Body;

        Assert.Equal((operation, side), (beside.Operation.Id, ((Term.DirectionNamed)beside.Arguments[1]!).Direction.Name));
        Assert.Equal(operation == Op.Step ? SortKind.Space : SortKind.Player, beside.Sort.Kind);
    }

    [Fact]
    public void A_step_may_set_the_start_player()
    {
        Step step = Read("turn: set start player to left of start player").Blocks[0].Steps[0];

        Assert.Equal(StepKind.Set, step.Kind);
        Assert.IsType<Term.StartPlayer>(step.Terms[0]);
        Assert.IsType<Term.StartPlayer>(((Term.Apply)step.Terms[1]).Arguments[0]);
    }

    [Theory]
    [InlineData("round number", CounterKind.Round)]
    [InlineData("turn number", CounterKind.Turn)]
    public void Rounds_and_turns_are_numbered(string formula, CounterKind kind) =>
        Assert.Equal(kind, ((Term.Counter)Read($"words: {{asked: {formula}}}").Meanings[0].Body).Kind);

    [Fact]
    public void A_name_of_the_sheet_comes_before_the_number_of_the_round() =>
        Assert.IsType<Term.Constant>(Read("numbers: {round number: 4}\nwords: {asked: round number}").Meanings[0].Body);

    [Theory]
    [InlineData("before lya: nothing", "ROS0201", "lya")]
    [InlineData("after lay: {do: [if sopt is empty: nothing]}", "ROS0201", "sopt")]
    [InlineData("course: [closing]", "ROS0214", "closing")]
    [InlineData("course: [colsing]\nclosing: nothing", "ROS0214", "colsing")]
    [InlineData("turn: set start player to 3", "ROS0302", "3")]
    [InlineData("turn: add 1 to start player", "ROS0320", "start player")]
    [InlineData("words: {asked: north of me}", "ROS0302", "me")]
    public void Mistakes_are_told_where_they_stand(string text, string id, string at)
    {
        Diagnostic problem = Loaded.Of(Game + text).Reading.Problems[0];

        Assert.Equal((id, at), (problem.Id, problem.At.Text));
    }

    private static Sheet Read(string text)
    {
        Loaded loaded = Loaded.Of(Game + text);
        Assert.Empty(loaded.Told);
        return loaded.Sheet;
    }
}
