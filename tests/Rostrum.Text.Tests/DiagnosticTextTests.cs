using Rostrum.Testing;
using Rostrum.Text.Tests.Outline;

namespace Rostrum.Text.Tests;

/// <summary>Problems as a terminal shows them.</summary>
public sealed class DiagnosticTextTests
{
    [Fact]
    public void Problems_of_a_sheet_look_as_approved()
    {
        Reading reading = Reading.Of("game:Nine Stones\npieces:\n  stone: &x 9\n  stick: {count 4}\n  stone: 8\nturn: first: lay a stone on an empty space of the board, then draw a card from the deck\n\tthen pay\n");

        Snapshots.Match(string.Join("\n\n", reading.Problems.Select(p => DiagnosticText.Render(p, 80))), "sheet");
    }

    [Theory]
    [InlineData("a: 😀 石 *b", 8, "         ^")]
    [InlineData("\ta", 1, "    ^")]
    [InlineData("ab", 2, "  ^")]
    public void Caret_stands_below_the_words_in_columns(string content, int at, string carets)
    {
        string[] lines = DiagnosticText.Render(Problem(content, at, 1), 80).Split('\n');

        Assert.StartsWith($"      | {carets} Do it.", lines[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(57)]
    [InlineData(200)]
    public void Shown_lines_are_never_wider_than_the_terminal(int width)
    {
        string content = string.Concat(Enumerable.Repeat("石 stone ", 3000));
        string rendered = DiagnosticText.Render(Problem(content, 9000, 30), width);

        Assert.All(rendered.Split('\n')[1..], l => Assert.InRange(l.Sum(c => c == '石' ? 2 : 1), 1, Math.Max(width, DiagnosticText.LeastWidth)));
        Assert.Contains("^^^^", rendered, StringComparison.Ordinal);
    }

    [Fact]
    public void Signs_that_move_the_cursor_are_shown_as_dots()
    {
        string rendered = DiagnosticText.Render(Problem("a\u001B[2J\u202Eb", 0, 1) with { Message = "\u001B[1mx" }, 80);

        Assert.Contains("| a·[2J·b", rendered, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', rendered);
    }

    [Fact]
    public void Place_in_another_file_is_named_with_its_file()
    {
        Diagnostic problem = Problem("abc", 0, 1) with { Related = [new(new SourceText("other.yaml", "x").Whole, "first here"), new(new SourceText("y", "").Whole, "and here")] };

        Assert.Contains("(first here: other.yaml(1,1))", DiagnosticText.Render(problem, 120), StringComparison.Ordinal);
    }

    private static Diagnostic Problem(string content, int start, int length) =>
        new("ROS0001", Severity.Error, new SourceText("sheet.yaml", content).Span(start, length), "Something is odd.", "Do it.");

    [Fact]
    public void Lines_to_add_stand_below_each_other_as_they_are_written()
    {
        var problem = new Diagnostic("ROS0001", Severity.Error, new SourceText("a.yaml", "apples").Whole, "Something.", "Add a place:\nplaces:\n  apples: {heap of: apple, of: each player}\nThen ask again.");

        string[] lines = DiagnosticText.Render(problem, 40).Split('\n');

        Assert.Equal(["      | Add a place:", "      | places:", "      |   apples: {heap of: apple, of: each player}", "      | Then ask again."], lines[3..]);
    }
}
