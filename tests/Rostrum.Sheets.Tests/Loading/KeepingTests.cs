using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>What marks and places keep, and how often powers are used.</summary>
public sealed class KeepingTests
{
    private const string Game = """
        players: 2
        pieces: {stone: {count: 9, attributes: {colour: [red, blue]}}, shell: {count: 3}}
        boards:
          field: {hexes: rows of 2 3 2, spaces: hex}
          yard: {of: each player, squares: 2 across 1 up, spaces: cell}
        actions:
          refill: {do: nothing}
          lay: {phrase: lay on (spot), choose: {spot: a hex in field}, do: add 1 to coins of spot}

        """;

    [Theory]
    [InlineData("each hex", "field")]
    [InlineData("each hex of field", "field")]
    [InlineData("each cell", "yard")]
    public void A_mark_may_be_of_each_space(string of, string board)
    {
        Mark mark = Read($"marks: {{coins: {{holds: 0 to 9, of: {of}}}}}").Marks[0];

        Assert.Equal((board, false), (mark.EachSpaceOf?.Name, mark.EachPlayer));
    }

    [Theory]
    [InlineData("count(field where coins of it is more than 2)")]
    [InlineData("count(field where it is burning)")]
    [InlineData("count(s in field where not (burning of s))")]
    public void Marks_of_spaces_are_asked_of_a_space(string formula)
    {
        var count = (Term.Apply)Read($"marks: {{coins: {{holds: 0 to 9, of: each hex}}, burning: {{holds: yes or no, of: each hex}}}}\nwords: {{asked: {formula}}}").Meanings[0].Body;

        Term asked = count.Pick!.Where ?? ((Term.Filtered)count.Pick.Domain).Through.Where!;
        Term.MarkOf mark = Inside(asked).OfType<Term.MarkOf>().Single();
        Assert.Equal(SortKind.Space, mark.Owner!.Sort.Kind);
    }

    [Fact]
    public void A_step_sets_the_mark_of_a_space()
    {
        Step step = Read("marks: {coins: {holds: 0 to 9, of: each hex}}").Actions[1].Steps[0];

        Assert.Equal(SortKind.Space, ((Term.MarkOf)step.Terms[0]).Owner!.Sort.Kind);
    }

    [Fact]
    public void A_yes_or_no_mark_of_players_is_said_of_them() =>
        Assert.IsType<Term.MarkOf>(((Term.Apply)Read("marks: {coins: {holds: 0 to 9, of: each hex}, asleep: {holds: yes or no, of: each player}}\nwords: {asked: no(p in players where p is asleep)}").Meanings[0].Body).Pick!.Where);

    [Theory]
    [InlineData("lasts: turn", "turn", null)]
    [InlineData("lasts: refill, starts: 3", "refill", "3")]
    [InlineData("starts: 2 times count(players)", null, "2 times count(players)")]
    public void A_mark_says_how_long_it_lasts_and_how_it_starts(string keys, string? lasts, string? starts)
    {
        MarkFacts facts = Read($"marks: {{coins: {{holds: 0 to 9, of: each hex, {keys}}}}}").MarkFacts[0];

        Assert.Equal((lasts, starts), (facts.Lasts, facts.Starts?.Origin.At.Text));
    }

    [Fact]
    public void Places_say_what_they_hold_and_how_they_start()
    {
        Sheet sheet = Read("""
            marks: {coins: {holds: 0 to 9, of: each hex}}
            places:
              bag: {bag of: stone, when short: refill}
              used: {heap of: stone, starts: empty}
              hand: {hand of: stone, of: each player, holds: 7 stones}
              shelf: {heap of: [stone, shell], starts: red stones, holds: 4}
            """);

        Assert.Equal([("refill", false, null, null), (null, true, null, null), (null, false, 7, null), (null, false, 4, "red stones")],
            sheet.Places.Select(p => (p.WhenShort?.Name, p.StartsEmpty, p.Most, p.Starts?.Words)));
        Assert.Equal("A heap for stones and shells; 4 at the most; red stones at first.", SheetReadBack.Of(sheet).Single(c => c.Name == "shelf").Says);
    }

    [Theory]
    [InlineData("once a game", 1, LimitPer.Game)]
    [InlineData("once a round", 1, LimitPer.Round)]
    [InlineData("twice a turn", 2, LimitPer.Turn)]
    [InlineData("three times a game", 3, LimitPer.Game)]
    public void A_power_says_how_often_it_is_used(string limit, int times, LimitPer per)
    {
        Power power = Read($"marks: {{coins: {{holds: 0 to 9, of: each hex}}}}\npowers: {{key: {{lifts: any one law, limit: {limit}}}}}").Powers[0];

        Assert.Equal((times, per), (power.LimitTimes, power.LimitPer));
    }

    [Theory]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hx}}", "ROS0201", "each hx")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each space}}", "ROS0201", "each space")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex, lasts: tun}}", "ROS0201", "tun")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex, starts: yes}}", "ROS0302", "yes")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex}}\nwords: {asked: coins of me}", "ROS0302", "me")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex}}\nwords: {asked: coins + 1}", "ROS0180", "coins")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex}}\nplaces: {bag: {bag of: stone, when short: refil}}", "ROS0201", "refil")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex}}\nplaces: {bag: {bag of: stone, starts: shells}}", "ROS0849", "shells")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex}}\nplaces: {bag: {bag of: stone, starts: emtpy}}", "ROS0201", "emtpy")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex}}\nplaces: {bag: {bag of: stone, holds: many}}", "ROS0813", "many")]
    [InlineData("marks: {coins: {holds: 0 to 9, of: each hex}}\npowers: {key: {lifts: any one law, limit: onec a game}}", "ROS0201", "onec a game")]
    public void Mistakes_are_told_where_they_stand(string text, string id, string at)
    {
        Diagnostic problem = Loaded.Of(Game + text).Reading.Problems[0];

        Assert.Equal((id, at), (problem.Id, problem.At.Text));
    }

    private static IEnumerable<Term> Inside(Term term) => term switch
    {
        Term.Apply apply => apply.Arguments.OfType<Term>().SelectMany(Inside).Prepend(term),
        _ => [term],
    };

    private static Sheet Read(string text)
    {
        Loaded loaded = Loaded.Of(Game + text);
        Assert.Empty(loaded.Told);
        return loaded.Sheet;
    }
}
