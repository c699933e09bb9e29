using System.Collections.Immutable;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Scripts;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Review;

/// <summary>What a recording that is out already is put right with.</summary>
public static class ReviewCorrections
{
    /// <summary>One for each certain finding that has a time, in the order of the times; two of one sentence at one time are one.</summary>
    /// <param name="report">The review.</param>
    public static ImmutableArray<Correction> Of(RecordingReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return [.. report.Certain.Where(f => f.Time is not null).Select(f => new Correction(f.Time!.Value > FilmTime.Latest ? FilmTime.Latest : f.Time.Value, Words(f))).Distinct()];
    }

    /// <summary>The words for a comment below the film: the corrections, then the rules that were never said.</summary>
    /// <param name="report">The review.</param>
    /// <param name="lesson">Has the title and the day up to which it is correct; null where there is none.</param>
    /// <param name="game">The name of the game, for a recording without a lesson.</param>
    /// <returns>Lines with a line end each; empty where there is nothing to say.</returns>
    public static string PinnedComment(RecordingReport report, Lesson? lesson, string game)
    {
        string title = lesson?.Title ?? game;
        string corrections = CorrectionLines.PinnedComment(title, Of(report), lesson?.CorrectAsOf ?? "");
        string[] unsaid = [.. report.Certain.Where(f => f.Kind == FindingKind.NeverSaid).Select(f => $"- {f.Sheet.TrimEnd('.')}{Page(f)}.\n")];
        string heading = corrections.Length == 0 ? $"Not said in “{title}”:\n\n" : "\nNot said in the film:\n\n";
        return unsaid.Length == 0 ? corrections : $"{corrections}{heading}{string.Concat(unsaid)}";
    }

    private static string Words(Finding finding)
    {
        string sentence = finding.Sheet.TrimEnd('.');
        string not = finding switch
        {
            { Heard: { } heard, Right: { } right } when sentence.EndsWith($": {right}", StringComparison.Ordinal) => $", not {heard}",
            { Heard: { } heard, Right: { } right } => $": {right}, not {heard}",
            _ => "",
        };
        return $"{sentence}{not}{Page(finding)}.";
    }

    private static string Page(Finding finding) => finding.Cite is null ? "" : $" ({Citation.Tell(finding.Cite)})";
}
