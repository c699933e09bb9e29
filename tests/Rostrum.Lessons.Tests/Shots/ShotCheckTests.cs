using Rostrum.Lessons.Shots;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Shots;

public class ShotCheckTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");

    [Theory]
    [InlineData("![A](position:E1)", null)]
    [InlineData("![A](<position:E1 show bowls>)", "bowls")]
    [InlineData("- In a list: ![A](<position:E1 show bowls>)", "bowls")]
    public void A_shot_can_be_drawn(string shot, string? clause)
    {
        CheckedShot found = Check(shot);

        Assert.Equal(("E1", clause), (found.PositionName, found.Clause));
        Assert.NotNull(found.Position);
        Assert.Null(found.Problem);
    }

    [Theory]
    [InlineData("![A](position:E11)", "ROS0604", Severity.Error, "E1")]
    [InlineData("![A](<position:E1 show bowl>)", "ROS0604", Severity.Error, "bowls")]
    [InlineData("![A](<position:E1 shwo bowls>)", "ROS0605", Severity.Error, "position:E1 show CLAUSE")]
    [InlineData("![A](positon:E1)", "ROS0605", Severity.Error, "position:NAME")]
    [InlineData("![A](position:E1 show bowls)", "ROS0608", Severity.Error, "<")]
    [InlineData("![A](box.jpg)", "ROS0605", Severity.Warning, "position:NAME")]
    public void A_shot_that_cannot_be_drawn_is_told_and_has_no_position(string shot, string id, Severity severity, string hint)
    {
        CheckedShot found = Check(shot);

        Assert.Null(found.Position);
        Assert.Equal((id, severity), (found.Problem!.Id, found.Problem.Severity));
        Assert.Contains(hint, found.Problem.Hint, StringComparison.Ordinal);
    }

    private static CheckedShot Check(string shot) => Assert.Single(LessonCheck.Of(Kiln, new SourceText("lesson.md", $"## A\n\n{shot}\n")).Shots);
}
