using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>One slip gives one message, though much else speaks of what it spoils; and causes come before what follows from them.</summary>
public sealed class CauseTests
{
    private const string Ware = """
        pieces:
          ware:
            plural: ware
            attributes: {form: [bowl, jug], glaze: [ash, iron]}
            count of each glaze: {bowl: 3, jug: 2}
        cards:
          order: {file: drawn.csv, columns: {picture: drawing}}
        signs: {b: bowl, j: jug, a: ash, i: iron}
        boards:
          field: {of: each player, spaces: shelf, squares: 3 across 2 up, columns: bay A to C, rows: tier}
        places:
          shards: {heap of: ware, of: each player}
        actions:
          lay: {phrase: lay (spot), choose: {spot: a shelf in my field}, do: nothing}
        laws:
          free:
            says: A shelf is free.
            binds: lay
            needs: spot is empty
        score:
          bays: count(bays of my field where it is full)
          bowls: count(bowl in my field) + count(jug in A1)
          shards: count(my shards)
        """;

    private static readonly (string Name, string Content)[] Files = [("drawn.csv", "name,picture\nOne,j b / ji\nTwo,b j / bi\n")];

    [Theory]
    [InlineData("[bowl, jug]", "[bowl jug]", "ROS0832 4,25 bowl jug")]
    [InlineData("[bowl, jug]", "[bowl; jug]", "ROS0832 4,25 bowl; jug")]
    [InlineData("3 across 2 up", "3 x 2", "ROS0818 10,52 3 x 2")]
    [InlineData("3 across 2 up, columns: bay A to C, rows: tier", "three wide, columns: bay A to C, rows: tier 1 to 2", "ROS0818 10,52 three wide")]
    [InlineData("bay A to C", "bay A-C", "ROS0819 10,76 bay A-C")]
    [InlineData("heap of: ware, of", "heap of: ware of", "ROS0123 12,26 of")]
    [InlineData("    binds: lay", "    binds lay", "ROS0103 18,5 binds lay")]
    [InlineData("    needs: spot", "    needs spot", "ROS0103 19,5 needs spot is empty")]
    [InlineData("    binds: lay", "\tbinds: lay", "ROS0101 18,1 \t")]
    [InlineData("    binds: lay", "    \tbinds: lay", "ROS0101 18,1     \t")]
    public void One_slip_gives_one_message(string right, string wrong, string told)
    {
        Assert.Empty(Loaded.With(Ware, Files).Told);
        Assert.Equal([told], Loaded.With(Ware.Replace(right, wrong, StringComparison.Ordinal), Files).Told);
    }

    [Fact]
    public void Signs_that_nobody_knows_wait_in_one_line_behind_the_slip_in_their_legend()
    {
        Loaded loaded = Loaded.With(Ware.Replace("j: jug", "b: jug", StringComparison.Ordinal), Files);

        Assert.Equal(["ROS0108 8,18 b", "ROS0213 2,5 j"], loaded.Told);
        Assert.Equal("3 signs of drawings cannot be read: nothing says yet what 'j' means.", loaded.Reading.Problems[1].Message);
        Assert.Empty(EveryMessage.SaidBy(loaded.Reading.Problems[1]).SelectMany(BannedWords.In));
    }

    [Fact]
    public void Signs_that_nobody_knows_are_told_one_by_one_where_nothing_else_is_wrong()
    {
        Loaded loaded = Loaded.With(Ware.Replace("j: jug, ", "", StringComparison.Ordinal), Files);

        Assert.Equal(["ROS0213 2,5 j", "ROS0213 2,11 j", "ROS0213 3,7 j"], loaded.Told);
    }

    [Fact]
    public void The_sheet_comes_before_its_tables_and_names_before_what_speaks_of_them()
    {
        Loaded loaded = Loaded.With("laws: {free: {binds: lya, needs: 1 is 1}}\nactions: {lay: nothing}\nsigns: {j: jgu}\n" + Ware[Ware.IndexOf("cards", StringComparison.Ordinal)..Ware.IndexOf("signs", StringComparison.Ordinal)],
            [("drawn.csv", "name,picture\nOne,j\n")]);

        Assert.Equal(["ROS0201 3,12 jgu", "ROS0201 1,22 lya", "ROS0213 2,5 j"], loaded.Told);
    }

    [Fact]
    public void A_value_of_two_words_stays_one_value()
    {
        Loaded loaded = Loaded.Of("pieces: {ware: {attributes: {glaze: [dark red, red]}}}\nsigns: {d: dark red, r: red}");

        Assert.Empty(loaded.Told);
        Assert.Equal(["dark red", "red"], loaded.Sheet.Kinds[0].Attributes[0].Values.Select(v => v.Name));
    }

    [Fact]
    public void A_drawn_board_names_the_row_that_is_too_short()
    {
        Diagnostic problem = Loaded.Problem("boards:\n  hill:\n    drawn: |\n      2 - .\n      1 . . .\n      / A B C\n");

        Assert.Equal(("ROS0833", "2 - ."), (problem.Id, problem.At.Text));
    }
}
