using System.Diagnostics;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Slips in what a board says of its spaces, each told once, and shapes that are read as they are meant.</summary>
public sealed class BoardSlipTests
{
    private static readonly (string Name, string Content)[] Maps =
        [("blank.csv", "name,toll\nMill,3\n,2\n"), ("nearly.csv", "name,toll\nMill,3\nFerry,4\nInn,5s\n"),
         ("capitals.csv", "Name,Next To,Across,Up\nMill,Ferry,0,0\nFerry,,1,0\n")];

    [Theory]
    [InlineData("{hexes: 6 across foo up}", "ROS0834 3,12 6 across foo up")]
    [InlineData("{hexes: 6 across 0 up}", "ROS0834 3,12 6 across 0 up")]
    [InlineData("{squares: 3 across 1 up, links: {opp: A1-C1 B1-C1}}", "ROS0840 3,48 B1-C1")]
    [InlineData("{squares: 3 across 1 up, links: {opp: A1-A1}}", "ROS0840 3,42 A1-A1")]
    [InlineData("{squares: 3 across 1 up, links: {opp: {A1: B1 C1}}}", "ROS0840 3,43 A1")]
    public void A_slip_is_told_where_it_stands(string board, string told) => Assert.Equal([told], Loaded.Of($"boards:\n  t:\n   {board}\n").Told);

    [Theory]
    [InlineData("{track: 'a, b, a, c'}", "The board has two spaces called 'a'.")]
    [InlineData("{ring: a b a c}", "The board has two spaces called 'a'.")]
    [InlineData("{squares: 4 across 2 up, columns: A to C A}", "Two columns are labelled 'A', so two spaces would have one name.")]
    [InlineData("{squares: 1 across 3 up, rows: 1 to 2 1}", "Two rows are labelled '1', so two spaces would have one name.")]
    [InlineData("{squares: 3 across 1 up, columns: bay A to A}", "There is 1 label for 3 columns.")]
    [InlineData("{file: blank.csv}", "This row of the map has no name, so nothing can speak of its space.")]
    [InlineData("{squares: 2 across 1 up, values: {toll: {A1: 1, A1 B1: 2}}}", "'A1' bears 1 already, so it cannot bear 2 too.")]
    [InlineData("{file: nearly.csv}", "'5s' is no number, so the column 'toll' names areas, although most of it is numbers.")]
    public void What_cannot_be_meant_is_told_once(string board, string message) =>
        Assert.Equal([message], Loaded.With($"boards:\n  t: {board}\n", Maps).Reading.Problems.Select(p => p.Message));

    [Theory]
    [InlineData("a  . .\n      a  . .\n      /  A B", 2)]
    [InlineData("a  . .\n      b . . .\n      a  . .", 2)]
    public void Rows_of_one_label_name_their_spaces_twice(string drawing, int doubled) =>
        Assert.Equal(Enumerable.Repeat("ROS0838", doubled), Loaded.Of($"boards:\n  t:\n    drawn: |\n      {drawing}\n").Ids);

    [Fact]
    public void The_columns_of_a_map_are_known_by_their_names_in_any_capitals()
    {
        BoardFacts board = Loaded.With("boards:\n  t: {file: capitals.csv}\n", Maps).Sheet.Boards[0];

        Assert.Equal([0, 1], Assert.Single(board.Ways));
        Assert.Empty(board.Values);
    }

    [Theory]
    [InlineData("  t:\n    squares: 2 across 2 up\n    values:\n      toll: |\n        1\n        /  A B\n", "This drawing has 1 row of numbers, and the board has 2 rows.")]
    [InlineData("  t:\n    squares: 2 across 2 up\n    values:\n      toll: |\n        2\n        1  3 4\n        /  A B\n", "This row shows 0 numbers for 2 spaces.")]
    [InlineData("  t:\n    squares: 2 across 2 up\n    values:\n      toll: |\n        1  3 4\n        /  A B\n", "This drawing has 1 row of numbers, and the board has 2 rows.")]
    public void Drawn_numbers_that_leave_rows_out_are_told(string board, string message) =>
        Assert.Equal(message, Assert.Single(Loaded.Of($"boards:\n{board}").Reading.Problems).Message);

    [Theory]
    [InlineData("      a . . .\n      b    . . .\n")]
    [InlineData("      a . . - .\n      b  . . - .\n")]
    [InlineData("      a . . .\n      b  . . .\n      c   . . .\n      d    . . .\n")]
    public void Rows_of_hexes_that_do_not_interlock_all_round_do_not_come_round(string rows) =>
        Assert.Contains("ROS0836", Loaded.Of($"boards:\n  t:\n    drawn: |\n{rows}    wraps: yes\n").Ids);

    [Theory]
    [InlineData("      a . . .\n      b  . . .\n")]
    [InlineData("      a  . . .\n      b . . .\n      c  . . .\n      d . . .\n")]
    public void Rows_of_hexes_set_off_by_turns_come_round(string rows) =>
        Assert.True(Loaded.Of($"boards:\n  t:\n    drawn: |\n{rows}    wraps: yes\n").Sheet.Boards[0].Wraps);

    [Theory]
    [InlineData("points: [a b c d a], without: c", "dab")]
    [InlineData("points: [a b c d a], without: a", "bcd")]
    [InlineData("points: [a b c d e f a], without: b e", "cd fa")]
    [InlineData("points: [a b c d], without: b", "a cd")]
    public void A_closed_line_without_a_point_stays_joined_elsewhere(string shape, string ways)
    {
        BoardFacts board = Loaded.Of($"boards:\n  t: {{{shape}}}\n").Sheet.Boards[0];

        Assert.Equal(ways, string.Join(' ', board.Ways.Select(w => string.Concat(w.Select(s => board.Spaces[s].Name.Name)))));
    }

    [Theory]
    [InlineData("points: [a b, c d], without: b, holes: {pool: b}", "a")]
    [InlineData("points: [a b c d a, b e], without: b, holes: {pool: b}", "ace")]
    [InlineData("file: roads.csv, without: Ferry, holes: {pool: Ferry}", "old millinn")]
    public void Round_a_hole_of_a_map_lies_what_it_was_joined_with(string shape, string round)
    {
        BoardFacts board = Loaded.Of($"boards:\n  t: {{{shape}}}\n").Sheet.Boards[0];

        Assert.Equal(round, string.Concat(board.HoleNames[0].Round.Select(s => board.Spaces[s].Name.Name)), ignoreCase: true);
    }

    public static TheoryData<string> Large => new()
    {
        $"name,next to,land\n{string.Concat(Enumerable.Range(0, 3_600).Select(i => $"P{i},P{(i + 1) % 3_600},L{i}\n"))}",
    };

    // Seconds are many times what it takes; a search of all names at each name takes longer by far.
    [Theory]
    [MemberData(nameof(Large))]
    public void A_map_of_3600_spaces_is_read_at_once(string map)
    {
        var watch = Stopwatch.StartNew();

        Loaded loaded = Loaded.With("boards:\n  t: {file: map.csv}\n", [("map.csv", map)]);

        Assert.Equal(3_600, loaded.Sheet.Boards[0].Spaces.Length);
        Assert.InRange(watch.ElapsedMilliseconds, 0, 4_000);
    }

    [Fact]
    public void A_track_of_far_too_many_names_is_refused_at_once()
    {
        var watch = Stopwatch.StartNew();

        Loaded loaded = Loaded.Of($"boards:\n  t:\n    track: {string.Concat(Enumerable.Repeat("1 to 4000 ", 20_000))}\n");

        Assert.Equal(["ROS0818"], loaded.Ids);
        Assert.InRange(watch.ElapsedMilliseconds, 0, 4_000);
    }
}
