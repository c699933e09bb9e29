using Rostrum.Play.Layout;
using Rostrum.Play.Tests.Outside;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Course;

/// <summary>Steps that stand in a column of cards.</summary>
public sealed class CardStepsTests
{
    private const string SheetText = """
        rule sheet: 1
        game: Errands
        players: 1
        pieces: {coin: {count: 9}}
        cards: {errand: {file: errands.csv, columns: {does: steps}}}
        places: {list: {heap of: errand, starts: errands}, purse: {heap of: coin}, done: {heap of: errand}}
        turn: run
        actions:
          run: {phrase: run (what), choose: {what: an errand in list}, do: [do does of what, move what to done]}
        """;

    [Fact]
    public void A_cell_of_a_table_file_has_its_steps_in_one_line()
    {
        var driver = new Driver(GameTable.Of(Read("name,does\nBaker,move a coin from supply to purse; move a coin from supply to purse\nIdle,\n").Sheet!));

        driver.Choose(driver.NextDecision(), "run Baker");
        driver.Choose(driver.NextDecision(), "run Idle");
        driver.Next();

        Holder purse = driver.State.Layout.Holders.Single(h => h.Place.Name == "purse");
        Assert.Equal(2, driver.State.Count(purse.First));
    }

    [Fact]
    public void A_mistake_in_a_cell_is_told_where_it_stands()
    {
        Diagnostic problem = Assert.Single(Read("name,does\nBaker,move a coin from supply to purse; mope a coin\n").Problems, p => p.Severity == Severity.Error);

        Assert.Equal("errands.csv(2,41)", problem.At.ToString());
    }

    [Fact]
    public void Only_a_column_of_steps_is_done() =>
        Assert.Contains(Read("name,does\nBaker,\n", SheetText.Replace("do does of what", "do what", StringComparison.Ordinal)).Problems, p => p.Severity == Severity.Error);

    [Fact]
    public void A_card_that_does_its_own_action_is_refused()
    {
        GameTable Make() => GameTable.Of(Read("name,does\nBaker,run Baker\n").Sheet!);

        Assert.Throws<NotPlayableException>(Make);
    }

    private static SheetReading Read(string errands, string sheet = SheetText) =>
        SheetReader.Read(GameFolder.InMemory("errands", (SheetReader.FileName, sheet), ("errands.csv", errands)), ShippedGames.Idioms, []);
}
