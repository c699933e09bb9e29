using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>The board that a message draws can be pasted as it is.</summary>
public sealed class BlankBoardTests
{
    [Theory]
    [InlineData("", "  field: |\n    3 . . .\n    2 . . .\n    1 . . .\n    / A B C")]
    [InlineData("variants: [Steps]\n", "  field: |\n    3 - - .\n    2 - . .\n    1 . . .\n    / A B C")]
    public void A_drawing_without_labels_is_answered_with_the_board(string head, string board)
    {
        string hint = BenchGame.Read($"{head}seat 1:\n  field: |\n    . . .\n    . . .\n    . . .\n").Problems.Single(p => p.Id == "ROS0225").Hint;

        Assert.EndsWith("\n" + board, hint, StringComparison.Ordinal);
        Assert.Empty(BenchGame.Read($"{head}seat 1:\n{board}\n").Problems.Select(p => p.Message));
    }
}
