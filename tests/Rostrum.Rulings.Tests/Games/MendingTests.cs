using Rostrum.Rulings.Games;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>What is guessed about a slip never takes a key away, never speaks of another file's form, and costs few readings.</summary>
public sealed class MendingTests
{
    private const string Head = "rule sheet: 1\ngame: Mend\nplayers: 2\npieces: {stone: {count: 6}, gem: {count: 3}}\nboards:\n  t: {squares: 3 across 3 up}\nplaces: {heap: {heap of: stone}}\n";

    [Theory]
    [InlineData("score:\n  x: {says: A line scores., cite: book 2, points: count(stones in t)}\n", "ROS0501 book 2")]
    [InlineData("score:\n  x: {says: A line scores., each: l in straights(t, 3), points: 1}\n", "ROS0203 l")]
    [InlineData("score:\n  x: {says: A line scores., at most: heap of, points: count(stones in t)}\n", "ROS0202 heap")]
    [InlineData("score:\n  x: {says: A line scores., each: s in t where s shows a zork, at most: heap of 7, points: 1}\n", "ROS0201 zork", "ROS0202 heap")]
    [InlineData("variants:\n  long: {says: A longer game., when: zork, score: {x: {points: 1}}}\n", "ROS0201 zork")]
    [InlineData("score:\n  a: {says: A line scores., each: s in t where s is is is empty, points: 1}\n", "ROS0180 is")]
    public void A_key_behind_a_sentence_on_one_line_stays_a_key(string section, params string[] told) =>
        Assert.Equal(told, Check(("sheet.yaml", Head + section)).Select(p => $"{p.Id} {p.At.Text}"));

    [Fact]
    public void A_comma_that_tore_a_key_apart_is_still_found() =>
        Assert.Equal(["ROS0124"], Check(("sheet.yaml", Head + "score:\n  x: {says: A line scores. points,: count(stones in t)}\n")).Select(p => p.Id));

    [Fact]
    public void Two_slips_are_told_though_mending_the_first_moves_the_second_to_the_end_of_the_file()
    {
        const string Sheet = "rule sheet: 1\ngame: G\nplayers: 2\npiecess:\n  stone: {count: 6}\nscore:\n  a:\n    says: A.\n    points: count(shelf in t)\n"
            + "  b:\n    says: B.\n    points: 2 times count(shelf in t where it is empty)\n  c:\n    says: C.\n    points: count(stones in t)\n"
            + "boards:\n  t:\n    squares: 2 across 1 up\n    spaces: shelvf";

        Assert.Equal(["ROS0201 piecess", "ROS0203 shelf"], Check(("sheet.yaml", Sheet)).Select(p => $"{p.Id} {p.At.Text}"));
    }

    [Fact]
    public void A_table_of_values_is_not_taken_for_an_outline()
    {
        IEnumerable<Diagnostic> told = Check(("sheet.yaml", Head + "cards: {tip: {file: c.csv, attributes: {colour: [red, blue]}}}\n"), ("c.csv", "name,colour\nOne,red\nTwo,grn\n"));

        Assert.Equal(["ROS0201 c.csv(3,5)"], told.Select(p => $"{p.Id} {p.At}"));
    }

    [Theory]
    [InlineData(2, 12, 60)]
    [InlineData(50, 2, 6)]
    public void The_wider_the_boards_the_fewer_readings_are_made(int side, int fewest, int most)
    {
        int readings = 0;
        string sheet = $"rule sheet: 1\ngame: G\nplayers: 2\npieces: {{stone: {{count: 6}}}}\nboards: {{t: {{squares: {side} across {side} up}}}}\ncards: {{tip: {{file: c.csv}}}}\nscore:\n"
            + string.Concat(Enumerable.Range(1, 12).Select(i => $"  x{i}: {{says: Stones., points: {i} times cuont(stones in t)}}\n"));
        GameFolder files = GameFolder.InMemory("told", ("sheet.yaml", sheet), ("c.csv", "name\nOne\n"));
        var counted = new GameFolder("told", name => name == "c.csv" && ++readings > 0 ? FolderFile.Of("name\nOne\n") : FolderFile.Of(sheet), files.FilesIn);

        Assert.NotEmpty(new SheetCheck(new(counted, ShippedGames.Idioms), _ => []).Of([], TestContext.Current.CancellationToken));
        Assert.InRange(readings, fewest, most);
    }

    private static IEnumerable<Diagnostic> Check(params (string Name, string Content)[] files) =>
        new SheetCheck(new(GameFolder.InMemory("told", files), ShippedGames.Idioms), _ => []).Of([], TestContext.Current.CancellationToken).Select(p => p.Problem);
}
