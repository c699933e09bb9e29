using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Pack;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Pack;

/// <summary>What is wrong with a lesson stands in its page, at the words that are wrong.</summary>
public class MarksTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");

    [Theory]
    [InlineData("[36](tally:E1/total)", "36", "The lesson says '36', and the sheet says 35.")]
    [InlineData("[five](fact:byas)", "five", "There is no fact 'byas'.")]
    [InlineData("[five](fcat:bays)", "five", "'fcat:bays' does not say what to check.")]
    [InlineData("[two](fact:sticks to start)", "two", "'fact:sticks to start' holds a blank, so this is no link and nothing is checked.")]
    [InlineData("[two](fcat:sticks to start)", "two", "'fcat:sticks to start' holds a blank, so this is no link and nothing is checked.")]
    [InlineData("[two](Fact:sticks to start)", "two", "'Fact:sticks to start' holds a blank, so this is no link and nothing is checked.")]
    [InlineData("[3](<tally:E1 seat 9/total>)", "3", "There is no seat '9'.")]
    [InlineData("[3](<tally:E1 seat 0/total>)", "3", "There is no seat '0'.")]
    [InlineData("[3](<tally:E1 seat -2147483648/total>)", "3", "There is no position 'E1 seat -2147483648'.")]
    [InlineData("[35](tally:E11/total)", "35", "There is no position 'E11'.")]
    [InlineData("![The near miss](position:E11)", "The near miss", "No picture: There is no position 'E11'.")]
    [InlineData("![](position:E11)", "A shot", "No picture: There is no position 'E11'.")]
    [InlineData("![Bowls](<position:E1 show bowl>)", "Bowls", "No picture: There is no scoring clause 'bowl'.")]
    [InlineData("![Bowls](position:E1 show bowls)", "Bowls", "No picture: 'position:E1 show bowls' holds a blank, so this is no link and nothing is checked.")]
    [InlineData("![Bowls](positon:E1)", "Bowls", "No picture: 'positon:E1' is no shot of a position.")]
    public void Wrong_words_are_marked_with_what_is_wrong(string written, string words, string note) =>
        Assert.Equal([(words, $"({note})")], Marks(PageOf(written), "wrong"));

    [Fact]
    public void What_cannot_be_settled_is_marked_as_open() =>
        Assert.Equal("10", Assert.Single(Marks(PageOf("[10](<value:run points of 5>)"), "open")).Words);

    [Fact]
    public void A_number_that_needs_no_check_is_plain_words()
    {
        string page = PageOf("I say [seven](unchecked) of them.");

        Assert.Contains("I say seven of them.</p>", page, StringComparison.Ordinal);
        Assert.Empty(Marks(page, "wrong"));
    }

    [Fact]
    public void A_shot_that_cannot_be_drawn_is_no_picture_of_the_pack() =>
        Assert.DoesNotContain(Files("![Bowls](<position:E1 show bowl>)"), f => f.Name.StartsWith("pictures/", StringComparison.Ordinal));

    private static IEnumerable<(string Words, string Note)> Marks(string page, string tone) =>
        Regex.Matches(page, $"class=\"said {tone}\"[^>]*>([^<]*)</[au]> <span class=\"note {tone}\">([^<]*)</span>").Select(m => (m.Groups[1].Value, WebUtility.HtmlDecode(m.Groups[2].Value)));

    private static string PageOf(string written) => Encoding.UTF8.GetString(Files(written).First(f => f.Name == "lesson.html").Bytes.AsSpan());

    private static IEnumerable<PackFile> Files(string written) => LessonPack.Of(Kiln, LessonCheck.Of(Kiln, new SourceText("lesson.md", $"## A\n\nIt is. {written}\n")));
}
