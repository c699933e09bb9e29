using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>What is wrong is told in the author's words, at the exact place, once.</summary>
public sealed class PositionProblemsTests
{
    private static readonly string[] WordsNobodyChose =
        ["token", "parse", "node", "null", "invalid", "unexpected", "syntax", "integer", "boolean", "string", "enum", "scalar", "mapping"];

    /// <summary>Every id with a text that shows it, where it stands and what is said.</summary>
    public static TheoryData<string, string, string, string> Cases => new()
    {
        { "ROS0131", "seat 1: sticks\n", "1,9", "Here should stand the places of seat 1, each with its name and a colon." },
        { "ROS0131", "seat 1:\n  chamber: [A1]\n", "2,12", "Here should stand a drawing of 'chamber', or its spaces, each with its name and a colon." },
        { "ROS0131", "", "1,1", "This position says nothing: no place of it is given." },
        { "ROS0171", "seat 1:\n  chamber: |\n    4 . . . . .\n   3 . . . . .\n    2 . . . . .\n    1 . . . . .\n    / A B C D E\n", "4,4", "This line of the drawing begins further left than the others." },
        { "ROS0171", "seat 1:\n  chamber: |\n    4 . . . . .\n     3 . . . . .\n    2 . . . . .\n    1 . . . . .\n    / A B C D E\n", "4,6", "This line of the drawing begins with a blank, so its row has no label." },
        { "ROS0171", "seat 1:\n  chamber: |\n    4 . . . . .\n    3 . . . . .\n    2 . . . . .\n    1 . . . . .\n   / A B C D E\n", "7,4", "This line of the drawing begins further left than the others." },
        { "ROS0222", "seat 1:\n  shards: none\n", "2,11", "Nothing in the sheet is called 'none'." },
        { "ROS0222", "drying: [1 ware, -, 2 ware]\n", "1,18", "Nothing in the sheet is called '-'." },
        { "ROS0132", "seat 1:\n  sticks: {a: 4}\n", "2,11", "This does not say what lies in 'sticks'." },
        { "ROS0133", Drawn("4 . . . . .", "4 . . . . .", "2 . . . . .", "1 . . . . .", "/ A B C D E"), "4,5", "Tier 4 is drawn here a second time; only the first counts." },
        { "ROS0134", Drawn("4 . . . . .", "2 . . . . .", "1 . . . . .", "/ A B C D E"), "2,12", "This drawing leaves out tier 3 of 'chamber'." },
        { "ROS0134", Drawn("4 . . . .", "3 . . . .", "2 . . . .", "1 . . . .", "/ A B C D"), "2,12", "This drawing leaves out bay E of 'chamber'." },
        { "ROS0134", Drawn("4 . . . . .", "3 . .   . .", "2 . . . . .", "1 . . . . .", "/ A B C D E"), "4,5", "This drawing leaves out C3 of 'chamber'." },
        { "ROS0135", Drawn("4 . . . . .", "3 . . . .", "2 . . . . .", "1 . . . . ."), "4,5", "This row draws 4 cells, and 'chamber' is 5 columns wide." },
        { "ROS0135", Drawn("| . . . . .", "| . . . . ."), "2,12", "This drawing has 2 rows, and 'chamber' has 4." },
        { "ROS0137", Drawn("4 . . . . .", "3 - . . . .", "2 . . . . .", "1 . . . . .", "/ A B C D E"), "4,7", "'-' says that there is no A3, but 'chamber' has it." },
        { "ROS0138", Drawn("4 . . . . .", "3 . . . . .", "2 . . . . .", "1 . b+j . . .", "/ A B C D E"), "6,9", "2 things lie on B1, which holds at most 1." },
        { "ROS0139", "seat 1:\n  sticks: 4\n  Sticks: 5\n", "3,3", "'Sticks' stands here a second time; only the first counts." },
        { "ROS0140", Drawn("4 . . . . .", "3 . . . . .", "2 . . . . .", "1 jab . . . .", "/ A B C D E"), "6,9", "No single thing is both jug and bowl." },
        { "ROS0140", "seat 1:\n  shards: [iron copper jug]\n", "2,17", "No single thing is both iron and copper." },
        { "ROS0140", "seat 1:\n  shards: [iron stick]\n", "2,17", "No single thing is both iron and stick." },
        { "ROS0140", "seat 1:\n  shards: [jug face down]\n", "2,12", "No single thing is both ware and face down." },
        { "ROS0141", "seat 1:\n  shards: [4 copper lamps]\nseat 2:\n  shards: [iron jug, copper lamp]\n", "4,22", "This position holds 5 copper lamps, and there are only 4." },
        { "ROS0141", "seat 1:\n  sticks: 20\nseat 2:\n  sticks: 11\n", "4,11", "This position holds 31 sticks, and there are only 30." },
        { "ROS0141", "seat 1:\n  shards: [13 lamps]\n", "2,12", "This position holds 13 lamps, and there are only 12." },
        { "ROS0142", "seat 1:\n  accepted: [Commission 3]\nseat 2:\n  accepted: [Commission 3]\n", "4,14", "'Commission 3' lies here once more, and there is only one." },
        { "ROS0143", "seat 5:\n  sticks: 4\n", "1,1", "There is no seat 5: the game is for at most 4 players." },
        { "ROS0143", "players: 2\nseat 3:\n  sticks: 4\n", "1,10", "There is no seat 3: this line says that 2 play." },
        { "ROS0143", "players: 1\n", "1,10", "This position seats 1 player, and the game is for 2 to 4." },
        { "ROS0143", "players: 2\nseat 1:\n  sticks: [stick of seat 3]\n", "3,12", "There is no seat 3: 'players' says that 2 play." },
        { "ROS0144", "drying: [1 ware, nothing]\n", "1,9", "'drying' has 3 slots, and this gives 2." },
        { "ROS0145", "round: 10\n", "1,8", "'10' cannot be the value of 'round', which holds a number from 1 to 9." },
        { "ROS0145", "seat 1:\n  has passed: maybe\n", "2,15", "'maybe' cannot be the value of 'has passed', which holds yes or no." },
        { "ROS0146", "seat 1:\n  sticks: 100001\n", "2,11", "More than 100000 things are more than a position can hold." },
        { "ROS0146", "players: many\n", "1,10", "'many' is not a number that 'players' can be." },
        { "ROS0147", "seat 1:\n  chamber: {A1: stick}\n", "2,17", "'chamber' holds ware, and this is a stick." },
        { "ROS0147", "seat 1:\n  sticks: [iron jug]\n", "2,12", "'sticks' holds sticks, and this is a ware." },
        { "ROS0148", "expect:\n  tally:\n    jugs: many\n", "3,11", "This does not say how many points are expected." },
        { "ROS0149", "drying: [2, nothing, nothing]\n", "1,10", "'2' does not say of what, and 'drying' may hold ware or sticks." },
        { "ROS0221", "seat 1:\n  stiks: 4\n", "2,3", "The sheet knows nothing called 'stiks' that seat 1 could have." },
        { "ROS0221", "supply: 4\n", "1,1", "A position does not say what lies in the supply: it is what no other place holds." },
        { "ROS0222", "seat 1:\n  shards: [iorn jug]\n", "2,12", "Nothing in the sheet is called 'iorn'." },
        { "ROS0222", "seat 1:\n  shards: iron jug, ash bowl\n", "2,11", "Several things stand here without brackets." },
        { "ROS0223", Drawn("4 . . . . .", "3 . . . . .", "2 . . . . .", "1 jx . . . .", "/ A B C D E"), "6,8", "No sign 'x' is declared, so this cell cannot be read." },
        { "ROS0224", "seat 1:\n  chamber: {F1: jug}\n", "2,13", "'chamber' has no space 'F1'." },
        { "ROS0225", Drawn("5 . . . . .", "3 . . . . .", "2 . . . . .", "1 . . . . .", "/ A B C D E"), "3,5", "'chamber' has no row '5'." },
        { "ROS0225", Drawn(". . . . .", ". . . . .", ". . . . .", ". . . . ."), "3,5", "The rows of this drawing do not begin with the labels of 'chamber': '.' is none." },
        { "ROS0225", Drawn("4 . . . . .", "3 . . . . .", "2 . . . . .", "1 . . . . .", "/ a B C D E"), "7,7", "'chamber' has no column 'a'." },
        { "ROS0223", Drawn("4 . . . . .", "3 . . . . .", "2 . . . . .", "1 jug . . . .", "/ A B C D E"), "6,7", "'jug' is a word, and in a drawing signs stand for what a piece is." },
        { "ROS0226", "player 2:\n  sticks: 4\n", "1,1", "'player 2' is no seat." },
        { "ROS0226", "turn of: Blak\n", "1,10", "'Blak' is no seat." },
        { "ROS0228", "sticks: 4\n", "1,1", "Every player has 'sticks', so this does not say whose it is." },
        { "ROS0228", "seat 1:\n  round: 4\n", "2,3", "'round' belongs to no player but to the table." },
        { "ROS0229", "expect:\n  rule:\n    place jug on A1: leagl\n", "3,22", "'leagl' is no answer." },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_problem_is_told_once_at_its_place(string id, string text, string at, string message)
    {
        Diagnostic problem = Read.Problem(text);

        Assert.Equal((id, at, message), (problem.Id, problem.At.StartPosition.ToString(), problem.Message));
        Assert.NotEmpty(problem.Hint);
        Assert.DoesNotContain(WordsNobodyChose, w => (problem.Message + problem.Hint).Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_thing_where_the_board_has_no_space_is_told()
    {
        string text = Drawn("6 . - - - .", "5 - - - . .", "4 - - . . .", "3 - . . . .", "2 . . . . .", "1 . . . . .", "/ A B C D E");

        Assert.Equal("'chamber' has no space A6, so nothing can be drawn there.", Read.Problem(text, TestSheet.Climbing).Message);
        Assert.Empty(Read.Of(Read.Mended(text, TestSheet.Climbing), TestSheet.Climbing).Told);
    }

    [Fact]
    public void An_owned_kind_is_counted_for_each_player()
    {
        Diagnostic problem = Read.Problem("Black:\n  heap: [20 stones, 2 stones of White]\nWhite:\n  heap: [19 stones]\n", TestSheet.Stacks);

        Assert.Equal("This position holds 21 stones, and there are only 20 for White.", problem.Message);
    }

    [Theory]
    [InlineData("seat 1:\n  stiks: 4\n", "seat 1:\n  sticks: 4\n")]
    [InlineData("seat 1:\n  shards: none\n", "seat 1:\n  shards: nothing\n")]
    [InlineData("seat 1:\n  chamber: |\n    4 . . . . .\n   3 . . . . .\n    2 . . . . .\n    1 . . . . .\n    / A B C D E\n", "seat 1:\n  chamber: |\n    4 . . . . .\n    3 . . . . .\n    2 . . . . .\n    1 . . . . .\n    / A B C D E\n")]
    [InlineData("seat 1:\n  shards: [iorn jug]\n", "seat 1:\n  shards: [iron jug]\n")]
    [InlineData("seat 1:\n  accepted: [Comission 12]\n", "seat 1:\n  accepted: [Commission 12]\n")]
    [InlineData("seat 1:\n  shards: iron jug, ash bowl\n", "seat 1:\n  shards: [iron jug, ash bowl]\n")]
    [InlineData("expect:\n  rule:\n    a: leagl\n", "expect:\n  rule:\n    a: legal\n")]
    public void A_fix_mends_the_text(string text, string expected)
    {
        Assert.Equal(expected, Read.Mended(text));
        Assert.Empty(Read.Of(expected).Told);
    }

    [Fact]
    public void All_problems_are_told_at_once()
    {
        Read read = Read.Of("seat 1:\n  stiks: 4\n  shards: [iorn jug, coper bowl]\nround: x\nturn of: seat 9\n");

        Assert.Equal(["ROS0221", "ROS0222", "ROS0222", "ROS0145", "ROS0143"], read.Problems.Select(p => p.Id));
        Assert.Null(read.File.Position);
    }

    [Fact]
    public void A_finding_about_components_leaves_the_position_readable() =>
        Assert.NotNull(Read.Of("seat 1:\n  sticks: 31\n").File.Position);

    [Fact]
    public void A_wrong_expectation_leaves_the_position_readable() =>
        Assert.NotNull(Read.Of("expect:\n  tally:\n    jugs: many\n").File.Position);

    private static string Drawn(params string[] lines) => $"seat 1:\n  chamber: |\n{string.Concat(lines.Select(l => $"    {l}\n"))}";
}
