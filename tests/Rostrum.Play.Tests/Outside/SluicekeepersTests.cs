using Rostrum.Play.Solving;

namespace Rostrum.Play.Tests.Outside;

/// <summary>The demo game Sluicekeepers solved, against the check values that came with its rules.</summary>
/// <remarks>
/// Source of every number: our own exhaustive solution in the game's description, by a program that shares no code with this one. That program told positions
/// apart by basins, player to move and turns played, and counted those after the last turn too. The sheet keeps what was taken, and nobody decides after the
/// last turn: so the positions are counted with what is taken put into the box and night falling one turn later, which changes nothing before.
/// </remarks>
public sealed class SluicekeepersTests
{
    private static readonly (string, string)[] TwoStones = [("count: 18", "count: 12"), ("move 3 stones from supply", "move 2 stones from supply")];

    private static readonly (string, string)[] OnlyBasins =
    [
        ("from goal to my catch", "from goal to box"),
        ("if: round number is 12\n    checked: after each round", "if: turn number is 25\n    checked: after each turn"),
    ];

    [Fact]
    public void With_three_stones_in_each_basin_the_first_keeper_wins_by_8() => Assert.Equal(8, Solved().Value);

    [Fact]
    public void With_three_stones_in_each_basin_there_are_12_096_positions() => Assert.Equal(12_096, Solved(OnlyBasins).Positions);

    [Fact]
    public void With_two_stones_in_each_basin_neither_is_ahead() => Assert.Equal(0, Solved(TwoStones).Value);

    [Fact]
    public void With_two_stones_in_each_basin_there_are_23_897_positions() => Assert.Equal(23_897, Solved([.. TwoStones, .. OnlyBasins]).Positions);

    private static SolvedGame Solved(params (string, string)[] changes) => TableOf.Changed("sluicekeepers", null, changes).BestDifference();
}
