using Rostrum.Cli.Reports;
using Rostrum.Lessons.Published;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows which published minutes are wrong now, the lines that put them right, and what changed besides.</summary>
internal static class PublishedScreen
{
    private const int Indent = 4;
    private const int AboutWidth = 30;

    /// <summary>Video by video; empty where nothing changed.</summary>
    public static string Of(PublishedReport report)
    {
        var paper = new Paper();
        foreach (PublishedVideo video in report.Videos)
        {
            PublishedFinding[] findings = [.. report.Findings.Where(f => ReferenceEquals(f.Video, video))];
            PublishedNote[] notes = [.. report.Notes.Where(n => ReferenceEquals(n.Video, video))];
            if (findings.Length + notes.Length > 0)
            {
                paper.Wrapped(video.Address.Length == 0 ? video.InWords : $"{video.InWords}, {video.Address}", 0);
                paper.Line();
                Findings(paper, findings, report.CorrectionsOf(video));
                Notes(paper, notes);
            }
        }

        return paper.ToString();
    }

    /// <summary>How the videos came out, in one line.</summary>
    public static string Summary(PublishedReport report)
    {
        int minutes = report.Findings.DistinctBy(f => (f.Video.InWords, f.Time.At)).Count();
        string videos = Prose.Count(report.Videos.Length, "published video", "published videos");
        string wrong = minutes == 0 ? "nothing said is wrong now" : Prose.Count(minutes, "moment is wrong now", "moments are wrong now");
        return report.Notes.IsEmpty ? $"{videos}: {wrong}" : $"{videos}: {wrong}, {Prose.Count(report.Notes.Length, "other change", "other changes")}";
    }

    private static void Findings(Paper paper, PublishedFinding[] findings, string corrections)
    {
        foreach (PublishedFinding finding in findings)
        {
            paper.Edges($"{finding.Time.InWords}  {finding.Clause}", finding.Cite);
            paper.Wrapped($"{(finding.IsValue ? "Said" : "Then")}: {finding.Then}", Indent, hanging: 6);
            paper.Wrapped($"Now: {finding.Now}", Indent, hanging: 6);
            if (finding.Because.Length > 0)
            {
                paper.Wrapped($"({finding.Because})", Indent);
            }

            paper.Line();
        }

        // Lines to be copied stay whole.
        foreach (string line in corrections.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            paper.Line(line);
        }

        if (corrections.Length > 0)
        {
            paper.Line();
        }
    }

    private static void Notes(Paper paper, PublishedNote[] notes)
    {
        if (notes.Length == 0)
        {
            return;
        }

        paper.Line("Changed as well, and nothing that was said is wrong by it:");
        foreach (PublishedNote note in notes.Take(ProblemScreen.Most))
        {
            paper.Pair(note.About, note.Line is { } line ? $"{note.Says} A line for the description: {PublishedItem.LineOf(line)}" : note.Says, AboutWidth);
        }

        if (notes.Length > ProblemScreen.Most)
        {
            paper.Line($"… and {notes.Length - ProblemScreen.Most} more (all with --json)");
        }

        paper.Line();
    }
}
