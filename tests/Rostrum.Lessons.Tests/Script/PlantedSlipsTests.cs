using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Findings;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Script;

/// <summary>Slips planted in lessons that are right: each is found, and nothing else.</summary>
public sealed class PlantedSlipsTests
{
    [Theory]
    [InlineData("kiln-night", "If it can stand nowhere, it is smashed, and you\nkeep it as a shard.", "", "ROS0611 smash, page 5")]
    [InlineData("kiln-night", "On a tie, fewer shards win, then more sticks. After that, you share.", "", "ROS0611 fewer shards, no page; ROS0611 more sticks, no page; ROS0611 shared, no page")]
    [InlineData("kiln-night", ", [10](<value:run points of 4>)", "", "ROS0611 run points, page 8")]
    [InlineData("plank-road", "Second, a lookout: every plank that lies on a heap of [three](<fact:peats of the highest heap>) gives you [two](<fact:points for a lookout>) points.", "", "ROS0611 lookout, page 3")]
    [InlineData("plank-road", "Or both of you pass, one after the other: then the game is over at once.", "", "")]
    [InlineData("saltern-steps", "When some of you are equal, the player with fewer storms is ahead.", "", "ROS0611 fewer storms, no page")]
    [InlineData("third-bell-market", "And if there is a tie, more goods win.", "", "ROS0611 more goods, no page")]
    public void A_rule_that_is_never_said_is_found_with_its_page(string game, string said, string instead, string found) =>
        Assert.Equal(found, string.Join("; ", Planted(game, said, instead).Where(f => f.Problem.Id == "ROS0611").Select(f => $"{f.Problem.Id} {f.Concerns}, {(f.Cite is null ? "no page" : $"page {f.Cite.Page}")}")));

    [Fact]
    public void A_rule_whose_name_is_said_elsewhere_is_listed_as_perhaps_never_said() => Assert.Equal(
        CoverStatus.PerhapsNeverSaid,
        RightLessons.Check("plank-road", Text("plank-road", "Or both of you pass, one after the other: then the game is over at once.", "")).Script.Clauses.First(c => c.Clause.Name == "both passed").Status);

    [Fact]
    public void A_rule_that_only_a_caption_says_is_shown_and_never_said()
    {
        ScriptFinding finding = Assert.Single(Planted("kiln-night", "If it can stand nowhere, it is smashed, and you\nkeep it as a shard.", "\n\n![A ware that can stand nowhere is smashed and kept as a shard](position:E1)\n"));

        Assert.Equal("The action 'smash' is shown in a caption and never said (Rulebook, page 5).", finding.Problem.Message);
        Assert.Equal("position:E1", finding.Problem.At.Text);
    }

    [Fact]
    public void A_variant_of_which_nothing_is_said_is_one_finding()
    {
        ScriptFinding finding = Assert.Single(Planted("saltern-steps", Part("saltern-steps", "## Alone"), ""));

        Assert.Equal(("ROS0611", "solo"), (finding.Problem.Id, finding.Concerns));
    }

    [Fact]
    public void A_variant_of_which_a_change_is_missing_is_incomplete()
    {
        ScriptFinding finding = Assert.Single(Planted("kiln-night", "At set-up, each further player takes\n[two](<fact:more sticks each further climbing seat>) sticks more than the player before.", ""));

        Assert.Equal(("ROS0617", "Climbing Chamber/hand out sticks", 3), (finding.Problem.Id, finding.Concerns, finding.Cite!.Page));
    }

    [Fact]
    public void A_variant_with_many_changes_that_are_not_said_is_told_once()
    {
        ScriptFinding finding = Assert.Single(Planted("kiln-night", "(<left out:guild marks, solo>)", "(<left out:solo>)"));

        Assert.Equal(("ROS0617", "guild marks"), (finding.Problem.Id, finding.Concerns));
    }

    [Theory]
    [InlineData("[I come to both](<later:accept, burn>)", "[I come to that](<later:Set-up>)", "ROS0615 Set-up")]
    [InlineData("Page 8, line by line.", "There are [nine lines](<count:9 bowls, jugs, plates, lamps, glaze, full, commissions, shards, sticks>).", "")]
    [InlineData("Page 8, line by line.", "There are [three lines](<count:3 bowls, jugs, wagons>).", "ROS0614 three lines")]
    [InlineData("Page 8, line by line.", "There are [four lines](<count:3 bowls, jugs, plates>).", "ROS0614 four lines")]
    [InlineData("Page 8, line by line.", "There are [two lines](<count:2>).\n\n- The first.\n- The second.\n- A third.", "ROS0614 two lines")]
    [InlineData("Page 8, line by line.", "There are [two lines](<count:2>).\n\n- The first.\n- The second.", "")]
    [InlineData("Page 8, line by line.", "There are [two lines](<count:2>).", "ROS0614 two lines")]
    [InlineData("Take its ware and all its sticks.", "[Take its ware and all its sticks](<simplified:carry>).", "ROS0619 carry")]
    [InlineData("Take its ware and all its sticks.", "[Take its ware and all its sticks](<simplified:carry>). In a real game you do it later.", "")]
    [InlineData("Take its ware and all its sticks.", "[Take its ware and all its sticks](<simplified:carry>).\n\n[One after the other, really](<put right:carry>).", "")]
    public void What_is_announced_must_come(string said, string instead, string found) =>
        Assert.Equal(found, string.Join("; ", Planted("kiln-night", said, instead).Select(f => $"{f.Problem.Id} {f.Concerns}")));

    [Fact]
    public void A_term_that_is_used_before_its_topic_is_found_with_its_cost_and_a_better_order()
    {
        string text = RightLessons.Text("kiln-night");
        string table = Part("kiln-night", "## What is on the table");
        string[] moved = [.. RightLessons.Check("kiln-night", text.Replace(table, "", StringComparison.Ordinal).Replace("## Scoring\n", $"{table}## Scoring\n", StringComparison.Ordinal)).Script.Findings.Select(f => f.Problem.Id)];

        Assert.Contains("ROS0612", moved);
        Assert.Contains("ROS0613", moved);
    }

    [Theory]
    [InlineData("ROS0616 rod", "Keep sticks and lamps away", "Keep rods and lamps away")]
    [InlineData("", "Keep sticks and lamps away", "Keep sticks and lamps away")]
    public void A_name_that_may_not_be_said_is_found(string found, string said, string instead)
    {
        string sheet = TestFiles.Read("games/kiln-night/sheet.yaml").Replace("  stick:\n", "  stick:\n    never: [rod]\n", StringComparison.Ordinal);
        var game = new Game(ShippedGames.Folder("games/kiln-night", ("sheet.yaml", sheet)), ShippedGames.Idioms);

        Assert.Equal(found, string.Join("; ", RightLessons.Check(game, RightLessons.Text("kiln-night").Replace(said, instead, StringComparison.Ordinal)).Script.Findings.Select(f => $"{f.Problem.Id} {f.Concerns}")));
    }

    [Fact]
    public void Another_name_without_the_one_of_the_rules_is_found()
    {
        string sheet = TestFiles.Read("games/traditional/reversi/sheet.yaml").Replace("  disc:\n", "  disc:\n    called: [counter]\n", StringComparison.Ordinal);
        var game = new Game(ShippedGames.Folder("games/traditional/reversi", ("sheet.yaml", sheet)), ShippedGames.Idioms);

        ScriptFinding finding = RightLessons.Check(game, RightLessons.Text("traditional/reversi").Replace("disc", "counter", StringComparison.Ordinal)).Script.Findings.First(f => f.Problem.Id == "ROS0616");

        Assert.Equal("The lesson says 'counter' and never 'disc', the name that the rules use.", finding.Problem.Message);
    }

    [Fact]
    public void Many_terms_before_the_first_example_are_found()
    {
        string text = RightLessons.Text("kiln-night");
        string opening = Part("kiln-night", "## The aim");

        ScriptFinding finding = RightLessons.Check("kiln-night", text.Replace(opening, "", StringComparison.Ordinal)).Script.Findings.First(f => f.Problem.Id == "ROS0618");

        Assert.Contains("people keep about 4 in mind", finding.Problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[I come to both](<later:accept, burn>)", "[I come to both](<later:accept, brun>)", "'later' names 'brun', and neither the sheet nor the lesson has that.", "Did you mean 'burn'?")]
    [InlineData("[I come to both](<later:accept, burn>)", "[I come to both](<left out:score/jgus>)", "'left out' names 'score/jgus', and neither the sheet nor the lesson has that.", "Did you mean 'score/jugs'?")]
    [InlineData("Page 8, line by line.", "[Two](count:few)", "'count:few' announces no number.", null)]
    [InlineData("Page 8, line by line.", "[Two](<count:2 jugs>)", "The mark counts 2 and names 1.", null)]
    public void A_mark_that_names_nothing_is_told_in_one_sentence(string said, string instead, string message, string? hint)
    {
        Diagnostic problem = Assert.Single(RightLessons.Check("kiln-night", Text("kiln-night", said, instead)).Problems, p => p.Id == "ROS0620");

        Assert.Equal(message, problem.Message);
        Assert.True(hint is null || hint == problem.Hint, problem.Hint);
    }

    [Fact]
    public void A_note_says_which_topic_teaches_a_rule()
    {
        string text = Text("kiln-night", "## Burning sticks\n", "## Burning sticks\n\n<!-- teaches: laws/jugs, two sticks -->\n");

        Assert.Equal([5], RightLessons.Check("kiln-night", text).Script.Clauses.First(c => c.Clause.LongName == "laws/jugs").Topics);
    }

    private static string Part(string game, string heading)
    {
        string text = RightLessons.Text(game);
        int start = text.IndexOf(heading, StringComparison.Ordinal);
        int end = text.IndexOf("\n## ", start + 1, StringComparison.Ordinal);
        return end < 0 ? text[start..] : text[start..(end + 1)];
    }

    private static string Text(string game, string said, string instead)
    {
        string text = RightLessons.Text(game);
        Assert.Contains(said.ReplaceLineEndings("\n"), text, StringComparison.Ordinal);
        return text.Replace(said, instead, StringComparison.Ordinal);
    }

    private static ScriptFinding[] Planted(string game, string said, string instead) => [.. RightLessons.Check(game, Text(game, said, instead)).Script.Findings];
}
