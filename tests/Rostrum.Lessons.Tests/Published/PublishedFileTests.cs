using Rostrum.Lessons.Published;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Published;

/// <summary>The file of published videos: what is written is read again, and what stands in it stays.</summary>
public sealed class PublishedFileTests
{
    private const string Remarked = "# mine\nformat: 1\nvideos:\n  - title: One   # not a remark\n    date: 2026-01-02\n    # a remark of mine\n\n# the end\n";

    [Fact]
    public void What_is_written_is_read_again()
    {
        PublishedVideo video = PublishedBench.Video() with { Address = "https://example.org/a#b", Title = "\"Kiln\" Night: part 1" };

        PublishedVideo read = Assert.Single(Read(PublishedWriter.With(null, video)!).Videos);

        Assert.Equal((video.Title, video.Date, video.Address, video.Length, video.PrintingAt), (read.Title, read.Date, read.Address, read.Length, read.PrintingAt));
        Assert.Equal(video.Sources, read.Sources);
        Assert.Equal(video.Rules.Select(Words), read.Rules.Select(Words));
        Assert.Equal(video.Sentences, read.Sentences);
        Assert.Equal(video.Positions, read.Positions);
        Assert.Equal(video.NotSaid, read.NotSaid);
    }

    [Theory]
    [InlineData(Remarked)]
    [InlineData("format: 1\nvideos:\n- title: One\n  date: 2026-01-02")]
    [InlineData("format: 1\n")]
    [InlineData("format: 1\nvideos:\n")]
    [InlineData("format: 1\r\nvideos:\r\n  - title: One\r\n    date: 2026-01-02\r\n")]
    public void A_video_is_added_behind_everything_that_stands_there(string content)
    {
        string with = PublishedWriter.With(new SourceText(PublishedFile.FileName, content), PublishedBench.Named)!;

        Assert.StartsWith(content, with, StringComparison.Ordinal);
        Assert.Equal(PublishedBench.Named.InWords, Read(with).Videos[^1].InWords);
        Assert.Equal(Read(content).Videos.Length + 1, Read(with).Videos.Length);
        Assert.Equal(content.Contains('\r', StringComparison.Ordinal), with.EndsWith("\r\n", StringComparison.Ordinal));
    }

    [Fact]
    public void A_video_is_added_before_what_stands_behind_the_list()
    {
        const string Content = "videos:\n  - title: One\n    date: 2026-01-02\nformat: 1\n";

        string with = PublishedWriter.With(new SourceText(PublishedFile.FileName, Content), PublishedBench.Named)!;

        Assert.Equal(2, Read(with).Videos.Length);
        Assert.EndsWith("\nformat: 1\n", with, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("format: 1\nvideos: [{title: One, date: 2026-01-02}]\n")]
    [InlineData("format: 2\nvideos:\n")]
    [InlineData("format: 1\nvideos:\n  - title: One\n")]
    public void Nothing_is_added_to_what_cannot_be_read_or_has_no_place_for_it(string content) =>
        Assert.Null(PublishedWriter.With(new SourceText(PublishedFile.FileName, content), PublishedBench.Named));

    [Fact]
    public void Signs_that_nobody_sees_are_not_written()
    {
        PublishedVideo read = Read(PublishedWriter.With(null, PublishedBench.Named with { Address = "a\u200Bb\nc\u0007" })!).Videos[0];

        Assert.Equal("ab c", read.Address);
    }

    [Fact]
    public void Another_format_is_told_in_one_sentence_and_not_read()
    {
        PublishedFile file = Read("format: 7\nvideos:\n  - moon: 1\n");

        Assert.Empty(file.Videos);
        Assert.Equal("This file has the format '7', and this version of Rostrum reads format 1.", Assert.Single(file.Problems).Message);
    }

    [Fact]
    public void A_damaged_file_is_read_as_far_as_it_goes()
    {
        string whole = PublishedWriter.With(null, PublishedBench.Video())!;
        for (int length = 0; length < whole.Length; length += 997)
        {
            PublishedFile cut = Read(whole[..length]);
            PublishedFile torn = Read(whole[length..]);
            PublishedFile holed = Read(whole.Remove(length, Math.Min(301, whole.Length - length)));

            Assert.True(new[] { cut, torn, holed }.All(f => f.Videos.Length <= 1));
            Assert.True(length == 0 || torn.HasErrors);
        }
    }

    private static string Words(PublishedRule rule) => $"{rule.Clause}|{string.Join(',', rule.Times)}|{rule.Says}|{rule.Means}|{rule.Status}|{rule.Cite}";

    private static PublishedFile Read(string content) => PublishedFile.Read(new SourceText(PublishedFile.FileName, content));
}
