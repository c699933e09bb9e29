using Rostrum.Play.Counting;
using Rostrum.Play.Tests.Outside;

namespace Rostrum.Play.Tests.Course;

/// <summary>A state remembers of what was done exactly what the sheet asks: two positions that differ by nothing else are one.</summary>
public sealed class MemoryTests
{
    // Worked out by hand. Both players have called before the first turn, the second one last; then each may call, or not. There are two lines after a turn and
    // four after two. Who called last is seat 1 or 2. What a player chose last is always that player, so it tells nothing apart.
    [Theory]
    [InlineData("count(my coins)", 1, 1)]
    [InlineData("1 if who of my last call is me otherwise 0", 1, 1)]
    [InlineData("1 if who of last call is me otherwise 0", 2, 2)]
    [InlineData("1 if who of last call is who of my last call otherwise 0", 2, 2)]
    [InlineData("1 if call was done this turn otherwise 0", 1, 1)]
    [InlineData("1 if call was done the turn before otherwise 0", 2, 2)]
    [InlineData("1 if call was done this round otherwise 0", 2, 1)]
    [InlineData("1 if call was done the round before otherwise 0", 2, 2)]
    [InlineData("1 if call was done the round before by me otherwise 0", 2, 4)]
    [InlineData("1 if call was done before otherwise 0", 1, 1)]
    public void Nothing_is_remembered_but_what_is_asked(string points, int afterOne, int afterTwo)
    {
        PlyCount[] plies = [.. Table(points).Count(2)];

        Assert.Equal([(UInt128)1, 2, 4], plies.Select(p => p.Lines));
        Assert.Equal([1, afterOne, afterTwo], plies.Select(p => p.Distinct!.Value));
    }

    [Fact]
    public void Asking_only_what_I_did_last_tells_fewer_positions_apart_than_asking_what_anybody_did() =>
        Assert.True(Distinct("1 if who of my last call is me otherwise 0") < Distinct("1 if who of last call is me otherwise 0"));

    private static long Distinct(string points) => Table(points).Count(3).Last().Distinct!.Value;

    private static GameTable Table(string points) => TableOf.Written($$$"""
        rule sheet: 1
        game: Calls
        says: Who was done first is called last. What was done the turn before is only said.
        players: 2
        pieces: {coin: {count: 2}}
        places: {coins: {heap of: coin, of: each player}}
        set-up: {do: [each player: call]}
        turn: {do: [may: call]}
        actions:
          call: {phrase: call (who), choose: {who: a player where it is me}, do: nothing}
        score:
          calls: {points: {{{points}}}}
        """);
}
