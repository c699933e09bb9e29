using System.Text.RegularExpressions;
using Rostrum.Lessons.Pack;
using Rostrum.Rulings.Games;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Pack;

/// <summary><c>docs/pack.md</c> tells of every file and of every key of the teleprompter.</summary>
public sealed partial class PackDocumentationTests
{
    private static readonly string Page = TestFiles.Read("docs/pack.md");

    [Fact]
    public void Page_tells_of_every_file()
    {
        Game kiln = ShippedGames.Open("kiln-night");
        string[] told = [.. Regex.Matches(Page[..Page.IndexOf("\n## ", StringComparison.Ordinal)], "`([^`\n]+)`").Select(m => m.Groups[1].Value)];

        Assert.All(LessonPack.Of(kiln, LessonCheck.Of(kiln)!).Select(f => f.Name), n => Assert.Contains(told, t => t == n || (t.EndsWith('/') && n.StartsWith(t, StringComparison.Ordinal))));
    }

    [Fact]
    public void Page_tells_of_every_key_of_the_teleprompter() =>
        Assert.All(["Space", "← →", "↑ ↓", "Page Up, Page Down", "Home", "+ −", "M", "L"], k => Assert.Contains($"\n| {k} | ", Page, StringComparison.Ordinal));

    [Fact]
    public void Page_is_in_plain_words() => Assert.Empty(BannedWords.In(Code().Replace(Page, "")));

    [GeneratedRegex("`[^`\n]+`")]
    private static partial Regex Code();
}
