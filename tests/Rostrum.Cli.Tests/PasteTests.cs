using System.Text.Json;

namespace Rostrum.Cli.Tests;

/// <summary>A presenter pastes what he sees: only the drawing.</summary>
public class PasteTests
{
    private const string Ponds = """
        rule sheet: 1
        game: Two Ponds
        players: 1 to 3
        pieces: {frog: {count: 20}}
        signs: {f: frog}
        boards:
          pond: {of: each player, squares: 3 across 2 up}
          marsh: {of: each player, squares: 3 across 2 up, rows: reed 7 to 8}
          lake: {squares: 3 across 2 up}
        places: {basket: {heap of: frog, of: each player}}
        score:
          pond: {points: count(frogs in my pond)}
          marsh: {points: 10 times count(frogs in my marsh)}
          lake: {points: 100 times count(frogs in lake)}
          basket: {points: 1000 times count(my basket)}
        """;

    private const string OnePond = """
        rule sheet: 1
        game: Pond
        players: 1 to 3
        pieces: {frog: {count: 20}}
        signs: {f: frog}
        boards: {pond: {of: each player, squares: 3 across 2 up, holds: 1}}
        places: {basket: {heap of: frog, of: each player}}
        score:
          pond: {points: count(frogs in my pond)}
          basket: {points: 1000 times count(my basket)}
        """;

    private const string Hexes = """
        rule sheet: 1
        game: Marsh
        pieces: {frog: {count: 20}}
        signs: {f: frog}
        boards:
          marsh: {of: each player, hexes: rows of 3 4 3, holds: 1}
          field: {of: each player, squares: 3 across 3 up, holds: 1}
        score:
          marsh: {points: count(frogs in my marsh)}
          field: {points: 10 times count(frogs in my field)}
        """;

    public static TheoryData<string, string> Pastes() => new()
    {
        { "bare", "2 f . .\n1 f f .\n/ A B C\n" },
        { "a margin", "      2 f . .\n      1 f f .\n      / A B C\n" },
        { "Windows line ends and trailing blanks", "2 f . .  \r\n1 f f .\t\r\n/ A B C\r\n\r\n" },
        { "tabs", "2\tf\t.\t.\n1\tf\tf\t.\n/\tA\tB\tC" },
        { "a blank line between all", "2 f . .\n\n1 f f .\n\n/ A B C\n" },
        { "the sign of another editor before it", "\uFEFF2 f . .\n1 f f .\n/ A B C\n" },
        { "no-break spaces", "2\u00A0f . .\n1 f\u00A0f .\n/ A B C\n" },
        { "a fence", "```\n2 f . .\n1 f f .\n/ A B C\n```\n" },
        { "without the line of columns", "2 f . .\n1 f f .\n" },
        { "the name above", "pond\n2 f . .\n1 f f .\n/ A B C\n" },
        { "the name with a colon", "Pond:\n  2 f . .\n  1 f f .\n  / A B C\n" },
        { "as in a file, but for the seat", "pond: |\n  2 f . .\n  1 f f .\n  / A B C\n" },
        { "the seat above", "seat 1\n2 f . .\n1 f f .\n/ A B C\n" },
        { "seat and board", "seat 1, pond:\n2 f . .\n1 f f .\n/ A B C\n" },
        { "board and seat", "pond of seat 1\n2 f . .\n1 f f .\n/ A B C\n" },
        { "no sign for a drawing", "seat 1:\n  pond:\n    2 f . .\n    1 f f .\n    / A B C\n" },
        { "a file", "seat 1:\n  pond: |\n    2 f . .\n    1 f f .\n    / A B C\n" },
    };

    [Theory]
    [MemberData(nameof(Pastes))]
    public void Drawing_counts_however_it_was_copied(string how, string pasted)
    {
        JsonElement seat = Seat(OnePond, pasted, "--json");

        Assert.True(seat.GetProperty("lines")[0].GetProperty("points").GetInt64() == 3, how);
        Assert.Equal(1, seat.GetProperty("seat").GetInt32());
    }

    [Fact]
    public void What_is_not_drawn_is_not_given()
    {
        JsonElement seat = Seat(OnePond, "1 f f .\n/ A B C\n", "--json");

        Assert.Equal((2, 5), (seat.GetProperty("lines")[0].GetProperty("points").GetInt64(), seat.GetProperty("lines")[0].GetProperty("atMost").GetInt64()));
        Assert.Equal(["space A2", "space B2", "space C2", "your basket"], seat.GetProperty("notGiven").EnumerateArray().Select(n => n.GetString()).Order());
    }

    [Fact]
    public void Lines_beside_a_drawing_are_read_as_well() => Assert.Equal(4003, Total(OnePond, "2 f . .\n1 f f .\n/ A B C\n  basket: 4\n", "--json"));

    [Fact]
    public void Seat_of_a_drawing_may_be_named()
    {
        JsonElement seat = Seat(OnePond, "2 f . .\n1 f f .\n/ A B C\n", "--seat", "2", "--json");

        Assert.Equal((2, 3), (seat.GetProperty("seat").GetInt32(), seat.GetProperty("lines")[0].GetProperty("points").GetInt64()));
    }

    [Fact]
    public void Drawings_of_two_seats_are_two_tallies()
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        JsonElement report = Told.From("seat 1\n2 f . .\n1 f f .\n/ A B C\nseat 3\n2 . . .\n1 f . .\n/ A B C\n", "tally", game.Folder, "-", "--json").Json;

        Assert.Equal([(1, 3), (3, 1)], report.GetProperty("seats").EnumerateArray().Select(s => (s.GetProperty("seat").GetInt32(), s.GetProperty("lines")[0].GetProperty("points").GetInt32())));
    }

    [Fact]
    public void Labels_tell_which_board_it_is() => Assert.Equal(30, Total(Ponds, "8 f . .\n7 f f .\n/ A B C\nbasket: 0\npond:\n2 . . .\n1 . . .\n/ A B C\nlake\n2 . . .\n1 . . .\n/ A B C\n", "--json"));

    [Theory]
    [InlineData("pond", 3)]
    [InlineData("lake", 300)]
    public void Drawing_that_may_be_two_boards_is_asked_back_and_answered_with_a_name(string board, int points)
    {
        const string pasted = "2 f . .\n1 f f .\n/ A B C\n";
        using var game = new TempGame(("sheet.yaml", Ponds));

        Told asked = Told.From(pasted, "tally", game.Folder, "-");
        Told told = Told.From(pasted, "tally", game.Folder, "-", "--board", board, "--json");

        Assert.Equal((2, "rostrum: The drawing at pasted position(1,1) may be 'pond' or 'lake'. Say which: '--board \"pond\"', or the name on a line of its own above the drawing.\n"), (asked.Code, asked.Talk));
        Assert.Contains(points, told.Json.GetProperty("seats")[0].GetProperty("lines").EnumerateArray().Select(l => l.GetProperty("points").GetInt32()));
    }

    [Fact]
    public void Several_boards_stand_each_under_its_name() =>
        Assert.Equal(4213, Total(Ponds, "pond\n2 f . .\n1 f f .\n/ A B C\nmarsh\n8 f . .\n7 . . .\n/ A B C\nlake\n2 . . .\n1 . f f\n/ A B C\nbasket: 4\n", "--json"));

    [Fact]
    public void Ruling_needs_no_file()
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        Assert.Equal(0, Told.From("2 f . .\n1 f f .\n/ A B C\n", "rule", game.Folder, "-", "A2 is not empty").Code);
        Assert.Equal(1, Told.From("2 f . .\n1 f f .\n/ A B C\n", "rule", game.Folder, "-", "B2 is not empty").Code);
    }

    [Fact]
    public void Seat_that_acts_may_be_named()
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        Told told = Told.From("seat 1\nbasket: 3\nseat 2\n1 . . .\n/ A B C\nbasket: 5\n", "rule", game.Folder, "-", "count(my basket) is 5", "--seat", "2");

        Assert.Equal((0, true), (told.Code, told.Output.Contains("(Pond, pasted position, turn of seat 2)", StringComparison.Ordinal)));
    }

    [Fact]
    public void Picture_needs_no_file()
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        Assert.Equal(0, Told.From("2 f . .\n1 f f .\n/ A B C\n", "draw", game.Folder, "-", "-o", game.PathOf("x.svg")).Code);
        Assert.True(File.Exists(game.PathOf("x.svg")));
    }

    [Theory]
    [InlineData("2 f . .\r\n  1 f x .\r\n/ A B C\r\n", "pasted position(2,7): error ROS0223")]
    [InlineData("    2 f . .\n    1 f x .\n    / A B C\n", "pasted position(2,9): error ROS0223")]
    [InlineData("ponn\n2 f . .\n1 f f .\n/ A B C\n", "pasted position(1,1): error ROS0221")]
    [InlineData("2 f . .\n1 f f .\n/ A B C\nbaskit: 4\n", "pasted position(4,1): error ROS0221")]
    [InlineData("2 f . .\n1 f f .\n/ A B C\nbasket: 4 cows\n", "pasted position(4,11): error")]
    [InlineData("2 f . .\n1 f f . .\n/ A B C\n", "pasted position(2,1): error ROS0170")]
    [InlineData("/ A B C\n2 f . .\n1 f f .\n", "pasted position(1,1): error ROS0173")]
    public void Message_points_into_what_was_pasted(string pasted, string place)
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        Told told = Told.From(pasted, "tally", game.Folder, "-");

        Assert.Equal((1, true), (told.Code, told.Talk.Contains(place, StringComparison.Ordinal)));
    }

    [Fact]
    public void Nothing_that_comes_in_is_answered_with_the_use()
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        Told told = Told.Typed("", "tally", game.Folder, "-");

        Assert.Equal(2, told.Code);
        Assert.StartsWith("rostrum: paste the position or its drawing, then press Enter and Ctrl-D", told.Talk);
        Assert.Contains("Nothing comes in", told.Talk);
    }

    [Fact]
    public void Drawing_that_is_typed_is_answered()
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        Assert.Equal(0, Told.Typed("2 f . .\n1 f f .\n/ A B C\n", "tally", game.Folder, "-").Code);
    }

    [Fact]
    public void Misspelt_board_gets_the_nearest()
    {
        using var game = new TempGame(("sheet.yaml", Ponds));

        Assert.Equal("rostrum: 'marhs' is no board of Two Ponds. Did you mean 'marsh'?\n", Told.From("2 f . .\n1 f f .\n/ A B C\n", "tally", game.Folder, "-", "--board", "marhs").Talk);
    }

    [Fact]
    public void More_than_4_MB_is_not_read()
    {
        using var game = new TempGame(("sheet.yaml", OnePond));

        Assert.Equal("rostrum: What comes in is larger than 4 MB, so it is not read.\n", Told.From(new string('f', 5_000_000), "tally", game.Folder, "-").Talk);
    }

    [Fact]
    public void Option_for_a_drawing_is_refused_beside_a_file() =>
        Assert.Contains("the position 'E1' names its boards itself", Told.By("tally", TempGame.KilnNight, "E1", "--board", "chamber").Talk);

    [Theory]
    [InlineData("a   f . f\nb  . f . .\nc   . . .\n", 3)]
    [InlineData("   a   f . f\r\n   b  . f . .\r\n   c   . . .\r\n", 3)]
    [InlineData("a f . f\nb . f . .\nc . . .", 3)]
    [InlineData("marsh\n a f . f\n b . f . .\n c . . .", 3)]
    [InlineData("3 f . .\n2 . . .\n1 . . f\n/ A B C\n", 20)]
    public void Hexes_are_known_by_their_rows(string pasted, int points)
    {
        using var game = new TempGame(("sheet.yaml", Hexes));

        JsonElement[] lines = [.. Told.From(pasted, "tally", game.Folder, "-", "--json").Json.GetProperty("seats")[0].GetProperty("lines").EnumerateArray()];

        Assert.Contains(lines, l => l.GetProperty("points").GetInt64() == points && l.GetProperty("atMost").GetInt64() == points);
    }

    [Fact]
    public void Rows_of_hexes_that_are_not_drawn_are_not_given()
    {
        using var game = new TempGame(("sheet.yaml", Hexes));

        Told told = Told.From("b . f . .\nc . . .\n", "tally", game.Folder, "-");

        Assert.Equal((0, ""), (told.Code, told.Talk));
        Assert.Contains("space a1", told.Output);
    }

    private static long Total(string sheet, string pasted, params string[] options) => Seat(sheet, pasted, options).GetProperty("total").GetInt64();

    private static JsonElement Seat(string sheet, string pasted, params string[] options)
    {
        using var game = new TempGame(("sheet.yaml", sheet));
        Told told = Told.From(pasted, ["tally", game.Folder, "-", .. options]);
        Assert.Equal((0, ""), (told.Code, told.Talk));
        return told.Json.GetProperty("seats")[0];
    }
}
