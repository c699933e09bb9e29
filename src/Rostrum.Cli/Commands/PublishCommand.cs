using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Lessons;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Published;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum publish</c>: remembers what a video says, so that a later change of the rules finds its minutes.</summary>
internal sealed class PublishCommand : ScriptCommand
{
    private const string Day = "yyyy-MM-dd";

    private readonly Option<string?> _title;
    private readonly Option<string?> _date;
    private readonly Option<string?> _address;
    private readonly Option<string?> _captions;
    private readonly Option<TimeSpan?> _length;

    /// <summary>The command at a desk.</summary>
    public PublishCommand(Desk desk)
        : this(
            desk,
            new Option<string?>("--title") { HelpName = "WORDS", Description = "What the video is called; if not given, the lesson's title." },
            new Option<string?>("--date") { HelpName = "DAY", Description = "The day up to which it is right, as in 2026-11-25; if not given, 'correct as of' at the head of the lesson." },
            new Option<string?>("--address") { HelpName = "WORDS", Description = "Where it is seen; only remembered, never fetched." },
            new Option<string?>("--captions") { HelpName = "FILE", Description = "The captions of the finished video (WebVTT or SRT), which say when each rule is said; without them, times are worked out from the words of the lesson." },
            new Option<TimeSpan?>("--length") { HelpName = "TIME", Description = "How long the video is, as in 12:05; if not given, that of the captions or the lesson.", CustomParser = Timed })
    {
    }

    private PublishCommand(Desk desk, Option<string?> title, Option<string?> date, Option<string?> address, Option<string?> captions, Option<TimeSpan?> length)
        : base(
            desk, "publish", $"Remembers in '{PublishedFile.FileName}' what a video that goes out says and by which rules, so that 'rostrum check --published' finds the minutes that a later change makes wrong.",
            "rostrum publish games/kiln-night --captions film.vtt", title, date, address, captions, length) =>
        (_title, _date, _address, _captions, _length) = (title, date, address, captions, length);

    /// <inheritdoc />
    protected override int Answer(GameRequest request, LessonReport report, ParseResult parse)
    {
        (string title, string date) = (Prose.Fold(parse.GetValue(_title) ?? report.Lesson.Title), parse.GetValue(_date) ?? report.Lesson.CorrectAsOf);
        if (Complaint(title, date) is { } complaint)
        {
            return Desk.Refuse(complaint);
        }

        CaptionFile? captions = null;
        if (parse.GetValue(_captions) is { } path)
        {
            Found<CaptionFile> found = GivenFile.Read(path, CaptionReader.Read);
            if (found.Value is null or { IsRefused: true })
            {
                return found.Value is null ? Desk.Refuse(found.Complaint!) : Report(found.Value.Problems, request.Json);
            }

            captions = found.Value;
        }

        var video = new PublishedVideo(title, date) { Address = parse.GetValue(_address) ?? "", Length = parse.GetValue(_length) is { } length ? VideoTime.Of(length, false) : null };
        return Answer(request, report, captions, video, parse);
    }

    private int Answer(GameRequest request, LessonReport report, CaptionFile? captions, PublishedVideo named, ParseResult parse)
    {
        FolderReading reading = request.Game.Folder.Read(PublishedFile.FileName);
        string? path = RealPath.Of(FolderOf(parse)) is { } folder ? RealPath.Inside(folder, PublishedFile.FileName) : null;
        if (path is null || reading.Refusal is not (FolderRefusal.None or FolderRefusal.Missing))
        {
            FolderRefusal refusal = path is null ? FolderRefusal.LeavesFolder : reading.Refusal;
            return Desk.Refuse($"{RefusalWords.Told(refusal, PublishedFile.FileName)} {RefusalWords.WayOut(refusal)}");
        }

        PublishedFile before = reading.Text is { } text ? PublishedFile.Read(text) : new PublishedFile([], []);
        if (before.HasErrors)
        {
            return Report(before.Problems, request.Json);
        }

        (PublishedVideo? video, string? refused) = VideoMaker.Of(request.Game, report, captions, named);
        if (video is null || before.Videos.Any(v => v.InWords == video.InWords))
        {
            return Desk.Refuse(video is null ? $"{refused} Name the captions of this video." : $"'{video.InWords}' stands in '{PublishedFile.FileName}' already. Name another title or day, or take that entry out.");
        }

        if (PublishedWriter.With(reading.Text, video) is not { } content)
        {
            return Desk.Refuse($"Nothing can be added to '{PublishedFile.FileName}' as it is written. Write its videos as a list: 'videos:', and each on lines below it that begin with '- '.");
        }

        AtomicFile.Write(path, Encoding.UTF8.GetBytes(content));
        return Tell(video, report, before.Videos.Length + 1, captions is not null, request.Json);
    }

    private int Tell(PublishedVideo video, LessonReport report, int videos, bool hasCaptions, bool json)
    {
        var told = PublishReport.Of(video, videos);
        if (json)
        {
            Desk.Write(told, r => r.PublishReport);
        }
        else
        {
            Desk.Write($"{video.InWords}, {video.Length?.InWords}: {Prose.Count(told.Rules, "rule", "rules")} and {Prose.Count(told.Sentences, "sentence", "sentences")} with values are remembered.\n");
            Desk.Tell($"{PublishedFile.FileName} holds {Prose.Count(videos, "video", "videos")}.{Times(told, hasCaptions)}");
        }

        if (video.Findings > 0)
        {
            Desk.Say($"the review of the captions has {Prose.Count(video.Findings, "certain finding", "certain findings")}: there the video says something else than the rules. 'rostrum review' lists them with the lines to publish.");
        }

        int errors = report.Problems.Count(p => p.Severity == Severity.Error);
        if (errors > 0)
        {
            Desk.Say($"the lesson has {Prose.Count(errors, "error", "errors")}, and so has the video where it says the same; 'rostrum lesson' lists them.");
        }

        return errors > 0 ? ExitCode.Findings : ExitCode.Fine;
    }

    private static string Times(PublishReport told, bool hasCaptions)
    {
        string unheard = told.Unheard == 0 ? "" : $" {Prose.Count(told.Unheard, "sentence", "sentences")} of the script with values {(told.Unheard == 1 ? "is" : "are")} not in the captions, and not remembered.";
        return (told.Estimated, hasCaptions) switch
        {
            (0, _) => unheard,
            (_, false) => " Its times are estimates from the words of the lesson; with --captions they are those of the video.",
            (var some, _) => $" {Prose.Count(some, "time is an estimate", "times are estimates")}: the captions say other words there.{unheard}",
        };
    }

    private static string? Complaint(string title, string date) =>
        title.Length == 0 ? "The video needs a title: name it with --title."
        : date.Length == 0 ? "Say up to which day the video is right: '--date 2026-11-25', or 'correct as of' at the head of the lesson."
        : !DateOnly.TryParseExact(date, Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? $"'{Prose.Clip(date)}' is no day: write year, month and day as in 2026-11-25."
        : null;

    private static TimeSpan? Timed(ArgumentResult result)
    {
        string written = result.Tokens[0].Value;
        if (FilmTime.Read(written) is { } time)
        {
            return time;
        }

        result.AddError($"'{Prose.Clip(written)}' is no time: write minutes and seconds as in 12:05.");
        return null;
    }
}
