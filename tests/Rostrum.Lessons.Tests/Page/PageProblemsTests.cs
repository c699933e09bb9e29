using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

public sealed class PageProblemsTests
{
    [Fact]
    public void Sample_page_is_sound() => Assert.Empty(PageProblems.Of(SamplePage.Whole));

    [Fact]
    public void Value_without_its_slip_is_found() =>
        Assert.Equal(
            ["'34' points to the slip 'E9/total', which is not on the page."],
            PageProblems.Of(SamplePage.Whole with { Topics = [new("A", "a", [SamplePage.Says("[34](E9/total wrong)")])] }));

    [Fact]
    public void Opening_slip_that_is_missing_is_found() =>
        Assert.Equal(["The opening slip 'E9' is not on the page."], PageProblems.Of(SamplePage.Whole with { OpeningSlipId = "E9" }));

    [Fact]
    public void Sum_that_does_not_come_out_is_found() =>
        Assert.Equal(
            ["The lines of slip 'a' add up to 3, not to 4.", "In slip 'a' the parts of 'bowls' add up to 2, not to 3."],
            PageProblems.Of(Empty with { Slips = [new("a", "A", new SlipAnswer.Total(4), SlipBasis.Exact) { Lines = [new("bowls", 3) { Because = [new("one", 2)] }] }] }));

    [Fact]
    public void Name_used_twice_is_found() =>
        Assert.Equal(
            ["Two topics are called 'a'."],
            PageProblems.Of(Empty with { Topics = [new("A", "a", []), new("B", "a", [])] }));

    [Fact]
    public void Writer_refuses_a_page_with_a_problem() =>
        Assert.Throws<ArgumentException>(() => LessonPageWriter.Write(Empty with { OpeningSlipId = "none" }, PageAssets.None));

    private static LessonPage Empty => new("Game", "Lesson", "Presenter", "today", "first printing");
}
