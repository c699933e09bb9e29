using CsCheck;
using Rostrum.Testing;

namespace Rostrum.Text.Tests;

/// <summary>Lines, columns and spans.</summary>
public sealed class SourceTextTests
{
    public static TheoryData<string, int, int, int> Places => new()
    {
        { "", 0, 1, 1 }, { "ab", 2, 1, 3 }, { "ab\ncd", 2, 1, 3 }, { "ab\ncd", 3, 2, 1 }, { "ab\r\ncd", 4, 2, 1 }, { "ab\rcd", 3, 2, 1 }, { "a\n\nb", 2, 2, 1 },
        { "a\n", 2, 2, 1 }, { "😀b", 2, 1, 2 }, { "é石b", 2, 1, 3 }, { "ab", 99, 1, 3 }, { "ab", -5, 1, 1 }, { "a\tb", 2, 1, 3 },
    };

    [Theory]
    [MemberData(nameof(Places))]
    public void Offset_has_its_line_and_column(string content, int offset, int line, int column) =>
        Assert.Equal(new LinePosition(line, column), new SourceText("x", content).PositionOf(offset));

    [Fact]
    public void Lines_put_together_are_the_text() =>
        Gen.OneOf("a", "\n", "\r", "\r\n", "é", "😀").Array[0, 30].Select(string.Concat).Hold(content =>
        {
            var text = new SourceText("x", content);

            string joined = string.Concat(Enumerable.Range(0, text.LineCount).Select(i =>
                content[text.LineStart(i)..(i + 1 < text.LineCount ? text.LineStart(i + 1) : content.Length)]));

            Assert.Equal(content, joined);
            Assert.All(Enumerable.Range(0, text.LineCount), i => Assert.DoesNotContain('\n', text.Line(i)));
            Assert.All(Enumerable.Range(0, content.Length + 1), i => Assert.InRange(i, text.LineStart(text.LineIndexOf(i)), content.Length));
        });

    [Fact]
    public void Spans_are_cut_to_their_text()
    {
        var text = new SourceText("sheet.yaml", "one two\nthree");

        Assert.Equal("three", text.Span(8, 99).Text);
        Assert.Equal("", text.Span(99, 1).Text);
        Assert.Equal("two\nthree", text.Span(4, 3).To(text.Span(8, 5)).Text);
        Assert.Equal("wo", text.Span(4, 3).Part(1, 9).Text);
        Assert.Equal("sheet.yaml(2,1)", text.Span(8, 5).ToString());
        Assert.Equal(new LinePosition(2, 6), text.Span(8, 5).EndPosition);
    }

    [Fact]
    public void Span_of_another_text_lies_in_no_span()
    {
        SourceSpan span = new SourceText("x", "abc").Whole;

        Assert.True(span.Contains(span.Part(1, 1)));
        Assert.False(span.Part(1, 1).Contains(span));
        Assert.False(span.Contains(new SourceText("x", "abc").Whole));
    }
}
