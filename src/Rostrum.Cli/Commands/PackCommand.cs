using System.Collections.Immutable;
using System.CommandLine;
using Rostrum.Cli.Arguments;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Lessons;
using Rostrum.Lessons.Pack;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum pack</c>: everything that is published with a lesson.</summary>
internal sealed class PackCommand : ScriptCommand
{
    private readonly Option<string> _output;

    /// <summary>The command at a desk.</summary>
    public PackCommand(Desk desk)
        : this(desk, OutputOption.Named("FOLDER", "Where the files go: a folder of its own, which is made; files of the same name are replaced."))
    {
    }

    private PackCommand(Desk desk, Option<string> output)
        : base(desk, "pack", "Makes everything that is published with the lesson: its page, the player aid, a picture of each shot.", "rostrum pack games/kiln-night -o kiln-night-pack", output) => _output = output;

    /// <inheritdoc />
    protected override int Answer(GameRequest request, LessonReport report, ParseResult parse)
    {
        string folder = parse.GetRequiredValue(_output);
        if (folder.Length == 0 || File.Exists(Path.Combine(folder, SheetReader.FileName)))
        {
            return Desk.Refuse(folder.Length == 0
                ? "Say where the pack goes: '-o' names no folder."
                : $"'{folder}' is the folder of a game, and a pack is published: it would mix with what is only yours. Name a folder of its own, such as '{Path.Combine(folder, "pack")}'.");
        }

        ImmutableArray<PackFile> files = LessonPack.Of(request.Game, report);
        Write(folder, files);
        Tell(folder, files, report, request.Json);
        return Findings(report);
    }

    private void Write(string folder, ImmutableArray<PackFile> files)
    {
        foreach (PackFile file in files)
        {
            Desk.Stop.ThrowIfCancellationRequested();
            AtomicFile.Write(Path.Combine(folder, file.Name), file.Bytes.AsSpan());
        }
    }

    private void Tell(string folder, ImmutableArray<PackFile> files, LessonReport report, bool json)
    {
        if (json)
        {
            Desk.Write(PackReport.Of(folder, files, report.Problems), r => r.PackReport);
            return;
        }

        Desk.Write(PackScreen.Of(files));
        Desk.Tell($"{Prose.Count(files.Length, "file", "files")} in {folder}");
    }

    // The page marks every statement and shot that is wrong; whoever publishes it hears of it here.
    private int Findings(LessonReport report)
    {
        int errors = report.Problems.Count(p => p.Severity == Severity.Error);
        if (errors == 0)
        {
            TellPictures(report.Shots.Count(s => s.Problem is not null));
            return ExitCode.Fine;
        }

        Desk.Say($"the lesson has {Prose.Count(errors, "error", "errors")}, marked in its page; 'rostrum lesson' lists them.");
        return ExitCode.Findings;
    }

    private void TellPictures(int missing)
    {
        if (missing > 0)
        {
            Desk.Say($"{Prose.Count(missing, "picture is", "pictures are")} no shot of a position, and marked in the page; 'rostrum lesson' lists them.");
        }
    }
}
