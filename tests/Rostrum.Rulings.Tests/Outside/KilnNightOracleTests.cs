using CsCheck;
using Rostrum.Testing;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>What the sheet of Kiln Night answers, against a scorer and a judge written by hand from its rulebook.</summary>
public sealed class KilnNightOracleTests
{
    private static readonly (string Word, char Letter)[] Forms = [("bowl", 'b'), ("jug", 'j'), ("plate", 'p'), ("lamp", 'l')];
    private static readonly (string Word, char Letter)[] Glazes = [("ash", 'a'), ("iron", 'i'), ("copper", 'c')];

    [Fact]
    public void Every_line_and_every_open_reading_of_a_random_table_scores_what_page_8_says() =>
        KilnNightCases.Tables.Hold(
            table => Assert.Equal(
                [
                    .. table.Lines.Select(l => $"{l.Line} {l.Points}"),
                    $"total {table.Lines.Sum(l => l.Points)}",
                    .. Open("bowls", HandScore.BowlReadings.Select(r => (r.Name, table.Bowls(r.Runs)))),
                    .. Open("glaze", HandScore.GlazeReadings.Select(r => (r.Name, table.Glaze(r.Joins)))),
                ],
                Told(Tally.Of(KilnNightCases.Position(table), 0))),
            cases: 2_000);

    [Fact]
    public void Each_of_the_twenty_commissions_is_met_where_page_12_says_so() =>
        KilnNightCases.Tables.Hold(
            table =>
            {
                Position position = KilnNightCases.Position(table);
                int[] all = [.. Enumerable.Range(1, HandCommissions.Count)];

                Assert.Equal(all.Where(n => HandCommissions.IsShown(table.Chamber, n)), all.Where(n => Ruling.On(position, $"Commission {n} is met").Ruling is Ruling.Yes));
            },
            cases: 300);

    [Fact]
    public void Every_placing_on_a_random_table_breaks_the_laws_of_page_5_and_no_others() => Placings(40);

    [Fact]
    [Trait("Category", "Slow")]
    public void Every_placing_on_many_random_tables_breaks_the_laws_of_page_5_and_no_others() => Placings(400);

    [Fact]
    public void Every_swap_on_a_random_table_breaks_the_laws_of_page_4_and_no_others() => Swaps(40);

    [Fact]
    [Trait("Category", "Slow")]
    public void Every_swap_on_many_random_tables_breaks_the_laws_of_page_4_and_no_others() => Swaps(400);

    [Fact]
    public void The_random_tables_show_every_commission_and_open_every_reading()
    {
        var shown = new HashSet<int>();
        var open = new HashSet<string>();

        KilnNightCases.Tables.Hold(
            table =>
            {
                shown.UnionWith(Enumerable.Range(1, HandCommissions.Count).Where(n => HandCommissions.IsShown(table.Chamber, n)));
                open.UnionWith(HandScore.BowlReadings.Where(r => table.Bowls(r.Runs) != table.Bowls(HandScore.BowlReadings[0].Runs)).Select(r => r.Name));
                open.UnionWith(HandScore.GlazeReadings.Where(r => table.Glaze(r.Joins) != table.Glaze(joins: false)).Select(r => r.Name));
            },
            cases: 2_000);

        Assert.Equal(Enumerable.Range(1, HandCommissions.Count), shown.Order());
        Assert.Equal(["best split", "cracked joins", "growing on"], open.Order(StringComparer.Ordinal));
    }

    private static void Placings(int tables) =>
        Gen.OneOf(KilnNightCases.LawfulTables, KilnNightCases.LawfulTables, KilnNightCases.Tables).Hold(
            table =>
            {
                Position position = KilnNightCases.Position(table);
                foreach ((string form, string glaze, (int Bay, int Tier) shelf) in
                    from f in Forms
                    from g in Glazes
                    from s in table.Chamber.Shelves select (f.Word, g.Word, s))
                {
                    List<string> broken = table.Chamber.PlacingBreaks(new HandWare(form[0], glaze[0], false), shelf.Bay, shelf.Tier);

                    Assert.Equal(Verdict(broken), Verdict(position, $"place {glaze} {form} on {HandChamber.Name(shelf)}"));
                }
            },
            cases: tables);

    private static void Swaps(int tables) =>
        Gen.OneOf(KilnNightCases.LawfulTables, KilnNightCases.LawfulTables, KilnNightCases.Tables).Hold(
            table =>
            {
                Position position = KilnNightCases.Position(table);
                (int Bay, int Tier)[] filled = [.. table.Chamber.Shelves.Where(s => table.Chamber[s.Bay, s.Tier] is not null)];
                foreach (((int Bay, int Tier) one, (int Bay, int Tier) other) in filled.SelectMany((a, i) => filled.Skip(i + 1).Select(b => (a, b))))
                {
                    Assert.Equal(Verdict(table.Chamber.SwapBreaks(one, other, table.Sticks)), Verdict(position, $"burn to swap {HandChamber.Name(one)} and {HandChamber.Name(other)}"));
                }
            },
            cases: tables);

    private static IEnumerable<string> Told(Tally tally) =>
    [
        .. tally.Lines.Select(l => $"{l.Clause} {l.Points.Certain}"),
        $"total {tally.Total.Certain}",
        .. tally.Readings.Select(r => $"{r.Clause} {r.Name} {r.Points.Certain}").Order(StringComparer.Ordinal),
    ];

    // A choice that makes no difference is not told.
    private static IEnumerable<string> Open(string clause, IEnumerable<(string Name, int Points)> readings) =>
        readings.Select(r => r.Points).Distinct().Count() == 1 ? [] : readings.Select(r => $"{clause} {r.Name} {r.Points}").Order(StringComparer.Ordinal);

    private static string Verdict(List<string> broken) => broken.Count == 0 ? "legal" : $"illegal: {string.Join(", ", broken)}";

    private static string Verdict(Position position, string words) => Ruling.On(position, words).Ruling switch
    {
        Ruling.Illegal illegal => $"illegal: {string.Join(", ", illegal.Breaches.Select(b => b.Clause))}",
        { } ruling => ruling.Verdict,
        null => "not understood",
    };
}
