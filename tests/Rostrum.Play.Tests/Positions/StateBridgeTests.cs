using CsCheck;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Play.Tests.Agreement;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Play.Tests.Positions;

/// <summary>States told as positions and read again.</summary>
public sealed class StateBridgeTests
{
    public static TheoryData<string> Games => [.. ShippedGames.Names];

    [Theory]
    [MemberData(nameof(Games))]
    public void A_state_that_is_told_and_read_again_looks_the_same(string game)
    {
        var layout = TableLayout.Of(SheetReader.Read(ShippedGames.Folder($"games/{game}"), ShippedGames.Idioms, []).Sheet!, 2);

        RandomTable.Seeds.Hold(
            seed =>
            {
                TableState state = RandomTable.Of(layout, seed);
                TableState again = Fresh(layout);
                StateReader.Read(layout, StateWriter.Write(state, "told", 0, 0), again, 0);

                Assert.Equal(Looks(state), Looks(again));
                Assert.Equal(state.Numbers, again.Numbers);
            },
            cases: 50);
    }

    [Fact]
    public void What_is_not_given_is_told() =>
        Assert.Equal(
            "To play on, everything must be given: nobody says what lies on A3 of seat 2's field.",
            Refusal(BenchGame.Position));

    [Fact]
    public void More_things_than_there_are_are_told()
    {
        Position position = StateWriter.Write(RandomTable.Of(Layout, 1), "told", 0, 0);
        Thing stick = new(BenchGame.Position.Sheet.Kinds[1].Kind, [], null, Thing.Nobody, true);
        int heap = BenchGame.Position.Sheet.Places.ToList().FindIndex(p => p.Place.Name == "sticks");

        Assert.Equal("More things like the stick in your sticks lie on the table than there are.", Refusal(position.WithPlace(heap, 0, 0, new Stack([.. Enumerable.Repeat(stick, 31)]))));
    }

    private static TableLayout Layout { get; } = TableLayout.Of(BenchGame.Position.Sheet, 2);

    private static TableState Fresh(TableLayout layout) => new(layout, layout.MarkCount, 0);

    private static string Refusal(Position position) =>
        Assert.Throws<NotPlayableException>(() => StateReader.Read(Layout, position, Fresh(Layout), 0)).Message;

    // What lies in each spot of the boards and places, from below; of supplies nothing is told.
    private static IEnumerable<string> Looks(TableState state) =>
        from spot in Enumerable.Range(0, state.Layout.SupplyOf(-1).First)
        let things = Chain(state, spot)
        select $"{spot}: {string.Join(' ', state.Layout.SpotHolder[spot].IsOrdered ? things : things.Order())}";

    private static IEnumerable<int> Chain(TableState state, int spot)
    {
        for (int thing = state.Bottom(spot); thing != TableState.None; thing = state.Above(thing))
        {
            yield return state.LookCode(state.Layout.ThingOfFoot[thing]);
        }
    }
}
