using Rostrum.Rulings.Positions;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>An edit changes one cell or one heap and leaves every other byte alone.</summary>
public sealed class PositionFileTests
{
    private const string Text = """
        says: A night.   # two shelves matter
        seat 1:
          chamber: |
            4 .  .   .  .  .
            3 .  .   .  .  .
            2 ba ja! .  .  .
            1 pa pi  .  .  bc
            / A  B   C  D  E

          sticks:   4     # as dealt
          shards: [iron jug,  ash bowl]
        drying: [2 ware, nothing, [stick, iron jug]]
        """;

    [Theory]
    [InlineData("A2", "ja", "    2 ba ja! .", "    2 ja ja! .")]
    [InlineData("B2", "ja", "ja! .", "ja  .")]
    [InlineData("C2", "ja", "ja! .  .  .", "ja! ja .  .")]
    [InlineData("C1", "la!", "pi  .  .  bc", "pi  la! .  bc")]
    [InlineData("E1", "la!", "bc\n", "la!\n")]
    [InlineData("A1", ".", "1 pa pi", "1 .  pi")]
    public void A_cell_is_changed_in_place(string space, string cell, string before, string after)
    {
        Read other = Read.Fine($"seat 1:\n  chamber: |\n    4 {cell} . . . .\n    3 . . . . .\n    2 . . . . .\n    1 . . . . .\n    / A B C D E\n");

        string? edited = Edited(space, other.On("A4"));

        Assert.Equal(Text.Replace(before, after, StringComparison.Ordinal), edited);
        Assert.Equal(other.On("A4"), Read.Fine(edited!).On(space));
    }

    [Fact]
    public void A_heap_and_a_slot_are_changed_in_place()
    {
        PositionFile file = Read.Fine(Text).File;

        string? sticks = file.WithPlace(1, 0, 0, Stack.Empty);
        string? slot = file.WithPlace(0, 0, 1, Stack.NotGiven);

        Assert.Equal(Text.Replace("sticks:   4 ", "sticks:   [] ", StringComparison.Ordinal), sticks);
        Assert.Equal(Text.Replace("nothing", "?", StringComparison.Ordinal), slot);
    }

    [Fact]
    public void A_listed_space_is_changed_in_place()
    {
        PositionFile file = Read.Fine("seat 1:\n  chamber: {A1: iron jug, B1: bowl}\n").File;

        string? edited = file.WithSpace(0, 0, SpaceIndex("B1"), Stack.NotGiven);

        Assert.Equal("seat 1:\n  chamber: {A1: iron jug, B1: ?}\n", edited);
    }

    [Fact]
    public void What_the_file_does_not_write_is_not_edited() =>
        Assert.Null(Read.Fine("seat 1:\n  sticks: 4\n").File.WithSpace(0, 0, 3, Stack.Empty));

    private static string? Edited(string space, Stack content) => Read.Fine(Text).File.WithSpace(0, 0, SpaceIndex(space), content);

    private static int SpaceIndex(string space) => TestSheet.Round.Boards[0].Spaces.Single(s => s.Name.Name == space).Name.Index;
}
