using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using Rostrum.Cli.Arguments;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Lessons;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum review</c>: the captions of a recording held against the rules.</summary>
internal sealed class ReviewCommand : GameCommand
{
    private readonly Argument<string> _captions;
    private readonly Option<string> _output;
    private readonly Option<bool> _corrections;
    private readonly Option<bool> _topics;

    /// <summary>The command at a desk.</summary>
    public ReviewCommand(Desk desk)
        : this(
            desk,
            new Argument<string>("captions") { Description = "The captions of the recording: a file '.vtt' or '.srt', made by a machine or by hand." },
            OutputOption.Optional("FOLDER", "Writes the lines to publish into this folder: corrections.txt, pinned-comment.txt, chapters.txt."),
            new Option<bool>("--corrections") { Description = "Shows the lines of corrections for the description of the video." },
            new Option<bool>("--topics") { Description = "Shows the topics as filmed, each with its time, its words and its pace." })
    {
    }

    private ReviewCommand(Desk desk, Argument<string> captions, Option<string> output, Option<bool> corrections, Option<bool> topics)
        : base(
            desk,
            "review",
            "Listens to a recording by its captions: numbers that the rules give otherwise, rows passed over, rules never said, wrong names. Few findings, and certain ones; what may be right is a list of its own.",
            "rostrum review games/kiln-night games/kiln-night/recording.vtt",
            captions, output, corrections, topics) => (_captions, _output, _corrections, _topics) = (captions, output, corrections, topics);

    /// <inheritdoc />
    protected override int Answer(GameRequest request, ParseResult parse)
    {
        SheetReading sheet = request.Game.Sheet();
        string path = parse.GetRequiredValue(_captions);
        if (!sheet.IsSound)
        {
            return Report(sheet.Problems, request.Json);
        }

        if (parse.GetValue(_output) is { Length: 0 })
        {
            return Desk.Refuse("Say where the files go: '-o' names no folder.");
        }

        Found<CaptionFile> captions = CaptionFinder.Open(request.Game, path);
        if (captions.Value is null)
        {
            return Desk.Refuse(captions.Complaint!);
        }

        Lesson? lesson = LessonOf(request.Game);
        RecordingReport report = RecordingReview.Of(request.Game, captions.Value, lesson);
        Desk.Stop.ThrowIfCancellationRequested();
        TellCaptions(captions.Value, request.Json);
        return report.Refused is null ? Tell(request, parse, path, report, lesson) : Refuse(request, path, report);
    }

    private int Tell(GameRequest request, ParseResult parse, string path, RecordingReport report, Lesson? lesson)
    {
        string game = request.Game.Sheet().Sheet!.Game;
        string corrections = CorrectionLines.Write(ReviewCorrections.Of(report));
        ImmutableArray<string> files = parse.GetValue(_output) is { } folder ? Write(folder, corrections, ReviewCorrections.PinnedComment(report, lesson, game), report.Topics) : [];
        if (request.Json)
        {
            Desk.Write(ReviewReport.Of(game, path, report, corrections, files), r => r.ReviewReport);
        }
        else
        {
            Show(report, parse, corrections);
            if (files.Length > 0)
            {
                Desk.Tell($"Written: {Prose.And(files)}");
            }
        }

        return report.Certain.IsEmpty ? ExitCode.Fine : ExitCode.Findings;
    }

    private void Show(RecordingReport report, ParseResult parse, string corrections)
    {
        string topics = parse.GetValue(_topics) ? ReviewScreen.Topics(report.Topics) : "";
        string lines = parse.GetValue(_corrections) && corrections.Length > 0 ? $"\n{corrections}" : "";
        string found = ReviewScreen.Of(report);
        Desk.Write((found + topics + lines).TrimStart('\n'));
        if (found.Length + topics.Length + lines.Length > 0)
        {
            Desk.Tell("");
        }

        foreach (string line in ReviewScreen.Summary(report))
        {
            Desk.Tell(line);
        }
    }

    private int Refuse(GameRequest request, string path, RecordingReport report)
    {
        if (request.Json)
        {
            Desk.Write(ReviewReport.Of(request.Game.Sheet().Sheet!.Game, path, report, "", []), r => r.ReviewReport);
        }

        Desk.Say($"'{path}' is not held against the rules. {report.Refused}");
        return ExitCode.WrongUsage;
    }

    // A file without content is written only over an older one, which would tell what is no longer so.
    private ImmutableArray<string> Write(string folder, string corrections, string comment, FilmedTopics topics)
    {
        string chapters = topics.NoChapters is null ? ChapterLines.Write(topics.Chapters) : "";
        if (topics.NoChapters is { } why)
        {
            Desk.Say($"no chapters are written. {why}");
        }

        (string Path, string Content)[] files = [.. new[] { ("corrections.txt", corrections), ("pinned-comment.txt", comment), ("chapters.txt", chapters) }
            .Select(f => (Path: Path.Combine(folder, f.Item1), Content: f.Item2))
            .Where(f => f.Content.Length > 0 || File.Exists(f.Path))];
        foreach ((string path, string content) in files)
        {
            Desk.Stop.ThrowIfCancellationRequested();
            AtomicFile.Write(path, Encoding.UTF8.GetBytes(content));
        }

        return [.. files.Select(f => f.Path)];
    }

    private Lesson? LessonOf(Game game)
    {
        FolderReading reading = game.Folder.Read(LessonCheck.FileName);
        if (reading.Text is { } text && LessonReader.Read(text, new DiagnosticBag()) is { Topics.Length: > 0 } lesson)
        {
            return lesson;
        }

        if (reading.Refusal != FolderRefusal.Missing)
        {
            string why = reading.Text is null ? RefusalWords.Told(reading.Refusal, LessonCheck.FileName) : $"'{LessonCheck.FileName}' holds no topic that can be read.";
            Desk.Say($"{why} The recording is held against the sheet alone.");
        }

        return null;
    }

    // What is odd about the file is told in a line each: it does not keep anybody from listening.
    private void TellCaptions(CaptionFile captions, bool json)
    {
        foreach (Diagnostic problem in json ? [] : captions.Problems)
        {
            Desk.Say($"{problem.Id} in line {problem.At.StartPosition.Line} of the captions: {problem.Message}");
        }
    }
}
