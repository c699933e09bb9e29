using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Idioms;

/// <summary>What a sheet gets from its idioms beside the right answer: words, pages, places, and formulas of its own in their gaps.</summary>
public sealed class IdiomLawTests
{
    private const string Field = ". . . / . li . / jc . la";

    [Fact]
    public void A_refusal_has_the_words_of_the_idiom_and_the_page_of_the_law()
    {
        Sheet sheet = With("laws", "{cite: book 2, binds: lay, idiom: never next to what clashes, clash: clash}");

        var refused = Assert.IsType<Ruling.Illegal>(Ruling.On(On(sheet, Field), "lay ash jug on B1").Ruling);

        Breach breach = Assert.Single(refused.Breaches);
        Assert.Equal(
            ("tried", "It must not lie next to anything with which clash holds.", "Rulebook, page 2", "A1 shows a copper jug"),
            (breach.Clause, breach.Says, breach.CiteInWords, breach.Because));
    }

    [Fact]
    public void The_meaning_of_a_law_leads_to_the_idiom_and_to_the_sheet()
    {
        Law law = With("laws", "{cite: book 2, binds: lay, idiom: only next to, near: jug}").Laws.Single(l => l.Name == "tried");

        LawBody body = law.Bodies[0][0];
        Origin origin = body.Demands[0].Truth.Origin;
        Assert.Equal(("only next to", "only-next-to.yaml", "sheet.yaml"), (body.Idiom!.Name, origin.At.Source.Name, origin.Through[0].Source.Name));
    }

    [Theory]
    [InlineData("B1", "illegal")]
    [InlineData("B3", "legal")]
    public void What_a_law_gives_may_speak_of_the_choices(string spot, string verdict)
    {
        Sheet sheet = With("laws", "{cite: book 2, binds: lay, idiom: only so many, of: ware in my field, at most: order of tier of spot}");

        Assert.Equal(verdict, Ruling.On(On(sheet, ". . . / . . . / jc . la"), $"lay ash jug on {spot}").Ruling!.Verdict);
    }

    [Theory]
    [InlineData("{cite: book 3, idiom: alone in its line, of: lamp, along: tiers, alone: count(x in my field where x is not empty)}", 6)]
    [InlineData("{cite: book 3, idiom: neighbours of a kind, of: lamp, sees: lamp, points: 2 + count(x in my field where any(n in neighbours of x where n is empty))}", 0)]
    [InlineData("{cite: book 3, idiom: the lowest counts, of: [lamps in my field, count(x in my field where x shows a jug)], points: count(my sticks)}", 4)]
    public void A_formula_in_a_gap_goes_through_things_of_its_own(string clause, int points)
    {
        Sheet sheet = With("score", clause);

        Assert.Equal(points, Tally.Of(On(sheet, Field), 0).Lines.Single(l => l.Clause == "tried").Points.Certain);
    }

    [Fact]
    public void The_library_tells_what_an_idiom_says_by_the_names_of_its_gaps()
    {
        Idiom idiom = BenchGame.Idioms.Find("full lines")!;

        Assert.Equal(("Each full ‹along› scores ‹points› points.", IdiomUseKind.Score), (idiom.InNames, idiom.Kind));
    }

    private static Sheet With(string section, string clause) =>
        Game.Of(BenchGame.SheetText.Replace($"\n{section}:\n", $"\n{section}:\n  tried: {clause}\n", StringComparison.Ordinal));

    private static Position On(Sheet sheet, string field) => Game.Position(sheet, BenchGame.PositionWith(field, [], []));
}
