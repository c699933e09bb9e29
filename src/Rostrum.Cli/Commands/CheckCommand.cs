using System.CommandLine;
using Rostrum.Cli.Checking;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Lessons.Published;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum check</c>: every problem in the sheet, the positions and the lesson of a game, or every published minute that is wrong now.</summary>
internal sealed class CheckCommand : GameCommand
{
    private readonly Option<bool> _published;

    /// <summary>The command at a desk.</summary>
    public CheckCommand(Desk desk)
        : this(desk, new Option<bool>("--published") { Description = $"In place of that, which minutes of the videos in '{PublishedFile.FileName}' the sheet of today makes wrong, with lines that put them right." })
    {
    }

    private CheckCommand(Desk desk, Option<bool> published)
        : base(desk, "check", "Finds every problem in a game: its sheet, alone and with each variant, its positions and what they expect, the numbers of its lesson.", "rostrum check games/kiln-night", published) => _published = published;

    /// <inheritdoc />
    protected override int Answer(GameRequest request, ParseResult parse)
    {
        if (parse.GetValue(_published))
        {
            return Published(request);
        }

        CheckResult result = new GameCheck(request.Game, Desk.Stop).Check(request.IdiomProblems, request.Variants);
        if (request.Json)
        {
            Desk.Write(CheckReport.Of(result), r => r.CheckReport);
        }
        else
        {
            Desk.Write(ProblemScreen.Of(result.Problems));
            Desk.Tell(result.Summary);
        }

        return result.Errors > 0 ? ExitCode.Findings : ExitCode.Fine;
    }

    private int Published(GameRequest request)
    {
        SheetReading sheet = request.Game.Sheet();
        if (!sheet.IsSound)
        {
            return Report(sheet.Problems, request.Json);
        }

        FolderReading reading = request.Game.Folder.Read(PublishedFile.FileName);
        if (reading.Text is null && reading.Refusal != FolderRefusal.Missing)
        {
            return Desk.Refuse($"{RefusalWords.Told(reading.Refusal, PublishedFile.FileName)} {RefusalWords.WayOut(reading.Refusal)}");
        }

        PublishedFile file = reading.Text is { } text ? PublishedFile.Read(text) : new PublishedFile([], []);
        return file.HasErrors ? Report(file.Problems, request.Json) : Published(request, sheet.Sheet!.Game, PublishedCheck.Of(request.Game, file, Desk.Stop), reading.Text is not null);
    }

    private int Published(GameRequest request, string game, PublishedReport report, bool hasFile)
    {
        if (request.Json)
        {
            Desk.Write(PublishedCheckReport.Of(game, report), r => r.PublishedCheckReport);
        }
        else
        {
            Desk.Write(PublishedScreen.Of(report));
            Desk.Tell(hasFile ? $"{game}: {PublishedScreen.Summary(report)}" : $"{game}: there is no '{PublishedFile.FileName}'; 'rostrum publish' writes it when a video goes out");
            if (report.Findings.Any(f => f.Time.IsEstimated))
            {
                Desk.Tell("Times with 'about' are worked out from the words of the lesson: look at the video before you copy the lines.");
            }
        }

        return report.Findings.IsEmpty ? ExitCode.Fine : ExitCode.Findings;
    }
}
