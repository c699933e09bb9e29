using Rostrum.Lessons.Review;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>What is reckoned aloud has to come out, whatever the game is.</summary>
public sealed class ReckoningTests
{
    [Theory]
    [InlineData("seven columns of six, that's seven times six, so 36 spaces", 36, 42)]
    [InlineData("four times seven is twenty-six cards out of the pack", 26, 28)]
    [InlineData("there are twelve pits and four in each, that's fifty-two", 52, 48)]
    [InlineData("it is the third, the fifth, the ninth and the twelfth", 5, 6)]
    [InlineData("at bell number three, then six, eight and twelve", 8, 9)]
    [InlineData("cards with 1, 2, 3, 4, 5, 7 on them", 7, 6)]
    public void Number_that_does_not_come_out_is_told_with_the_right_one(string said, long heard, long right)
    {
        ReckonedNumber wrong = Assert.Single(Of(said).Found, f => !f.IsRight);

        Assert.Equal((heard, right), (Statements.Spoken(said)[wrong.At].Size, wrong.Right));
    }

    [Theory]
    [InlineData("that's seven times six, so 42 spaces")]
    [InlineData("twelve pits and four in each makes 48")]
    [InlineData("at bell number three, six, nine and twelve")]
    [InlineData("I rolled it four times. Six dice are too many.")]
    [InlineData("two dice showed 1, 2, 4, 5")]
    [InlineData("we played three times in two weeks and 30 people came")]
    [InlineData("five times four, no, let me begin with the bays, there are 3")]
    public void What_comes_out_or_is_no_sum_is_not_told(string said) => Assert.DoesNotContain(Of(said).Found, f => !f.IsRight);

    [Fact]
    public void Row_of_a_table_of_the_sheet_may_go_up_as_it_likes()
    {
        var plank = new Reckoning(Statements.Spoken("a way scores 1, 3, 5, 8"), Statements.Of(ShippedGames.Open("plank-road")).All);

        Assert.Empty(plank.Found);
    }

    private static Reckoning Of(string said) => new(Statements.Spoken(said), []);
}
