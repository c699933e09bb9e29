using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Solving;

namespace Rostrum.Play.Tests.Outside;

/// <summary>The demo game Signal Terrace against the check values that came with its rules.</summary>
/// <remarks>Source of every number: worked out by hand and by our own enumeration in the game's description.</remarks>
public sealed class SignalTerraceTests
{
    private static readonly GameTable Table = TableOf.Shipped("signal-terrace", 2);

    [Fact]
    public void There_are_16_shifts_at_the_first_turn_and_14_later()
    {
        var driver = new Driver(Table);
        var counts = new List<int>();

        for (int turn = 0; turn < 6; turn++)
        {
            Moment.Decision shift = NextShift(driver);
            counts.Add(shift.Options.Length);
            driver.Choose(shift, driver.Words(shift)[3 * turn % 7]);
        }

        Assert.Equal([16, 14, 14, 14, 14, 14], counts);
    }

    [Theory]
    [InlineData("east", 8, true)]
    [InlineData("west", 8, true)]
    [InlineData("east", 6, false)]
    public void Two_rows_shifted_by_turns_come_round_after_four_times_each(string way, int turns, bool isSame)
    {
        var driver = new Driver(Table);
        Moment.Decision shift = NextShift(driver);
        int[] before = Looks(driver.State);

        for (int turn = 0; turn < turns; turn++)
        {
            driver.Choose(shift, $"shift row {1 + (turn % 2)} going {way}");
            shift = NextShift(driver);
        }

        Assert.Equal(isSame, Looks(driver.State).SequenceEqual(before));
    }

    [Fact]
    public void Each_of_63_063_000_arrangements_of_the_flags_is_equally_likely()
    {
        foreach (int seed in Enumerable.Range(0, 20))
        {
            Assert.Equal("1/63063000", ChanceOfSetUp(seed).ToString());
        }
    }

    [Theory]
    [InlineData("| r r / | r r", 9)]
    [InlineData("| r r r", 8)]
    [InlineData("| r / | r / | r", 8)]
    public void The_places_where_a_pattern_may_stand(string pattern, int places)
    {
        string picture = string.Join('\n', pattern.Split(" / ").Select(l => $"          {l}"));
        GameTable table = TableOf.Written($$"""
            rule sheet: 1
            game: Fits
            players: 1
            pieces:
              flag: {attributes: {colour: [red, white]}, count of each colour: {red: 16} }
            cards:
              order:
                columns: {picture: drawing}
                rows:
                  Sought:
                    picture: |
            {{picture}}
            signs: {r: red, w: white}
            boards:
              terrace: {squares: 4 across 4 up, neighbours: sides, holds: 1 flag}
            places:
              pile: {heap of: order}
            set-up:
              - for each s in terrace: move a flag from supply to s
              - move all orders from supply to pile
            turn:
              - move all orders from pile to pile
            score:
              fits: {points: "sum(c in pile, count(fits(picture of c, terrace)))"}
            """);

        var chances = TurnOutcomes.Of(table.Plan, Beginning.FirstTurn(table.Plan), Policies.AtRandom, Measures.Total(0));

        Assert.Equal([places], chances.Keys);
    }

    // The chance of one way to lay out all flags, found by drawing them; the orders do not count.
    private static Fraction ChanceOfSetUp(int seed)
    {
        var random = new Random(seed);
        var driver = new Driver(Table);
        Fraction chance = Fraction.One;
        while (driver.Next() is Moment.Chance { Event: DealEvent deal } && deal.To < 16)
        {
            int outcome = random.Next(deal.Weights.Length);
            chance *= Fraction.Of(deal.Weights[outcome]) / Fraction.Of(deal.Weights.Sum());
            driver.Choose(deal, outcome);
        }

        return chance;
    }

    // Nobody claims anything.
    private static Moment.Decision NextShift(Driver driver)
    {
        while (true)
        {
            Moment.Decision decision = driver.NextDecision();
            if (driver.Words(decision)[0].StartsWith("shift", StringComparison.Ordinal))
            {
                return decision;
            }

            driver.Choose(decision, "no");
        }
    }

    private static int[] Looks(TableState state) => [.. Enumerable.Range(0, 16).Select(s => state.LookCode(state.Top(s)))];
}
