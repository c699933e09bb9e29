using Rostrum.Lessons.Claims;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Claims;

/// <summary>Statements about Kiln Night against its sheet; the numbers are those of the rulebook's worked examples.</summary>
public class ClaimCheckTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");

    [Theory]
    [InlineData("[35](tally:E1/total)")]
    [InlineData("[thirty-five](tally:E1/total)")]
    [InlineData("[minus 2](tally:E1/shards)")]
    [InlineData("[64](<tally:E3/total if growing on>)")]
    [InlineData("[not allowed](<rule:copper-ash-near/place copper jug on B2>)")]
    [InlineData("[may](<rule:copper-ash/place copper jug on B2>)")]
    [InlineData("[yes](<rule:E1/Commission 12 is met>)")]
    [InlineData("[9](<value:worth of Commission 12>)")]
    [InlineData("[6](<value:worth of Commission 11>)")]
    [InlineData("[10](<value:run points of 4>)")]
    [InlineData("[72](fact:ware)")]
    public void A_right_statement_is_right(string statement) => Assert.Equal(ClaimStatus.Right, Check(statement).Status);

    [Theory]
    [InlineData("[36](tally:E1/total)", "ROS0601", "36")]
    [InlineData("[five](tally:E1/jugs)", "ROS0601", "five")]
    [InlineData("[allowed](<rule:copper-ash-near/place copper jug on B2>)", "ROS0601", "allowed")]
    [InlineData("[7](<value:worth of Commission 11>)", "ROS0601", "7")]
    [InlineData("[73](fact:ware)", "ROS0601", "73")]
    [InlineData("[some](tally:E1/total)", "ROS0607", "some")]
    public void A_wrong_statement_is_a_finding_at_its_words(string statement, string id, string words)
    {
        CheckedClaim claim = Check(statement);

        Assert.Equal((ClaimStatus.Wrong, id, words), (claim.Status, claim.Problem!.Id, claim.Problem.At.Text));
    }

    [Fact]
    public void A_wrong_total_is_told_with_the_lines_that_make_the_right_one() =>
        Assert.Contains("bowls 5, jugs 4, plates 9", Check("[36](tally:E1/total)").Problem!.Hint, StringComparison.Ordinal);

    [Fact]
    public void A_wrong_ruling_is_told_with_its_page() =>
        Assert.Contains("page 5", Check("[allowed](<rule:copper-ash-near/place copper jug on B2>)").Problem!.Hint, StringComparison.Ordinal);

    [Theory]
    [InlineData("[59](tally:E3/total)")]
    [InlineData("[10](<value:run points of 5>)")]
    [InlineData("[yes](<rule:glaze-not-given/Commission 7 is met>)")]
    public void What_readings_or_missing_facts_leave_open_cannot_be_settled(string statement) => Assert.Equal(ClaimStatus.Unsettled, Check(statement).Status);

    [Theory]
    [InlineData("[35](tally:E11/total)", "E1")]
    [InlineData("[35](tally:E1/bowl)", "bowls")]
    [InlineData("[64](<tally:E3/total if growing>)", "growing on")]
    [InlineData("[72](fact:wares)", "ware")]
    [InlineData("[no](<rule:E1/Comission 12 is met>)", "Commission 12")]
    public void An_unknown_name_is_told_with_the_nearest(string statement, string near)
    {
        CheckedClaim claim = Check(statement);

        Assert.Equal(ClaimStatus.Unasked, claim.Status);
        Assert.Contains(near, claim.Problem!.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_statement_of_the_shipped_lesson_is_right()
    {
        LessonReport report = LessonCheck.Of(Kiln)!;

        Assert.Empty(report.Problems);
        Assert.All(report.Claims, c => Assert.Equal(ClaimStatus.Right, c.Status));
        Assert.InRange(report.Lesson.Topics.Length, 9, 13);
        Assert.InRange(report.Lesson.Topics.Sum(t => t.Words), 900, 1500);
    }

    [Theory]
    [InlineData("[four](fcat:bays)", "ROS0603")]
    [InlineData("[four](Fact:bays)", "ROS0603")]
    [InlineData("[two](fact:sticks to start)", "ROS0608")]
    public void A_target_that_was_meant_to_be_checked_is_never_taken_for_plain_words(string statement, string id) =>
        Assert.Equal((ClaimStatus.Unasked, id), (Check(statement).Status, Check(statement).Problem!.Id));

    [Theory]
    [InlineData("**[35](tally:E1/total)**")]
    [InlineData("a list:\n\n- that says\n  - inside: [35](tally:E1/total)")]
    public void A_statement_is_checked_wherever_it_is_said(string statement) => Assert.Equal(ClaimStatus.Right, Check(statement).Status);

    private static CheckedClaim Check(string statement) =>
        Assert.Single(LessonCheck.Of(Kiln, new SourceText("lesson.md", $"## A\n\nIt is {statement}.\n")).Claims);
}
