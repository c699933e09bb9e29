using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>Limits: how many things a hand or heap holds, and how often a power is used.</summary>
public sealed class LimitTests
{
    private static readonly Sheet Sheet = Game.Of("""
        players: 1
        pieces: {shell: {count: 9}}
        places: {pouch: {heap of: shell, holds: 2 shells}, beach: {heap of: shell}}
        actions:
          gather: {do: move a shell from beach to pouch}
          throw: {do: move a shell from pouch to beach}
        laws: {never: {binds: throw, needs: 1 is 2}}
        powers: {strong arm: {lifts: never, limit: once a game}}
        """);

    [Theory]
    [InlineData(1, "legal")]
    [InlineData(2, "illegal")]
    public void A_full_heap_takes_nothing_more(int shells, string verdict) => Assert.Equal(verdict, On(shells, "gather").Verdict);

    [Fact]
    public void The_refusal_names_the_heap()
    {
        Breach breach = Assert.Single(Assert.IsType<Ruling.Illegal>(On(2, "gather")).Breaches);

        Assert.Equal(("pouch", "'pouch' holds 2 things at the most.", "afterwards 3 things lie in the pouch"), (breach.Clause, breach.Says, breach.Because));
    }

    [Fact]
    public void A_power_that_may_be_used_up_is_not_promised() =>
        Assert.Equal(["how often 'strong arm' was used before"], Assert.IsType<Ruling.Unsettled>(On(1, "throw")).NotGiven);

    private static Ruling On(int shells, string action) => Ruling.On(Game.Position(Sheet, $"pouch: {shells} shells\nbeach: 5 shells\nturn of: seat 1\n"), action).Ruling!;
}
