using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Tests.Formulas;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Steps;

/// <summary>Steps as terms, in the order that the executors rely on, and the messages about them.</summary>
public sealed class StepReaderTests
{
    public static TheoryData<string, string> Wrong => new()
    {
        { "ROS0190", "«draw» 2 from crate to my carried" },
        { "ROS0190", "«turn» top of A1 to cracked" },
        { "ROS0190", "«turn» First order face down" },
        { "ROS0191", "«if lit»" },
        { "ROS0191", "- «may»:" },
        { "ROS0192", "- «again»:\n    - nothing" },
        { "ROS0193", "- again\n- «otherwise»:\n    - nothing" },
        { "ROS0194", "move «jugs» from my field to crate" },
        { "ROS0214", "«mvoe» a jug from my carried to crate" },
        { "ROS0214", "«use the klin on» A1" },
        { "ROS0214", "«fro each» s in my field:\n  - flip top of s" },
        { "ROS0214", "«xyzzy»" },
        { "ROS0203", "- for each «x» in my field:\n    - nothing" },
        { "ROS0238", "- let «market» be 3\n- set my coins to market" },
        { "ROS0239", "- let «pot» be 3\n- again" },
        { "ROS0320", "set «A1» to 3" },
        { "ROS0321", "change top of A1 to «copper»" },
        { "ROS0322", "deal 2 from «my sticks» to my carried" },
        { "ROS0302", "move top of A1 to «3»" },
        { "ROS0302", "add «A1» to my coins" },
        { "ROS0302", "move «A1» to crate" },
        { "ROS0180", "swap A1 «with» B1" },
        { "ROS0180", "lay top of A1 «at» B1" },
    };

    public static TheoryData<string, string> Fixes => new()
    {
        { "draw 2 from crate to my carried", "deal 2 from crate to my carried" },
        { "turn top of A1 to cracked", "change top of A1 to cracked" },
        { "turn First order face down", "flip First order face down" },
        { "move jugs from my field to crate", "move all jugs from my field to crate" },
        { "mvoe a jug from my carried to crate", "move a jug from my carried to crate" },
        { "use the klin on A1", "use the kiln on A1" },
    };

    public static TheoryData<string, string> Terms => new()
    {
        { "move all ware from A1 to my carried", "Move: Nothing, LookOf, SpaceNamed, PlaceOf" },
        { "move a jug from my carried to A1", "Move: Number, LookOf, PlaceOf, SpaceNamed" },
        { "move (1 + order of me) sticks from supply to my sticks", "Move: Apply, LookOf, PlaceOf, PlaceOf" },
        { "move w to s", "Move: Nothing, Variable, Nothing, Variable" },
        { "move First order to my accepted face up", "Move: Nothing, CardNamed, Nothing, PlaceOf, Truth" },
        { "deal 2 from crate to my carried", "Deal: Number, PlaceOf, PlaceOf" },
        { "deal 1 from order pile to my accepted face down", "Deal: Number, PlaceOf, PlaceOf, Truth" },
        { "change w to cracked", "Change: Variable, Value" },
        { "flip First order face up", "Change: CardNamed, Truth" },
        { "flip First order", "Change: CardNamed, Nothing" },
        { "shuffle order pile", "Shuffle: PlaceOf" },
        { "roll fire dice", "Roll: AllOf" },
        { "swap A1 and B1", "Swap: SpaceNamed, SpaceNamed" },
        { "push bay of A1 going above off to box", "Push: LineOf, DirectionNamed, PlaceOf" },
        { "push bay of A1 going above round", "Push: LineOf, DirectionNamed, Nothing" },
        { "show my carried to p", "Show: PlaceOf, Variable" },
        { "set leader to me", "Set: MarkOf, Me" },
        { "add 2 to my coins", "Add: MarkOf, Number" },
        { "take 2 from coins of p", "Take: MarkOf, Number" },
        { "end the game by three in a row", "EndGame: Text" },
        { "end turn", "EndTurn: " },
        { "lay w on s", "Call: Variable, Variable" },
        { "lay w", "Call: Variable" },
        { "lay", "Call: " },
        { "use the kiln", "Call: " },
        { "use the kiln on A1", "Call: SpaceNamed" },
    };

    public static TheoryData<string, string> Heads => new()
    {
        { "for each x in my field where x is empty, by advance of x, highest first", "ForEach: Apply, Matches, Apply, Truth" },
        { "for each x in my carried, in the order I choose", "ForEach: Apply, Nothing, Nothing, Truth" },
        { "each other player from leader where coins of it is 2", "EachPlayer: MarkOf, Apply, Nothing, Truth, Truth" },
        { "repeat 7 times", "Repeat: Number, Nothing, Nothing" },
        { "repeat until lit", "Repeat: Nothing, Call, Nothing" },
        { "take turns from leader until lit", "TakeTurns: MarkOf, Nothing, Call" },
        { "may up to 2 times", "May: Number" },
        { "may any number of times", "May: Nothing" },
        { "opponent does", "Does: Apply" },
        { "if lit", "If: Call" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Message_underlines_the_words_that_are_wrong(string id, string marked)
    {
        string outline = "do:\n" + string.Concat(marked.Split('\n').Select(l => $"  {l}\n"));
        MarkedText wanted = MarkedText.Of(outline);

        Diagnostic problem = Assert.Single(StepBench.Of(MarkedText.Of(marked).Text).Problems);

        Assert.Equal((id, wanted.Start, wanted.Length), (problem.Id, problem.At.Start, problem.At.Length));
        Assert.Empty(PlainWords.ForbiddenIn(problem));
    }

    [Theory]
    [MemberData(nameof(Fixes))]
    public void Fix_removes_its_problem(string wrong, string mended)
    {
        Diagnostic problem = Assert.Single(StepBench.Of(wrong).Problems);

        string applied = TextEdit.Apply(problem.At.Source.Content, problem.Fix!.Edits);

        Assert.Equal($"do:\n  {mended}\n", applied);
        Assert.Empty(StepBench.Of(mended).Problems);
    }

    [Theory]
    [MemberData(nameof(Terms))]
    public void Step_has_its_terms_in_order(string step, string terms)
    {
        StepBench bench = StepBench.Of(step);

        Assert.Equal(terms, Tell(Assert.Single(bench.Steps)));
        Assert.Empty(bench.Told);
    }

    [Theory]
    [MemberData(nameof(Heads))]
    public void Head_has_its_terms_in_order(string head, string terms)
    {
        StepBench bench = StepBench.Of($"- {head}:\n    - flip First order");

        Assert.Equal(terms, Tell(Assert.Single(bench.Steps)));
        Assert.Single(bench.Steps[0].Inner);
    }

    [Fact]
    public void Otherwise_belongs_to_the_if_before_it()
    {
        StepBench bench = StepBench.Of("- if lit:\n    - again\n- otherwise if 1 is 2:\n    - end turn\n- otherwise:\n    - nothing");

        Assert.Empty(bench.Told);
        Assert.Equal("If lit:\n  The same player has another turn.\nOtherwise:\n  Otherwise if 1 is 2:\n    The turn is over.\n  Otherwise:\n    Nothing happens.\n", bench.Tell());
    }

    [Fact]
    public void Name_of_let_is_known_in_the_steps_below_it_only()
    {
        StepBench bench = StepBench.Of("- if lit:\n    - let pot be top of A1\n    - move pot to crate\n- move pot to crate");

        Assert.Equal(["ROS0201 5,10 pot"], bench.Told);
        Assert.Equal(7, bench.Steps[0].Inner[0].Slot);
    }

    [Fact]
    public void Every_problem_of_a_list_is_told()
    {
        StepBench bench = StepBench.Of("- mvoe w to s\n- for each x in my feild: flip top of x\n- set A1 to 3");

        Assert.Equal(["ROS0214", "ROS0201", "ROS0320"], bench.Problems.Select(p => p.Id));
    }

    [Fact]
    public void Citation_may_stand_beside_the_steps()
    {
        StepBench bench = StepBench.Of("- {cite: book 3, do: [again, end turn]}\n- nothing");

        Assert.Equal([StepKind.Again, StepKind.EndTurn, StepKind.Nothing], bench.Steps.Select(s => s.Kind));
    }

    private static string Tell(Step step) => $"{step.Kind}: {string.Join(", ", step.Terms.Select(t => t.GetType().Name))}";
}
