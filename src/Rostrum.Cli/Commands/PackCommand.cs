using System.Collections.Immutable;
using System.CommandLine;
using Rostrum.Cli.Arguments;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Lessons;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Review;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum pack</c>: everything that is published with a lesson.</summary>
internal sealed class PackCommand : ScriptCommand
{
    private readonly Option<string> _output;
    private readonly Option<string?> _captions;
    private readonly Option<string?> _times;

    /// <summary>The command at a desk.</summary>
    public PackCommand(Desk desk)
        : this(
            desk,
            OutputOption.Named("FOLDER", "Where the files go: a folder of its own, which is made; files of the same name are replaced."),
            new Option<string?>("--captions") { HelpName = "FILE", Description = "The captions of the finished video, .vtt or .srt: they are cleaned and broken into lines, and the chapters take the times at which they are heard." },
            new Option<string?>("--times") { HelpName = "FILE", Description = "The chapters of the finished video with their times, as lines such as '3:12 Your turn' (chapters.txt or description.txt with the times mended), FFmpeg metadata or Matroska XML; corrections below 'Corrections:' come along." })
    {
    }

    private PackCommand(Desk desk, Option<string> output, Option<string?> captions, Option<string?> times)
        : base(
            desk,
            "pack",
            "Makes everything that is published with the lesson: its page, player aid and hand-out, teleprompter, shot list, chapters, description, captions, a picture of each shot.",
            "rostrum pack games/kiln-night -o kiln-night-pack",
            output,
            captions,
            times) => (_output, _captions, _times) = (output, captions, times);

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

        Found<FinishedFilm> film = Film(parse.GetValue(_captions), parse.GetValue(_times));
        return film.Value is null ? Desk.Refuse(film.Complaint!) : Make(request, report, folder, film.Value);
    }

    // Everything is made before the first file is written.
    private int Make(GameRequest request, LessonReport report, string folder, FinishedFilm film)
    {
        film = film.Captions is { IsRefused: false } captions ? film with { Topics = RecordingReview.TopicsOf(request.Game, captions, report.Lesson) } : film;
        MadePack pack = LessonPack.Make(request.Game, report, film);
        if (pack.Chapters.IsRefused)
        {
            Show(pack.Chapters.Problems, request.Json);
            Desk.Say("nothing is written until this is mended.");
            return ExitCode.Findings;
        }

        Write(folder, pack.Files);
        Tell(folder, pack, report, request.Json);
        return Findings(report, pack);
    }

    private static Found<FinishedFilm> Film(string? captions, string? times)
    {
        FinishedFilm film = FinishedFilm.None;
        if (captions is not null)
        {
            Found<CaptionFile> read = GivenFile.Read(captions, CaptionReader.Read);
            if (read.Value is null)
            {
                return Found<FinishedFilm>.None(read.Complaint!);
            }

            film = film with { Captions = read.Value, CaptionsName = captions };
        }

        return times is null ? Found<FinishedFilm>.Of(film) : WithTimes(film, times);
    }

    // The file is read twice in words: its chapters, and the corrections below them.
    private static Found<FinishedFilm> WithTimes(FinishedFilm film, string times)
    {
        Found<GivenTimes> read = GivenFile.Read(times, (name, length, bytes) => GivenTimes.Read(name, length, bytes));
        return read.Value is { } given
            ? Found<FinishedFilm>.Of(film with { Chapters = given.Chapters, Corrections = given.Corrections })
            : Found<FinishedFilm>.None(read.Complaint!);
    }

    private void Write(string folder, ImmutableArray<PackFile> files)
    {
        foreach (PackFile file in files)
        {
            Desk.Stop.ThrowIfCancellationRequested();
            AtomicFile.Write(Path.Combine(folder, file.Name), file.Bytes.AsSpan());
        }
    }

    private void Tell(string folder, MadePack pack, LessonReport report, bool json)
    {
        if (json)
        {
            Desk.Write(PackReport.Of(folder, pack, report.Problems), r => r.PackReport);
            return;
        }

        Desk.Write(PackScreen.Of(pack.Files));
        Desk.Show(ProblemScreen.Of(pack.Chapters.Problems));
        foreach (string remark in pack.Remarks.Concat(TimesInWords(pack.Chapters)))
        {
            Desk.Say(remark);
        }

        Desk.Tell($"{Prose.Count(pack.Files.Length, "file", "files")} in {folder}");
    }

    private static IEnumerable<string> TimesInWords(FilmChapters chapters) => chapters.Times switch
    {
        ChapterTimes.Estimated => ["the times of the chapters are estimates from the words; '--captions' or '--times' gives those of the video."],
        ChapterTimes.Heard => ["the times of the chapters were found in the captions; look at each once."],
        _ => [],
    };

    // The page marks every statement and shot that is wrong; whoever publishes it hears of it here.
    private int Findings(LessonReport report, MadePack pack)
    {
        int errors = report.Problems.Count(p => p.Severity == Severity.Error);
        if (errors > 0)
        {
            Desk.Say($"the lesson has {Prose.Count(errors, "error", "errors")}, marked in its page; 'rostrum lesson' lists them.");
            return ExitCode.Findings;
        }

        TellPictures(report.Shots.Count(s => s.Problem is not null));
        return pack.Chapters.Problems.Any(p => p.Severity == Severity.Error) ? ExitCode.Findings : ExitCode.Fine;
    }

    private void TellPictures(int missing)
    {
        if (missing > 0)
        {
            Desk.Say($"{Prose.Count(missing, "picture is", "pictures are")} no shot of a position, and marked in the page; 'rostrum lesson' lists them.");
        }
    }
}
