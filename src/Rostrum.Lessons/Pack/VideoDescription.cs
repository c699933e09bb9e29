using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Pack;

/// <summary>Writes what goes below a video: what it teaches, its chapters, corrections, sources and credits. Plain lines, for any platform.</summary>
/// <remarks>What stands in square brackets is for the presenter to fill in or to take away; nothing else is left to do.</remarks>
internal static class VideoDescription
{
    /// <summary>How many characters a platform takes: 5,000, the limit of YouTube.</summary>
    /// <remarks>From memory.</remarks>
    public const int LongestCharacters = 5000;

    private const string Estimates = "[The times are estimates from the script. Put those of the video in their place, then take this line away.]";

    private const string AskDisclosure =
        "[Say here how you came by your copy and whether anybody pays for this video, such as: I bought my copy myself, and nobody pays for this video. Where your law asks for other words, or for words in the video as well, those decide.]";

    /// <summary>The description, with <c>\n</c> as line ends.</summary>
    /// <param name="page">The lesson's page, for title, sources and day.</param>
    /// <param name="disclosure">In the presenter's words; empty where the lesson does not say.</param>
    /// <param name="chapters">The chapters.</param>
    /// <param name="corrections">What is put right; may be empty.</param>
    public static string Write(LessonPage page, string disclosure, FilmChapters chapters, ImmutableArray<Correction> corrections)
    {
        var text = new StringBuilder();
        Part(text, [OneLine.Of(page.Title)]);
        Part(text, [OneLine.Of(page.Lead)]);
        Part(text, [Dated(page)]);
        Part(text, ["Chapters", chapters.Times == ChapterTimes.Estimated ? Estimates : "", ChapterLines.Write(chapters.List).TrimEnd('\n')]);

        // Behind the chapters, whose readers stop here.
        Part(text, [CorrectionLines.Write(corrections).TrimEnd('\n')]);
        Part(text, page.Sources.IsEmpty ? [] : ["Sources", .. page.Sources.Select(Source)]);
        Part(text, [page.Presenter.Length > 0 ? $"Taught by {OneLine.Of(page.Presenter)}." : "", Unofficial(page), disclosure.Length > 0 ? OneLine.Of(disclosure) : AskDisclosure]);
        return text.ToString();
    }

    /// <summary>What is to be said about its length; null where it is short enough.</summary>
    public static string? Remark(string description) => new StringInfo(description).LengthInTextElements is > LongestCharacters and var length
        ? string.Create(CultureInfo.InvariantCulture, $"description.txt has {length} characters, and some platforms take no more than {LongestCharacters}: shorten it before you publish.")
        : null;

    private static string Dated(LessonPage page) => string.Join(' ', new[]
    {
        page.Printing.Length > 0 ? $"Follows the {OneLine.Of(page.Printing)}." : "",
        page.CorrectAsOf.Length > 0 ? $"Correct as of {OneLine.Of(page.CorrectAsOf)}." : "",
    }.Where(w => w.Length > 0));

    private static string Source(PageSource source)
    {
        string name = string.Join(", ", new[] { source.Title, source.Printing }.Where(w => w.Length > 0));
        return source.Pages.Length == 0 ? name : $"{name}: {(source.Pages.All(char.IsDigit) ? "page" : "pages")} {source.Pages}";
    }

    // The words of the page tell readers who look at a page; here they stand below a video.
    private static string Unofficial(LessonPage page) =>
        $"Unofficial: a lesson on {OneLine.Of(page.Game)} in the teacher's own words and drawings. The rulebook and its publisher decide.";

    private static void Part(StringBuilder text, IEnumerable<string> lines)
    {
        string[] said = [.. lines.Where(l => l.Length > 0)];
        if (said.Length > 0)
        {
            text.Append(text.Length > 0 ? "\n" : "").AppendJoin('\n', said).Append('\n');
        }
    }
}
