using CsCheck;
using Rostrum.Testing;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Tests.Outside;
using Rostrum.Rulings.Verdicts;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>What is answered about a table with facts taken away holds for every way to give them again.</summary>
public sealed class KilnNightBlankTests
{
    // One shelf and up to three glazes: at most 25 times 27 completions.
    private static readonly Gen<(HandScore Table, KilnNightBlank[] Blanks)> Few =
        from table in Gen.OneOf(KilnNightCases.Tables, KilnNightCases.LawfulTables)
        from shelf in Gen.Int[0, 19].Array[0, 1]
        from glazes in Gen.Int[0, 19].HashSet[0, 3]
        select (table, (KilnNightBlank[])
        [
            .. shelf.Select(s => KilnNightBlanks.ContentOf(table, s)),
            .. glazes.Except(shelf).Select(s => KilnNightBlanks.GlazeOf(table, s)).OfType<KilnNightBlank>(),
        ]);

    // Up to six facts of every sort; completions are drawn, not listed.
    private static readonly Gen<(HandScore Table, KilnNightBlank[] Blanks, int[][] Draws)> Many =
        from table in KilnNightCases.Tables
        from shelves in Gen.Int[0, 19].HashSet[0, 2]
        from glazes in Gen.Int[0, 19].HashSet[0, 2]
        from sticks in Gen.Bool
        from shards in Gen.Bool
        from draws in Gen.Int[0, 1_000].Array[6].Array[12]
        select (table, (KilnNightBlank[])
        [
            .. shelves.Select(s => KilnNightBlanks.ContentOf(table, s)),
            .. glazes.Except(shelves).Select(s => KilnNightBlanks.GlazeOf(table, s)).OfType<KilnNightBlank>(),
            .. sticks ? [KilnNightBlanks.Sticks(table)] : Array.Empty<KilnNightBlank>(),
            .. shards ? [KilnNightBlanks.Shards(table)] : Array.Empty<KilnNightBlank>(),
        ], draws);

    private static readonly Gen<string> Questions = Gen.OneOf(
        Gen.Int[1, 20].Select(n => $"Commission {n} is met"),
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[0, 9], (form, glaze, shelf) => $"place {"ash iron copper".Split(' ')[glaze]} {"bowl jug plate lamp".Split(' ')[form]} on {(char)('A' + (shelf / 2))}{1 + (shelf % 2)}"),
        Gen.Int[0, 8].Select(i => $"burn to swap {(char)('A' + (i % 5))}1 and {(char)('A' + ((i + (i < 5 ? 0 : 1)) % 5))}{(i < 5 ? 2 : 1)}"));

    [Fact]
    public void Every_line_of_every_completion_lies_within_the_bounds_and_some_completion_meets_each_bound() =>
        Few.Hold(
            (table, blanks) =>
            {
                Tally blanked = Tally.Of(Without(table, blanks), 0);
                Tally[] all = [.. KilnNightBlanks.Completions(Without(table, blanks), blanks).Select(p => Tally.Of(p, 0))];

                Assert.Equal(Bounds(all.Select(t => t.Total)), blanked.Total);
                Assert.Equal(blanked.Lines.Select((_, i) => Bounds(all.Select(t => t.Lines[i].Points))), blanked.Lines.Select(l => l.Points));
            },
            cases: 15);

    [Fact]
    public void A_question_is_answered_where_and_only_where_all_completions_answer_alike() =>
        Gen.Select(Few, Questions, (few, question) => (few.Table, few.Blanks, question)).Hold(
            (table, blanks, question) =>
            {
                string[] all = [.. KilnNightBlanks.Completions(Without(table, blanks), blanks).Select(p => Verdict(p, question)).Distinct()];

                Assert.Equal(all.Length == 1 ? all[0] : "unsettled", Verdict(Without(table, blanks), question));
            },
            cases: 120);

    [Fact]
    public void Completions_of_up_to_six_facts_of_every_sort_lie_within_what_was_answered() =>
        Gen.Select(Many, Questions, (many, question) => (many.Table, many.Blanks, many.Draws, question)).Hold(
            (table, blanks, draws, question) =>
            {
                Tally blanked = Tally.Of(Without(table, blanks), 0);
                string answer = Verdict(Without(table, blanks), question);

                Assert.All(draws.Select(d => Drawn(table, blanks, d)), full =>
                {
                    Tally tally = Tally.Of(full, 0);
                    Assert.True(Holds(blanked.Total, tally.Total), $"{tally.Total.InWords} is not {blanked.Total.InWords}");
                    Assert.All(tally.Lines.Zip(blanked.Lines), l => Assert.True(Holds(l.Second.Points, l.First.Points), $"{l.First.Clause} {l.First.Points.InWords} is not {l.Second.Points.InWords}"));
                    Assert.Contains(answer, new[] { "unsettled", Verdict(full, question) });
                });
            },
            cases: 60);

    // B1 is free, and then it may not be chosen; or it holds a ware, and then that would stand on the lamp.
    [Fact]
    public void A_choice_and_a_law_that_are_open_each_alone_are_asked_together()
    {
        Position position = Game.Position(Game.Sheet("kiln-night"), """
            seat 1:
              chamber: |
                4 . . . . .
                3 . . . . .
                2 . li . . .
                1 . ? . . .
                / A B C D E
              sticks: 2
            turn of: seat 1
            """);

        Ruling.Illegal ruling = Assert.IsType<Ruling.Illegal>(Ruling.On(position, "burn to swap B1 and B2").Ruling);

        Assert.Equal(["burn", "still lawful"], ruling.Breaches.Select(b => b.Clause));
    }

    private static Position Without(HandScore table, KilnNightBlank[] blanks) => blanks.Aggregate(KilnNightCases.Position(table), (p, b) => b.Taken(p));

    private static Position Drawn(HandScore table, KilnNightBlank[] blanks, int[] draws) =>
        blanks.Zip(draws).Aggregate(Without(table, blanks), (p, b) => b.First.Fillings[b.Second % b.First.Fillings.Length](p));

    private static Points Bounds(IEnumerable<Points> all) => new(all.Min(p => p.Low), all.Max(p => p.High));

    private static bool Holds(Points bounds, Points points) => (bounds.Low ?? long.MinValue) <= points.Low && points.High <= (bounds.High ?? long.MaxValue);

    private static string Verdict(Position position, string words) => Ruling.On(position, words).Ruling!.Verdict;
}
