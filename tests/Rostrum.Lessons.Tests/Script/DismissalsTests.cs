using Rostrum.Lessons.Findings;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Script;

/// <summary>What the presenter looked at and lets stand.</summary>
public sealed class DismissalsTests
{
    private const string Smashed = "If it can stand nowhere, it is smashed, and you\nkeep it as a shard.";

    [Fact]
    public void A_dismissed_finding_is_told_no_more_and_kept_with_its_note()
    {
        ScriptReport script = Check("ROS0611:\n  smash:\n    because: I show it: the camera sees it break.\n").Script;

        Assert.Empty(script.Findings);
        Assert.Equal(("smash", "I show it: the camera sees it break."), (Assert.Single(script.Dismissed).Finding.Concerns, script.Dismissed[0].Dismissal.Because));
    }

    [Fact]
    public void A_dismissal_outlives_moved_paragraphs()
    {
        string moved = RightLessons.Text("kiln-night").Replace(Smashed, "", StringComparison.Ordinal).Replace("## The aim\n", "## A word first\n\nThis will be fun.\n\n## The aim\n", StringComparison.Ordinal);

        Assert.Single(RightLessons.Check(With("ROS0611:\n  Smash: As I said.\n"), moved).Script.Dismissed);
    }

    [Fact]
    public void A_dismissal_of_nothing_is_listed()
    {
        ScriptFinding finding = Assert.Single(Check("ROS0611:\n  smash: It breaks.\n  lamps: Old.\n").Script.Findings);

        Assert.Equal(("ROS0621", "lamps", "dismissed.yaml"), (finding.Problem.Id, finding.Problem.At.Text, finding.Problem.At.Source.Name));
    }

    [Theory]
    [InlineData("ROS0611:\n  smash:\n", "'smash' lets something stand and does not say why.")]
    [InlineData("ROS0611: smash\n", "'ROS0611' lets something stand and does not say why.")]
    [InlineData("ROS0601:\n  smash: No.\n", "'ROS0601' is no finding that can be dismissed.")]
    public void A_dismissal_that_says_too_little_is_told(string file, string message) =>
        Assert.Equal(("ROS0622", message), Assert.Single(Check(file).Problems.Select(p => (p.Id, p.Message))));

    private static LessonReport Check(string dismissed) => RightLessons.Check(With(dismissed), RightLessons.Text("kiln-night").Replace(Smashed, "", StringComparison.Ordinal));

    private static Game With(string dismissed) => new(ShippedGames.Folder("games/kiln-night", (Dismissals.FileName, dismissed)), ShippedGames.Idioms);
}
