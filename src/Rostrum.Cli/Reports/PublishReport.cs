using Rostrum.Lessons.Published;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>publish --json</c> writes.</summary>
/// <param name="Format">Always 1.</param>
/// <param name="File">The file that was written, in the game's folder.</param>
/// <param name="Title">The video.</param>
/// <param name="Date">The day up to which it is right.</param>
/// <param name="Rules">How many rules are remembered.</param>
/// <param name="Sentences">How many sentences with values are remembered.</param>
/// <param name="Estimated">How many of their times are estimates.</param>
/// <param name="Unheard">How many sentences with values stand in the script and not in the captions, and are not remembered.</param>
/// <param name="Videos">How many videos the file holds now.</param>
internal sealed record PublishReport(int Format, string File, string Title, string Date, int Rules, int Sentences, int Estimated, int Unheard, int Videos)
{
    /// <summary>The report of a video.</summary>
    public static PublishReport Of(PublishedVideo video, int videos) => new(
        ReportJson.Format,
        PublishedFile.FileName,
        video.Title,
        video.Date,
        video.Rules.Length,
        video.Sentences.Length,
        video.Rules.SelectMany(r => r.Times).Count(t => t.IsEstimated) + video.Sentences.Count(s => s.Time.IsEstimated),
        video.Unheard,
        videos);
}
