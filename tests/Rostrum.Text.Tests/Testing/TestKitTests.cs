using Rostrum.Testing;

namespace Rostrum.Text.Tests.Testing;

/// <summary>The test kit itself: a checker that finds nothing would be worse than none.</summary>
public sealed class TestKitTests
{
    [Theory]
    [InlineData("This scalar is null.", 2)]
    [InlineData("Unexpected end: invalid tokens.", 3)]
    [InlineData("An illegal character stands here.", 1)]
    [InlineData("You must write it.", 1)]
    [InlineData("The word 'null' is not a name.", 0)]
    [InlineData("'it's a string' is a name, `parse` too.", 0)]
    [InlineData("The player's node.", 1)]
    [InlineData("Something is astonishing.", 0)]
    [InlineData("Indices: 3 indexes.", 1)]
    public void Banned_words_are_found_outside_quotes(string message, int found) => Assert.Equal(found, BannedWords.In(message).Count());

    [Fact]
    public void Every_banned_word_names_what_to_write_and_is_itself_found()
    {
        Assert.All(BannedWords.Instead.Values, v => Assert.Empty(BannedWords.In(v)));
        Assert.All(BannedWords.Instead.Keys, k => Assert.NotEmpty(BannedWords.In($"A {k} here.")));
    }

    [Theory]
    [InlineData("a\nb", "a\r\nb\n", null)]
    [InlineData("a\nb", "a\nc", "Line 2 was approved as\n  b\nand is now\n  c")]
    [InlineData("a", "a\nb", "Line 2 was approved as\n  (no line)\nand is now\n  b")]
    public void Snapshot_names_the_first_difference(string approved, string received, string? difference) =>
        Assert.Equal(difference, Snapshots.Difference(approved, received));

    [Fact]
    public void Snapshot_that_nobody_approved_fails_and_is_written_down()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        string stem = Path.Combine(folder, "SomeTests.one");

        SnapshotException refused = Assert.Throws<SnapshotException>(() => Snapshots.Check("x", stem, accept: false));
        Snapshots.Check("x", stem, accept: true);
        Snapshots.Check("x\n", stem, accept: false);

        Assert.StartsWith("Nothing is approved yet.", refused.Message, StringComparison.Ordinal);
        Assert.Equal(["SomeTests.one.approved.txt"], Directory.GetFiles(folder).Select(Path.GetFileName));
        Assert.Throws<SnapshotException>(() => Snapshots.Check("y", stem, accept: false));
        Assert.Equal("y\n", File.ReadAllText($"{stem}.received.txt"));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Page_is_read_into_title_words_and_examples()
    {
        DiagnosticPage page = DiagnosticPage.Parse("ROS0108", "# ROS0108: twice\n\nTwo lines.\n\n```outline wrong\na: 1\n\\u{9}a: 2\n```\n\n```csv right\n```\n");

        Assert.Equal(("ROS0108", "twice", "Two lines."), (page.Id, page.Title, page.Words));
        Assert.Equal([new("ROS0108", "outline", false, "a: 1\n\ta: 2"), new("ROS0108", "csv", true, "")], page.Examples);
    }

    [Theory]
    [InlineData("# ROS0109: twice\n")]
    [InlineData("Twice\n")]
    [InlineData("# ROS0108: twice\n\n```outline maybe\na\n```\n")]
    public void Page_of_another_form_is_refused(string page) => Assert.Throws<FormatException>(() => DiagnosticPage.Parse("ROS0108", page));
}
