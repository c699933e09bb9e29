using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests.Outline;

/// <summary>Drawings on several lines behind <c>|</c>.</summary>
public sealed class LinesTests
{
    public static TheoryData<string, string, string> Cases => new()
    {
        { "a plain one", "a: |\n  2 . .\n  1 . #\n  / a b\nb: 1", "{a: ‹2 . .\n1 . #\n/ a b›, b: ‹1›}" },
        { "a first line that is deeper", "a: |\n    . .\n  1 . .\n", "{a: ‹  . .\n1 . .›}" },
        { "a blank line inside", "a: |\n  x\n\n  y\n\n\nb: 1", "{a: ‹x\n\ny›, b: ‹1›}" },
        { "a blank line first", "a: |\n\n  x\n", "{a: ‹x›}" },
        { "hashes and colons", "a: |\n  # . :\n  b: .\n", "{a: ‹# . :\nb: .›}" },
        { "in a list item", "a:\n  - b: |\n      x\n    c: 1\n  - |\n    y", "{a: [{b: ‹x›, c: ‹1›}, ‹y›]}" },
        { "none", "a: |\nb: 1", "{a: ‹›, b: ‹1›}" },
        { "blanks at line ends", "a: |\n  x . \n  y\n", "{a: ‹x .\ny›}" },
        { "windows line ends", "a: |\r\n  x\r\n  y\r\n", "{a: ‹x\ny›}" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Drawing_keeps_its_lines(string name, string content, string told)
    {
        Reading reading = Reading.Of(content);

        Assert.Equal((name, told), (name, reading.Told));
        Assert.Empty(reading.Problems);
    }

    [Fact]
    public void Every_character_of_a_drawing_has_its_true_place()
    {
        var drawing = (OutlineScalar)Reading.Of("a:\n  b: |\n    2 p\n    1 q\n").Tree.Entries[0].Value.Child("b");

        Assert.Equal("q", drawing.SpanOf(drawing.Text.IndexOf('q', StringComparison.Ordinal), 1).Text);
        Assert.Equal("1 q", drawing.SpanOf(4, 3).Text);
        Assert.Equal(new LinePosition(4, 7), drawing.SpanOf(6, 1).StartPosition);
    }
}
