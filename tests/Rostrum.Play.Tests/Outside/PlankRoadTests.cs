using Rostrum.Play.Counting;

namespace Rostrum.Play.Tests.Outside;

/// <summary>The demo game Plank Road against the check values that came with its rules.</summary>
/// <remarks>Source of every number: our own enumeration in the game's description, by two programs in two languages that agree and share no code with this one.</remarks>
public sealed class PlankRoadTests
{
    [Fact]
    public void Lines_of_play_and_positions_of_three_turns() => Counted(3);

    [Fact]
    [Trait("Category", "Slow")]
    public void Lines_of_play_and_positions_of_four_turns() => Counted(4);

    private static void Counted(int turns)
    {
        PlyCount[] counts = [.. TableOf.Shipped("plank-road").Count(turns)];

        Assert.Equal(new long[] { 1, 30, 552, 9_312, 92_568 }.Take(turns + 1), counts.Select(c => (long)c.Lines));
        Assert.Equal(new long[] { 1, 30, 552, 7_368, 48_744 }.Take(turns + 1), counts.Select(c => c.Distinct!.Value));
    }
}
