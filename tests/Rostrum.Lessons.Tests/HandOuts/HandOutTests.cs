using System.Collections.Immutable;
using Rostrum.Lessons.HandOuts;
using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Page;
using Rostrum.Pictures;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.HandOuts;

public sealed class HandOutTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly LessonReport Report = LessonCheck.Of(Kiln)!;
    private static readonly PlayerAid Aid = AidMaker.Make(Kiln, Report);
    private static readonly HandOut HandOut = HandOutMaker.Make(Report, Aid);

    public static TheoryData<string> Papers => ["a4", "letter"];

    // Every demo game has an aid, with a lesson or without.
    public static TheoryData<string, string> GamesOnPapers =>
        [.. ((string[])["kiln-night", "plank-road", "saltern-steps", "signal-terrace", "sluicekeepers", "third-bell-market"]).SelectMany(g => new[] { (g, "a4"), (g, "letter") })];

    [Theory]
    [MemberData(nameof(GamesOnPapers))]
    public void Every_word_of_the_aid_is_on_the_paper_and_nothing_leaves_it(string game, string paper)
    {
        HandOut handOut = Of(game);

        ImmutableArray<PaperPage> pages = HandOutWriter.Pages(handOut, Paper(paper));

        string words = Words(pages);
        Assert.All(handOut.Aid.Sections.SelectMany(s => s.Clauses), c => Assert.Equal([], Prose.WordsOf($"{c.Sentence} {c.Page} {c.Note}").Where(w => !words.Contains(w, StringComparison.Ordinal))));
        Assert.All(pages, AssertInside);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Kiln_Night_has_one_page_with_drawings_in_readable_type(string paper)
    {
        PaperPage page = Assert.Single(HandOutWriter.Pages(HandOut, Paper(paper)));

        Assert.Equal(paper == "a4" ? 2 : 1, page.Pictures.Count);
        Assert.All(Texts(page), t => Assert.InRange(t.Size, HandOutWriter.Smallest, 40));
        Assert.All(page.Pictures.SelectMany(p => TextsIn(p.Scene.Nodes).Select(t => t.Size * p.Scale)), s => Assert.InRange(s, 8.4, 40));
    }

    [Fact]
    public void Scoring_reads_as_a_table_and_ends_with_ties()
    {
        string[] bold = [.. Texts(HandOutWriter.Pages(HandOut, PaperSize.A4)[0]).Where(t => t.Weight == FontWeight.Bold).Select(t => t.Content)];

        Assert.Equal(["Scoring", "Bowls", "Jugs", "Plates", "Lamps", "Glaze", "Full", "Commissions", "Shards", "Sticks", "Ties", "Run points"], bold[Array.IndexOf(bold, "Scoring")..].Where(b => !char.IsDigit(b[0])));
    }

    [Fact]
    public void A_table_with_readings_shows_the_rows_that_all_of_them_share() =>
        Assert.Equal([("1", "1"), ("2", "3"), ("3", "6"), ("4", "10")], Assert.Single(Aid.Tables).Columns);

    [Theory]
    [MemberData(nameof(Papers))]
    public void What_one_page_does_not_hold_goes_on_and_says_so(string paper)
    {
        HandOut long_ = HandOut with { Aid = Aid with { Sections = [.. Enumerable.Range(1, 30).Select(i => new AidSection($"Part {i}", [.. Enumerable.Range(1, 9).Select(c => new AidClause($"Clause {i}x{c} says that something is done by somebody before it is done by somebody else.", "p. 4"))]))] } };

        ImmutableArray<PaperPage> pages = HandOutWriter.Pages(long_, Paper(paper));

        Assert.InRange(pages.Length, 3, 20);
        Assert.Contains("Page 1 of", Words([pages[0]]), StringComparison.Ordinal);
        Assert.Contains("Kiln Night, continued", Words([pages[1]]), StringComparison.Ordinal);
        Assert.Contains("Clause 30x9", Words(pages), StringComparison.Ordinal);
        Assert.All(pages, AssertInside);
        Assert.All(pages.SelectMany(Texts), t => Assert.InRange(t.Size, HandOutWriter.Smallest, 40));
    }

    [Fact]
    public void No_heading_ends_a_column()
    {
        var layout = new HandOutLayout(PaperSize.A4, 10);
        HandOut tall = HandOut with { Aid = Aid with { Sections = [.. Enumerable.Range(1, 60).Select(i => new AidSection($"Part {i}", [new AidClause("One.", ""), new AidClause("Two.", "")]))] } };

        Assert.All(layout.Fill(layout.Blocks(tall, 0)), column => Assert.False(column[^1].Block.StaysWithNext));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(5000)]
    public void A_word_without_end_and_a_clause_without_end_stay_on_the_paper(int length)
    {
        string word = string.Concat(Enumerable.Range(0, length).Select(i => (char)('a' + (i % 26))));
        var aid = new PlayerAid(word, word, word, [new AidSection("Laws", [new AidClause(word, word) { Name = word, Note = word }, new AidClause(string.Join(' ', Enumerable.Repeat("much", length)), "p. 1")])], word);

        ImmutableArray<PaperPage> pages = HandOutWriter.Pages(new HandOut(aid, []), PaperSize.Letter);

        Assert.All(pages, AssertInside);
    }

    [Fact]
    public void An_aid_of_nothing_is_a_page_with_its_name()
    {
        PaperPage page = Assert.Single(HandOutWriter.Pages(new HandOut(new PlayerAid("Pebbles", "", "", [], "Unofficial."), []), PaperSize.A4));

        Assert.Equal(["Pebbles", "Unofficial."], Texts(page).Select(t => t.Content));
    }

    [Fact]
    public void A_drawing_whose_letters_would_be_too_small_is_left_out()
    {
        var wide = new HandOutFigure("wide", space => new Scene(space * 100, space, "wide", "wide", []));

        Assert.Null(HandOutDrawing.Of(wide, 250));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void The_same_hand_out_gives_the_same_bytes(string paper) => Assert.Equal(HandOutWriter.Write(HandOut, Paper(paper)), HandOutWriter.Write(Of("kiln-night"), Paper(paper)));

    private static HandOut Of(string game)
    {
        Game opened = ShippedGames.Open(game);
        LessonReport report = LessonCheck.Of(opened) ?? LessonCheck.Of(opened, new SourceText("lesson.md", "## A\n\nHello.\n"));
        return HandOutMaker.Make(report, AidMaker.Make(opened, report));
    }

    private static PaperSize Paper(string name) => name == "a4" ? PaperSize.A4 : PaperSize.Letter;

    private static IEnumerable<SceneNode.Text> Texts(PaperPage page) => TextsIn(page.Nodes);

    private static IEnumerable<SceneNode.Text> TextsIn(IEnumerable<SceneNode> nodes) =>
        nodes.SelectMany(n => n switch
        {
            SceneNode.Group group => TextsIn(group.Children),
            SceneNode.Text text => [text],
            _ => [],
        });

    private static string Words(IEnumerable<PaperPage> pages) => Prose.Fold(string.Concat(pages.SelectMany(Texts).Select(t => t.Content + " ")));

    // 20 points are 7 mm, what printers at home cannot reach; half a point is the roundness of numbers.
    private static void AssertInside(PaperPage page)
    {
        var room = new Box(20, 20, page.Width - 40, page.Height - 40);
        Assert.All(Texts(page), t =>
        {
            double left = t.Anchor switch
            {
                TextAnchor.Middle => t.At.X - (t.Width / 2),
                TextAnchor.End => t.At.X - t.Width,
                _ => t.At.X,
            };
            Assert.InRange(left, room.X, room.Right);
            Assert.InRange(left + t.Width, room.X, room.Right + 0.5);
            Assert.InRange(t.At.Y, room.Y + (t.Size * 0.5), room.Bottom);
        });
        Assert.All(page.Pictures, p => Assert.True(p.Box.X >= room.X && p.Box.Right <= room.Right && p.Box.Y >= room.Y && p.Box.Bottom <= room.Bottom));
    }
}
