using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

public sealed class PositionReaderTests
{
    private const string Chamber = """
        seat 1:
          chamber: |
            4 ?  .  .  .   .
            3 .  .  .  .   .
            2 j  .  .  aj! .
            1 p! bi .  .   a
            / A  B  C  D   E
        """;

    [Theory]
    [InlineData("A4", "what is not given")]
    [InlineData("B4", "nothing")]
    [InlineData("B1", "an iron bowl")]
    [InlineData("A2", "a jug whose glaze is not given")]
    [InlineData("D2", "a cracked ash jug")]
    [InlineData("A1", "a cracked plate whose glaze is not given")]
    [InlineData("E1", "an ash ware whose form is not given")]
    public void A_cell_says_what_its_signs_say_in_any_order(string space, string expected)
    {
        Read read = Read.Fine(Chamber);

        Assert.Equal(expected, read.Say(read.On(space)));
    }

    [Fact]
    public void What_is_not_named_is_not_given_and_what_is_named_is_complete()
    {
        Read read = Read.Fine("seat 1:\n  sticks: []\n  accepted: [Commission 3]\n");

        Assert.Equal(Stack.Empty, read.In("sticks"));
        Assert.Equal(Stack.NotGiven, read.In("shards"));
        Assert.Single(read.In("accepted").Things);
        Assert.All(read.Position.Boards[0][0], s => Assert.False(s.IsGiven));
    }

    [Theory]
    [InlineData("sticks: 4", "sticks", "4 sticks")]
    [InlineData("sticks: four", "sticks", "4 sticks")]
    [InlineData("sticks: 4 sticks", "sticks", "4 sticks")]
    [InlineData("sticks: a stick", "sticks", "a stick")]
    [InlineData("sticks: nothing", "sticks", "nothing")]
    [InlineData("sticks: 0", "sticks", "nothing")]
    [InlineData("sticks: ?", "sticks", "what is not given")]
    [InlineData("shards: 2 ware", "shards", "2 ware whose form and glaze are not given")]
    [InlineData("shards: [iron jug, 2 ash bowls, cracked copper lamp]", "shards", "an iron jug, 2 ash bowls and a cracked copper lamp")]
    [InlineData("shards: [iron jug wear not given]", "shards", "an iron jug whose wear is not given")]
    [InlineData("mark: [Glazer]", "mark", "Glazer")]
    public void A_heap_is_a_number_or_a_list(string line, string place, string expected)
    {
        Read read = Read.Fine($"seat 1:\n  {line}\n");

        Assert.Equal(expected, read.Say(read.In(place)));
    }

    [Fact]
    public void A_card_lies_face_up_in_a_heap_and_face_down_in_a_deck_unless_it_says_otherwise()
    {
        Read read = Read.Fine("deck: [Commission 1, Commission 2 face up]\nseat 1:\n  accepted: [Commission 3, Commission 4 face down, Commission 5 face not given]\n");

        Assert.Equal([false, true], read.In("deck").Things.Select(t => t.IsFaceUp));
        Assert.Equal([true, false, null], read.In("accepted").Things.Select(t => t.IsFaceUp));
    }

    [Fact]
    public void A_row_has_one_entry_for_each_slot()
    {
        Read read = Read.Fine("drying: [2 ware, nothing, [iron jug, stick]]\n");

        Assert.Equal("2 ware whose form and glaze are not given", read.Say(read.In("drying", slot: 0)));
        Assert.Equal("nothing", read.Say(read.In("drying", slot: 1)));
        Assert.Equal("an iron jug and a stick", read.Say(read.In("drying", slot: 2)));
    }

    [Fact]
    public void A_board_may_be_a_list_of_spaces_whose_rest_is_empty()
    {
        Read read = Read.Fine("seat 1:\n  chamber: {A1: iron jug, B1: ?}\n");

        Assert.Equal("an iron jug", read.Say(read.On("A1")));
        Assert.False(read.On("B1").IsGiven);
        Assert.Equal(Stack.Empty, read.On("C1"));
    }

    [Fact]
    public void Owners_are_said_or_follow_from_the_place()
    {
        Read read = Read.Fine("field: {A1: [stone, stone of White, stone of nobody, pawn of seat 1]}\nBlack:\n  heap: [2 stones, stone of White]\n", TestSheet.Stacks);

        Assert.Equal([null, 1, Thing.Nobody, 0], read.On("A1").Things.Select(t => t.Owner));
        Assert.Equal([0, 0, 1], read.In("heap").Things.Select(t => t.Owner));
        Assert.Equal(0, read.On("A1").Things[3].Values[0]);
    }

    [Fact]
    public void A_name_that_begins_with_a_number_is_no_count()
    {
        Read read = Read.Fine("White:\n  hand: [7 of clubs, Glazer's licence, \"Fox, the\", 2 cards]\n", TestSheet.Stacks);

        Assert.Equal("7 of clubs, Glazer's licence, Fox, the and 2 cards whose face is not given", read.Say(read.In("hand", seat: 1)));
    }

    [Fact]
    public void Marks_hold_numbers_truths_seats_spaces_and_values()
    {
        Position kiln = Read.Fine("round: 9\nseat 2:\n  has passed: yes\n").Position;
        Position stacks = Read.Fine("leader: White\ngoal: C1\nseat 1:\n  trump: blue\n", TestSheet.Stacks).Position;

        Assert.Equal(9, kiln.Marks[0][0]);
        Assert.Equal([null, 1], kiln.Marks[1]);
        Assert.Equal(1, stacks.Marks[0][0]);
        Assert.Equal("C1", stacks.Sheet.Boards[0].Spaces[(int)stacks.Marks[1][0]!].Name.Name);
        Assert.Equal([1, null], stacks.Marks[2]);
    }

    [Theory]
    [InlineData("seat 1:\n  sticks: 1\n", 2, 0)]
    [InlineData("seat 3:\n  sticks: 1\n", 3, 0)]
    [InlineData("players: 4\nturn of: seat 2\n", 4, 1)]
    [InlineData("turn of: seat 4\n", 4, 3)]
    [InlineData("seat 1:\n  sticks: [stick of seat 4]\n", 4, 0)]
    public void There_are_as_many_seats_as_are_said_mentioned_or_needed(string text, int seats, int me)
    {
        Position position = Read.Fine(text).Position;

        Assert.Equal((seats, me), (position.Seats, position.Me));
    }

    [Fact]
    public void The_name_and_the_variants_come_from_the_file()
    {
        var file = new SourceText("positions/E3.yaml", "says: A night: long.\nvariants: [Climbing Chamber, guild marks]\n");
        var problems = new DiagnosticBag();

        ImmutableArray<string> variants = PositionReader.VariantsOf(file, problems);
        PositionFile read = PositionReader.Read(TestSheet.Climbing, file, problems);

        Assert.Equal(["Climbing Chamber", "guild marks"], variants);
        Assert.Equal(("E3", "A night: long."), (read.Position!.Name, read.Says));
        Assert.Equal(0, problems.Count);
    }
}
