using System.Xml.Linq;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

public sealed class PlayerAidWriterTests
{
    private static readonly PlayerAid Aid = new(
        "Kiln Night",
        "First printing",
        "25 November 2026",
        [
            new("Standing", [new("Nothing stands on a lamp.", "p. 5"), new("Copper never stands beside ash.", "p. 5")]),
            new("Scoring", [new("Each shard costs one point.", "p. 8")]),
        ],
        "Unofficial. Rules in our own words; check the rulebook.");

    [Fact]
    public void Aid_shows_every_clause_with_its_page_under_its_heading()
    {
        XElement root = Parsed.Html(PlayerAidWriter.Write(Aid, PageAssets.None));

        Assert.Equal("Kiln Night: player aid", root.Descendants("h1").Single().Value);
        Assert.Equal(["Standing", "Scoring"], root.Descendants("h2").Select(heading => heading.Value));
        Assert.Equal(
            ["Nothing stands on a lamp.\u00a0p. 5", "Copper never stands beside ash.\u00a0p. 5", "Each shard costs one point.\u00a0p. 8"],
            root.Descendants("li").Select(clause => clause.Value));
    }

    [Fact]
    public void Aid_says_of_which_printing_and_day_it_is_and_that_it_is_unofficial()
    {
        string words = Parsed.Html(PlayerAidWriter.Write(Aid, PageAssets.None)).Value;

        Assert.Contains("First printing. Correct as of 25 November 2026.", words, StringComparison.Ordinal);
        Assert.Contains(Aid.UnofficialNote, words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10, 2, true)]
    [InlineData(40, 2, true)]
    [InlineData(80, 3, true)]
    [InlineData(400, 3, false)]
    public void More_clauses_are_set_smaller_and_in_the_end_do_not_fit(int clauses, int columns, bool fits)
    {
        AidFit fit = AidFit.Of(Long(clauses), PageAssets.None);

        Assert.Equal((columns, fits), (fit.Columns, fit.Fits));
        Assert.Equal(fits, PlayerAidWriter.FitsOnePage(Long(clauses), PageAssets.None));
    }

    [Fact]
    public void Type_never_grows_when_clauses_are_added()
    {
        decimal[] sizes = [.. Enumerable.Range(0, 40).Select(tens => AidFit.Of(Long(tens * 10), PageAssets.None).TypePoints)];

        Assert.Equal(sizes.OrderDescending(), sizes);
        Assert.Equal((10.5m, 7m), (sizes[0], sizes[^1]));
    }

    private static PlayerAid Long(int clauses) => Aid with
    {
        Sections = [new("Rules", [.. Enumerable.Repeat(new AidClause("A ware goes on the lowest free shelf of a bay.", "p. 5"), clauses)])],
    };
}
