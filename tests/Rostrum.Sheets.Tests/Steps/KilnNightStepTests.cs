using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Sheets.Tests.Formulas;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Tests.Steps;

/// <summary>Every step of the demo game Kiln Night reads without a message.</summary>
public sealed class KilnNightStepTests
{
    private const string Actions = """
        set-up:
          cite: book 3
          do:
            - for each d in drying: deal 2 from crate to d
            - for each o in display: deal 1 from commissions deck to o
            - hand out sticks
        after set-up:
          do:
            - each player: deal 1 from guild marks deck to my mark face up
        hand out sticks:
          says: The starting player takes two sticks, each player further on one more than the one before.
          do:
            - each player from start player: move (1 + order of me) sticks from supply to my sticks
        day's work:
          cite: book 4
          do:
            - in any order:
                - must: carry
                - may: accept
                - may any number of times: burn
        carry:
          phrase: carry (board)
          choose: {board: a drying board in drying}
          do:
            - unload board
            - lay the sticks
        unload:
          phrase: unload (board)
          choose: {board: a drying board in drying}
          do:
            - move all sticks from board to my sticks
            - move all ware from board to my carried
            - for each w in my carried, in the order I choose:
                - first possible of:
                    - place w
                    - smash w
        lay the sticks:
          do:
            - for each d in drying where d is not board of last carry: move 1 stick from supply to d
        place:
          phrase: place (what) on (spot)
          choose:
            what: a ware in my carried
            spot: a shelf in my chamber
          do: move what to spot
        smash:
          phrase: smash (what)
          choose: {what: a ware in my carried}
          do: move what to my shards
        accept:
          phrase: accept (card)
          choose: {card: a commission in display}
          do: move card to my accepted
        burn:
          phrase: burn to swap (pair)
          choose:
            pair: 2 shelves in my chamber where it is not empty
          do:
            - move 2 sticks from my sticks to supply
            - swap first of pair and last of pair
        fill:
          do:
            - for each d in drying where no(ware in d): deal 2 from crate to d
            - for each o in display where it is empty: deal 1 from commissions deck to o
        fire:
          do:
            - roll the dice
            - for each d in fire dice where face of d is not crescent, by face of d, lowest first: heat item(face of d, bays of my chamber)
        roll the dice: {do: roll fire dice}
        heat:
          phrase: heat (line)
          choose: {line: one of bays of my chamber}
          do:
            - let pot be last of whole ware in line
            - if pot is not nothing:
                - one of:
                    - spare
                    - crack pot
        spare: {says: Burn two sticks instead., do: move 2 sticks from my sticks to supply}
        crack: {phrase: crack (what), choose: {what: one of ware in my chamber}, do: change what to cracked}
        use the Carter:
          phrase: use the Carter on (second)
          choose: {second: a drying board in drying where any(ware in it)}
          do:
            - flip Carter face down
            - unload second
        use the Stoker:
          phrase: use the Stoker on (some dice)
          choose: {some dice: any fire dice}
          do:
            - flip Stoker face down
            - roll some dice
        use the Thrower:
          joins: day's work
          do:
            - flip Thrower face down
            - deal 2 from crate to my carried
            - place
            - move all ware from my carried to crate
        use the Trimmer:
          phrase: use the Trimmer on (line)
          choose: {line: one of bays of my chamber where any(ware in it)}
          do:
            - flip Trimmer face down
            - move last of ware in line to crate
        use the Broker:
          phrase: use the Broker to give (old) for (new)
          choose: {old: a commission in my accepted, new: a commission in display}
          do:
            - flip Broker face down
            - swap old and new
        apprentice:
          says: The apprentice carries off the board with more sticks of the two that you left, the left one if equal.
          do:
            - let d be first of most(b in drying where b is not board of last carry, count(sticks in b))
            - move all ware from d to box
            - move all sticks from d to supply
        closing:
          do:
            - each player from start player: fire
        price:
          do: flip Glazer face down
        """;

    public static TheoryData<string> Names => [.. Sheet.Tree.Entries.Select(e => e.Key.Text)];

    private static (Declarations Declared, OutlineMapping Tree) Sheet { get; } = Declare();

    [Theory]
    [MemberData(nameof(Names))]
    public void Action_of_the_draft_reads_without_a_message(string name)
    {
        var problems = new DiagnosticBag();

        StepBench bench = StepBench.OfAction(Sheet.Declared, (OutlineMapping)Sheet.Tree.Find(name)!.Value, problems);

        Assert.Empty(bench.Told);
        Assert.NotEmpty(bench.Steps);
    }

    [Fact]
    public void Steps_read_back_as_English()
    {
        StepBench bench = StepBench.OfAction(Sheet.Declared, (OutlineMapping)Sheet.Tree.Find("unload")!.Value, new DiagnosticBag());

        Assert.Equal(
            """
            Move all sticks from board to my sticks.
            Move all ware from board to my carried.
            For each w in my carried, in the order I choose:
              Do the first of these that is possible:
                Place w.
                Smash w.

            """,
            bench.Tell());
    }

    private static (Declarations Declared, OutlineMapping Tree) Declare()
    {
        var declare = new Declaring { Declared = { Players = (2, 4) } };
        Kind ware = declare.Piece("ware", "ware", [("form", false, "bowl jug plate lamp"), ("glaze", false, "ash iron copper"), ("wear", true, "whole cracked")]);
        Kind stick = declare.Piece("stick", "sticks", []);
        declare.Die("fire die", "fire dice", "1 2 3 4 5 crescent");
        Kind commission = declare.Cards("commission", "commissions", ["Commission 11"], [("worth", Sort.Number)]);
        Kind mark = declare.Cards("guild mark", "guild marks", ["Glazer", "Carter", "Thrower", "Stoker", "Trimmer", "Broker"], []);
        declare.Board("chamber", 5, 4, "bay", "tier", "shelf");
        declare.Place("crate", PlaceForm.Bag, false, [ware]);
        declare.Row("drying", 3, "drying board", [ware, stick]);
        declare.Row("display", 4, "open place", [commission]);
        declare.Place("carried", PlaceForm.Heap, true, [ware]);
        declare.Place("sticks", PlaceForm.Heap, true, [stick]);
        declare.Place("shards", PlaceForm.Heap, true, [ware]);
        declare.Place("accepted", PlaceForm.Heap, true, [commission]);
        declare.Place("mark", PlaceForm.Heap, true, [mark]);
        declare.Place("commissions deck", PlaceForm.Deck, false, [commission]);
        declare.Place("guild marks deck", PlaceForm.Deck, false, [mark]);
        var problems = new DiagnosticBag();
        OutlineMapping tree = StepBench.Outline(Actions, problems);
        Assert.Equal(0, problems.Count);
        foreach (OutlineEntry entry in tree.Entries)
        {
            declare.Action(entry.Key.Text, (entry.Value as OutlineMapping)?.Find("phrase")?.Value is OutlineScalar phrase ? phrase.Text : null);
        }

        return (declare.Declared, tree);
    }
}
