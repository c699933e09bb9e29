using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Published;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Published;

/// <summary>A change of the sheet finds exactly the minutes of the published video that it makes wrong.</summary>
public sealed class PublishedCheckTests
{
    [Fact]
    public void Unchanged_sheet_lists_nothing()
    {
        PublishedReport report = PublishedBench.Of(ShippedGames.Open("kiln-night"), PublishedBench.Video());

        Assert.Empty(report.Findings);
        Assert.Empty(report.Notes);
        Assert.Equal("", report.CorrectionsOf(report.Videos[0]));
    }

    [Fact]
    public void Another_value_lists_the_rule_and_every_number_that_rests_on_it()
    {
        PublishedReport report = PublishedBench.After(
            ("says: Plates score 3 each", "says: Plates score 4 each"), ("    along: tiers\n    each: 3", "    along: tiers\n    each: 4"), ("points for a plate: {is: 3", "points for a plate: {is: 4"));

        Assert.Equal(["total Value", "score/plates Value", "facts/points for a plate Value", "score/plates Value", "total Value"], report.Findings.Select(f => $"{f.Clause} {f.Kind}"));
        Assert.Equal(
            """
            Corrections:
            0:17 This chamber is worth 38 points (instead of 35).
            6:29 Plates score 4 each, in the one tier that shows most plates (instead of 3; Rulebook, page 8).
            7:08 Plates, 12 (instead of 9; Rulebook, page 8).
            7:20 Total, 38 (instead of 35).

            """.ReplaceLineEndings("\n"),
            report.CorrectionsOf(report.Videos[0]));
        Assert.Empty(report.Notes);
    }

    [Fact]
    public void A_value_that_no_sentence_of_the_sheet_tells_is_found_by_what_it_counts()
    {
        PublishedReport report = PublishedBench.After(
            ("    rows: {1: 1, 2: 3, 3: 6, 4: 10}\n    readings:", "    rows: {1: 1, 2: 4, 3: 6, 4: 10}\n    readings:"),
            ("2: 3, 3: 6, 4: 10, 5: 15", "2: 4, 3: 6, 4: 10, 5: 15"),
            ("2: 3, 3: 6, 4: 10, 5: 11", "2: 4, 3: 6, 4: 10, 5: 11"));

        Assert.Contains(report.Findings, f => f is { IsValue: true, Now: "Bowls score in upright runs without a gap: 1, 4, 6, 10." });
        Assert.Contains("\n6:11 Bowls score in upright runs without a gap: 1, 4, 6, 10 (instead of 3", report.CorrectionsOf(report.Videos[0]), StringComparison.Ordinal);
        Assert.Contains(report.Findings, f => f.Clause == "score/bowls" && f.Now == "Here that makes 6.");
        Assert.DoesNotContain(report.Findings, f => f.Clause.Contains("plates", StringComparison.Ordinal));
    }

    [Fact]
    public void A_rule_that_is_gone_is_told_with_what_was_said()
    {
        PublishedReport report = PublishedBench.After(("""
              at most three:
                says: At most three commissions lie before a player.
                cite: book 4
                binds: accept
                needs: count(my accepted) is less than 3

            """.ReplaceLineEndings("\n"), ""));

        PublishedFinding gone = Assert.Single(report.Findings);
        Assert.Equal((ChangeKind.Gone, "laws/at most three", "No longer so: At most three commissions lie before a player."), (gone.Kind, gone.Clause, gone.Now));
    }

    [Fact]
    public void A_word_that_is_decided_otherwise_is_found_where_it_is_told_and_where_a_ruling_turns_on_it()
    {
        PublishedReport report = PublishedBench.After(("    follow: left and right\n", "    follow: all four sides\n"));

        Assert.Equal(["about 2:54 words/beside (shelf s) Decided", "about 3:05 laws/copper and ash Value"], PublishedBench.Told(report));
        Assert.Equal("So a copper bowl on A3 is not allowed (instead of 'allowed'; Rulebook, page 5).", report.Findings[1].Correction);
    }

    [Fact]
    public void An_answer_of_the_publisher_makes_wrong_what_was_told_as_open_and_names_the_note()
    {
        PublishedReport report = PublishedBench.After(
            ("        through: ware\n", "        through: ware\n    follow: cracked joins\n    why: The publisher says so.\n    cite: answer\n"),
            ("    says: Score 1 point a ware in the largest group of touching ware of one glaze.\n    cite: book 8\n", "    says: Score 1 point a ware in the largest group of touching ware of one glaze.\n"),
            ("    cite: book 8\n    about: glaze", "    cite: answer\n    about: glaze"),
            ("sources:\n", "sources:\n  answer:\n    title: Second note\n    date: 4 June 2026\n    rank: 1\n"));

        PublishedFinding open = Assert.Single(report.Findings);
        Assert.Equal(("readings/readings of glaze", ChangeKind.Decided), (open.Clause, open.Kind));
        Assert.Equal("A cracked ware still joins the groups that it touches, without a point of its own (Second note, 4 June 2026).", open.Correction);
        Assert.Equal("Second note, 4 June 2026 is new since then", open.Because);
        Assert.Contains(report.Notes, n => n.About == "answer");
    }

    [Fact]
    public void A_card_that_the_publisher_corrects_is_found_by_its_value()
    {
        PublishedReport report = PublishedBench.After(("            follow: book 12", "            follow: card"));

        PublishedFinding value = Assert.Single(report.Findings);
        Assert.Contains("page 12 says 7 (instead of six", value.Correction, StringComparison.Ordinal);
    }

    [Fact]
    public void Sources_that_disagree_now_about_what_was_said_make_it_open()
    {
        PublishedReport report = PublishedBench.After(
            ("    idiom: full lines\n    along: tiers\n    points: 3", "    idiom: full lines\n    along: tiers\n    conflict:\n      book 8: {points: 3}\n      aid 1: {points: 2}"));

        Assert.Contains(report.Findings, f => f is { Clause: "score/full", Kind: ChangeKind.Opened, IsValue: false });
        Assert.Contains(report.Findings, f => f is { Clause: "score/full", Kind: ChangeKind.Opened, IsValue: true, Then: "Full, 3." });
    }

    [Fact]
    public void Other_words_another_page_and_a_printing_make_nothing_wrong()
    {
        PublishedReport report = PublishedBench.After(
            ("    says: Nothing stands on a lamp.\n", "    says: On a lamp nothing may be put.\n"),
            ("    says: A swap costs two sticks.\n    cite: book 4", "    says: A swap costs 2 sticks.\n    cite: book 5"),
            ("    needs: count(my accepted) is less than 3", "    needs: 3 is more than count(my accepted)"),
            ("    printing: first\n    pages: 12", "    printing: second\n    pages: 12"));

        Assert.Empty(report.Findings);
        Assert.Equal(["book", "laws/at most three", "laws/two sticks"], report.Notes.Select(n => n.About).Order(StringComparer.Ordinal));
        Assert.Equal(new Correction(TimeSpan.FromSeconds(33), "This video was made with: Rulebook, first printing. Now there is: Rulebook, second printing."), report.Notes.Single(n => n.About == "book").Line);
    }

    [Fact]
    public void What_a_new_printing_changes_is_wrong_and_names_the_printing()
    {
        PublishedReport report = PublishedBench.After(
            ("    printing: first\n    pages: 12", "    printing: second\n    pages: 12"), ("says: Each shard scores minus 1.", "says: Each shard scores minus 2."), ("    of: my shards\n    points: minus 1", "    of: my shards\n    points: minus 2"));

        PublishedFinding shards = report.Findings.Single(f => f is { Clause: "score/shards", IsValue: false });
        Assert.Equal("Each shard scores minus 2 (instead of minus 1; Rulebook, second printing, page 8).", shards.Correction);
        Assert.Equal("Rulebook, second printing; then it was Rulebook, first printing", shards.Because);
        Assert.Contains(report.Findings, f => f is { IsValue: true, Correction: "Shards, minus 4 (instead of minus 2; Rulebook, second printing, page 8)." });
    }

    [Fact]
    public void A_new_rule_is_noted_and_makes_nothing_wrong()
    {
        PublishedReport report = PublishedBench.After(("  full:\n    says: Each full tier", "  moon:\n    says: Each lamp in bay C scores 1 point.\n    cite: book 8\n    points: count(lamps in my chamber) times 0\n  full:\n    says: Each full tier"));

        Assert.Empty(report.Findings);
        Assert.Equal(("score/moon", "This rule is new since then, and the video does not say it."), Assert.Single(report.Notes.Select(n => (n.About, n.Says))));
    }

    [Fact]
    public void A_rule_that_is_only_called_otherwise_is_not_gone()
    {
        PublishedReport report = PublishedBench.After(("  at most three:\n    says: At most three", "  three at most:\n    says: At most three"));

        Assert.Empty(report.Findings);
        Assert.Equal(("laws/at most three", "Said at about 4:20; the sheet calls it 'laws/three at most' now."), Assert.Single(report.Notes.Select(n => (n.About, n.Says))));
    }

    [Fact]
    public void What_was_counted_by_a_rule_that_is_gone_is_wrong_where_it_was_counted()
    {
        PublishedReport report = PublishedBench.After(("""
              sticks:
                says: Every three sticks left score 1 point, rounded down.
                cite: book 8
                idiom: leftovers by a rate
                of: my sticks
                every: 3

            """.ReplaceLineEndings("\n"), ""));

        Assert.Contains(report.Findings, f => f is { Clause: "score/sticks", Kind: ChangeKind.Gone, IsValue: false });
        Assert.Contains(report.Findings, f => f is { Clause: "score/sticks", Kind: ChangeKind.Gone, IsValue: true, Then: "Sticks, 1." });
        Assert.Contains(report.Findings, f => f is { Clause: "total", Now: "Total, 34." });
    }

    [Fact]
    public void A_position_that_was_laid_anew_says_nothing_of_the_rules()
    {
        Game game = ShippedGames.Open("kiln-night");
        Game laid = game.With(new SourceText("positions/E1.yaml", TestFiles.Read("games/kiln-night/positions/E1.yaml").Replace("sticks: 4", "sticks: 9", StringComparison.Ordinal)));
        Game expects = game.With(new SourceText("positions/E1.yaml", TestFiles.Read("games/kiln-night/positions/E1.yaml").Replace("bowls: {is: 5", "bowls: {is: 6", StringComparison.Ordinal)));

        PublishedReport report = PublishedBench.Of(laid, PublishedBench.Video());

        Assert.Empty(report.Findings);
        Assert.Equal("positions/E1", Assert.Single(report.Notes).About);
        Assert.Empty(PublishedBench.Of(expects, PublishedBench.Video()).Notes);
    }

    [Fact]
    public void Thousands_of_rules_that_nobody_knows_are_told_at_once()
    {
        PublishedVideo video = PublishedBench.Named with
        {
            Rules = [.. Enumerable.Range(0, VideoReader.MostSaid).Select(i => new PublishedRule($"score/{i}", [VideoTime.Of(TimeSpan.FromSeconds(i), false)], "Plates score.", "idiom = best line; of = whole plate; along = tiers; each = 3", "", ""))],
        };

        PublishedReport report = PublishedBench.Of(ShippedGames.Open("kiln-night"), video);

        Assert.Equal(VideoReader.MostSaid, report.Findings.Length);
        Assert.All(report.Findings, f => Assert.Equal(ChangeKind.Gone, f.Kind));
    }

    [Fact]
    public void Shipped_file_is_right_today_and_says_that_it_is_invented()
    {
        PublishedFile file = PublishedFile.Read(new SourceText(PublishedFile.FileName, TestFiles.Read("games/kiln-night/published.yaml")));

        PublishedReport report = PublishedCheck.Of(ShippedGames.Open("kiln-night"), file, TestContext.Current.CancellationToken);

        Assert.Empty(file.Problems);
        Assert.Empty(report.Findings);
        Assert.Empty(report.Notes);
        Assert.Contains("\n# Invented for this project", TestFiles.Read("games/kiln-night/published.yaml"), StringComparison.Ordinal);
    }
}
