using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Page;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Shots;
using Rostrum.Pictures;
using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>Fills the page of a lesson: its words, its pictures, a slip for every statement.</summary>
internal sealed class PageMaker(Game game, LessonReport report)
{
    private const string Unofficial = "Unofficial. Rules in our own words; the rulebook and its publisher decide. Follow the age and safety notes on the box.";
    private const double SlipShelf = 30;

    private readonly Sheet _sheet = game.Sheet().Sheet!;
    private readonly Dictionary<LessonRun, CheckedClaim> _claims = report.Claims.ToDictionary<CheckedClaim, LessonRun>(c => c.Claim, ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, OpenedPosition?> _opened = [];
    private readonly Dictionary<LessonBlock, CheckedShot> _shots = report.Shots.ToDictionary<CheckedShot, LessonBlock>(s => s.Shot, ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, PageSlip> _slips = new(StringComparer.Ordinal);

    /// <summary>The page.</summary>
    public LessonPage Make()
    {
        Lesson lesson = report.Lesson;
        CheckedShot? opening = report.Shots.FirstOrDefault(s => s.Position is not null);
        ImmutableArray<PageTopic> topics = [.. lesson.Topics.Select((t, i) => Topic(t, i, opening?.Shot))];
        string? openingSlip = _slips.Keys.FirstOrDefault(k => opening is not null && k == $"tally:{opening.PositionName}/total");
        return new LessonPage(_sheet.Game, lesson.Title, lesson.Presenter, Day(lesson.CorrectAsOf), lesson.Printing.Length == 0 ? "" : $"{lesson.Printing} printing")
        {
            Lead = _sheet.Tree.Find("says")?.Value is Rostrum.Text.Outline.OutlineScalar says ? says.Text.Trim() : "",
            Opening = opening is null ? null : Figure(opening),
            OpeningSlipId = openingSlip,
            Topics = topics,
            Slips = [.. _slips.Values.Select(s => s.Id == openingSlip ? s with { IsOpenAtFirst = true } : s)],
            Sources = [.. SourceTable.Of(_sheet)],
            Questions = [.. QuestionList.Of(game, _sheet, VariantsShown())],
            Claims = Summary(),
            UnofficialNote = Unofficial,
        };
    }

    /// <summary>A date of the front matter as people read it; other words stay.</summary>
    internal static string Day(string words) =>
        DateOnly.TryParseExact(words, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture) : words;

    // What a variant leaves open concerns readers only where the lesson shows a table with that variant.
    private IEnumerable<string> VariantsShown()
    {
        HashSet<string> on = [.. report.Shots.Select(s => s.Position).Concat(PositionsAsked()).OfType<Position>().SelectMany(p => p.Sheet.VariantsOn)];
        return _sheet.Variants.Select(v => v.Name).Where(on.Contains);
    }

    private IEnumerable<Position?> PositionsAsked() =>
        report.Claims.Select(c => ClaimTarget.Read(c.Claim.Target)?.OnPosition).OfType<string>().Distinct().Select(n => Opened(n)?.Position);

    // A position is called as the lesson calls it in its first shot. One that no shot shows is called as its file says, and is drawn on the slip.
    private SlipTable TableOf(string name)
    {
        if (report.Shots.FirstOrDefault(s => s.PositionName == name && s.Position is not null) is { } shown)
        {
            return new SlipTable(shown.Shot.Caption, null, SeatNames(shown.Position!));
        }

        PositionFile? file = Opened(name)?.File;
        string title = file?.Says?.TrimEnd('.') ?? $"Position {name}";
        return new SlipTable(title, file?.Position is { Sheet.Boards.IsEmpty: false } position ? Figure(position, title) : null, file?.Position is { } counted ? SeatNames(counted) : []);
    }

    // Many statements speak of one position; its file is read once.
    private OpenedPosition? Opened(string name)
    {
        if (!_opened.TryGetValue(name, out OpenedPosition? opened))
        {
            _opened[name] = opened = game.PositionText(name).Text is { } text ? game.Open(text) : null;
        }

        return opened;
    }

    private static ImmutableArray<string> SeatNames(Position position) => PositionPicture.SeatsIn(position).Count() > 1
        ? [.. Enumerable.Range(0, position.Seats).Select(PositionWords.ForAudience(position.Sheet).Seat)]
        : [];

    private PageBlock.Figure Figure(Position position, string title)
    {
        Scene scene = TablePainter.Paint(PositionPicture.Of(position, PictureWish.Plain(title) with { ShowsTitle = false }), SlipShelf);
        return new PageBlock.Figure(SvgWriter.Write(scene, SvgOptions.InPage($"slip-{_slips.Count}")), title, scene.Description, null);
    }

    private ClaimsSummary Summary() => new(
        report.Claims.Count(c => c.Status == ClaimStatus.Right),
        report.Claims.Count(c => c.Status == ClaimStatus.Wrong),
        report.Claims.Count(c => c.Status == ClaimStatus.Unsettled),
        report.Claims.Count(c => c.Status == ClaimStatus.Unasked),
        [.. report.Claims.Select(c => c.Problem).Concat(report.Shots.Select(s => s.Problem)).OfType<Diagnostic>().Select(p => p.Message).Distinct()]);

    private PageTopic Topic(LessonTopic topic, int index, LessonBlock.Shot? opening) =>
        new(topic.Title, $"topic-{index + 1}", [.. topic.Blocks.Where(b => !ReferenceEquals(b, opening)).SelectMany(Block)]);

    private IEnumerable<PageBlock> Block(LessonBlock block)
    {
        switch (block)
        {
            case LessonBlock.Paragraph paragraph:
                yield return new PageBlock.Paragraph(Runs(paragraph.Said));
                break;
            case LessonBlock.Subheading heading:
                yield return new PageBlock.Subheading(heading.Words);
                break;
            case LessonBlock.List list:
                yield return new PageBlock.List(list.IsNumbered, [.. list.Items.Select(Runs)]);
                break;
            case LessonBlock.Quote quote:
                yield return new PageBlock.Quote(Runs(quote.Said), "");
                break;
            case LessonBlock.Shot shot:
                yield return Picture(_shots[shot]);
                break;
        }
    }

    // A shot that cannot be drawn leaves its mark where the picture would stand.
    private static PageBlock Picture(CheckedShot shot) => shot.Problem is { } problem
        ? new PageBlock.Paragraph([new PageRun.Marked(shot.Shot.Caption.Length == 0 ? "A shot" : shot.Shot.Caption, ValueStatus.Wrong, $"No picture: {problem.Message}")])
        : Figure(shot);

    private static PageBlock.Figure Figure(CheckedShot shot)
    {
        Scene scene = ShotPicture.Of(shot, showsTitle: false);
        string name = PictureNames.NameOf(shot);
        return new PageBlock.Figure(SvgWriter.Write(scene, SvgOptions.InPage(name[(name.IndexOf('/', StringComparison.Ordinal) + 1)..])), shot.Shot.Caption, scene.Description, $"{name}.svg");
    }

    private ImmutableArray<PageRun> Runs(ImmutableArray<LessonRun> runs) => [.. runs.Select(Run)];

    private PageRun Run(LessonRun run) => run switch
    {
        LessonRun.Stressed { IsStrong: true } strong => new PageRun.Strong(strong.Words),
        LessonRun.Stressed soft => new PageRun.Emphasis(soft.Words),
        LessonRun.Code code => new PageRun.Code(code.Words),
        LessonRun.Link link => new PageRun.Link(link.Words, link.Target),
        LessonRun.Claim claim => Value(_claims[claim]),
        _ => new PageRun.Text(run.Words),
    };

    private PageRun Value(CheckedClaim claim)
    {
        string id = SlipMaker.IdOf(claim);
        if (!_slips.ContainsKey(id) && SlipMaker.Make(claim, id, TableOf) is { } slip)
        {
            _slips[id] = slip;
        }

        string note = claim.Problem?.Message ?? "";
        return _slips.ContainsKey(id)
            ? new PageRun.Value(claim.Claim.Words, id, StatusOf(claim)) { Note = note }
            : new PageRun.Marked(claim.Claim.Words, StatusOf(claim), note);
    }

    private static ValueStatus StatusOf(CheckedClaim claim) => claim.Status switch
    {
        ClaimStatus.Right => ValueStatus.Right,
        ClaimStatus.Unsettled => ValueStatus.Unsettled,
        _ => ValueStatus.Wrong,
    };
}
