using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Rulings.Games;

namespace Rostrum.Lessons.Published;

/// <summary>Puts together what a video says, at the moment at which it is published.</summary>
public sealed class VideoMaker
{
    private readonly Game _game;
    private readonly LessonReport _report;
    private readonly RuleStates _rules;
    private readonly ScriptSpeech _speech;
    private readonly SpokenTimes _times;
    private readonly RecordingReport? _heard;
    private readonly SentenceLeads _leads;
    private readonly RuleTimes _ruleTimes;

    private VideoMaker(Game game, LessonReport report, CaptionFile? captions)
    {
        (_game, _report) = (game, report);
        _rules = new RuleStates(game);
        _speech = ScriptSpeech.Of(report.Lesson);
        _times = new SpokenTimes(_speech, captions);
        _heard = captions is null ? null : RecordingReview.Of(game, captions, report.Lesson);
        _leads = new SentenceLeads(_speech);
        _ruleTimes = new RuleTimes(report, _speech, _leads, _times, _heard?.Coverage ?? []);
    }

    /// <summary>The video of a lesson.</summary>
    /// <param name="game">A game whose sheet is sound.</param>
    /// <param name="report">Its checked lesson.</param>
    /// <param name="captions">The captions of the finished video; null where there are none, and then its times are estimates.</param>
    /// <param name="video">Title, day, address, and the length where it is known.</param>
    /// <returns>The video; or in its place why the captions are none of this lesson, as a sentence.</returns>
    public static (PublishedVideo? Video, string? Refused) Of(Game game, LessonReport report, CaptionFile? captions, PublishedVideo video)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(video);
        var maker = new VideoMaker(game, report, captions);
        return maker._heard?.Refused is { } refused ? (null, refused) : (maker.Made(video), null);
    }

    private PublishedVideo Made(PublishedVideo video)
    {
        ImmutableArray<PublishedRule> said = Said();
        ImmutableArray<PublishedRule> rules = [.. said, .. Used(said)];
        HashSet<LessonRun.Claim> kept = new(_report.Claims.Where(IsKept).Select(c => c.Claim), ReferenceEqualityComparer.Instance);
        IEnumerable<string> positions = _report.Claims.Where(IsKept).Select(c => PositionSum.AskedBy(c.Claim.Target)).OfType<string>().Distinct();
        return video with
        {
            Length = video.Length ?? _times.Length,
            Sources = _rules.Sources,
            Rules = rules,
            Sentences = [.. Sentences(kept)],
            Unheard = _speech.Sentences.Count(s => HasValue(s, kept) && !_times.Says(s)),
            Positions = [.. positions.Select(p => (p, PositionSum.Of(_game, p))).Where(p => p.Item2 is not null).Select(p => (p.p, p.Item2!))],
            Findings = _heard?.Certain.Length ?? 0,
            PrintingAt = _ruleTimes.Printing,
            NotSaid = [.. _rules.All.Where(r => r.Clause is not null).Select(r => r.Key).Except(rules.Select(r => r.Clause))],
        };
    }

    // Only what the sheet answered can be asked again.
    private static bool IsKept(CheckedClaim claim) => claim.Status is ClaimStatus.Right or ClaimStatus.Wrong;

    private ImmutableArray<PublishedRule> Said() =>
    [
        .. from cover in _report.Script.Clauses
           where cover.Status is CoverStatus.Said or CoverStatus.InPart
           where !IsSaidOtherwise(cover.Clause)
           let state = _rules.Find(RuleState.KeyOf(cover.Clause))
           where state is not null
           let times = _ruleTimes.Of(cover)
           where times.Length > 0
           select Rule(state, times),
    ];

    // What the film says wrongly, or not at all, cannot become wrong.
    private bool IsSaidOtherwise(LessonClause clause) => clause.Variant is null && _heard is { } heard && heard.Certain.Any(f => f.Clause == clause.Name && (f.Kind is FindingKind.WrongValue or FindingKind.NeverSaid));

    private static PublishedRule Rule(RuleState state, ImmutableArray<VideoTime> times) =>
        new(state.Key, times, state.Says, state.Means, state.Status, Sheets.Model.Citation.Tell(state.Cite));

    // A word that rules use is said where it is told what it means, else with the rules that use it, else with those that use it through another word.
    private IEnumerable<PublishedRule> Used(ImmutableArray<PublishedRule> said)
    {
        RuleState[] helpers = [.. _rules.All.Where(r => r.CalledAs.Length > 0 && said.All(s => s.Clause != r.Key))];
        foreach (RuleState helper in helpers)
        {
            PublishedRule[] direct = [.. said.Where(s => Names(s.Means, helper.CalledAs))];
            PublishedRule[] users = direct.Length > 0 ? direct : [.. said.Where(s => Uses(s.Means, helper, helpers, []))];
            VideoTime[] told = users.Length == 0 ? [] : [.. _ruleTimes.Telling(helper.CalledAs)];
            VideoTime[] times = told.Length > 0 ? told : [.. users.SelectMany(s => s.Times).Distinct().OrderBy(t => t.At)];
            if (times.Length > 0)
            {
                yield return Rule(helper, [.. times]);
            }
        }
    }

    private static bool Uses(string means, RuleState helper, RuleState[] all, HashSet<string> seen) =>
        Names(means, helper.CalledAs) || all.Any(h => h.Key != helper.Key && Names(means, h.CalledAs) && seen.Add(h.Key) && Uses(h.Means, helper, all, seen));

    private static bool Names(string means, string name)
    {
        for (int at = means.IndexOf(name, StringComparison.Ordinal); at >= 0; at = means.IndexOf(name, at + 1, StringComparison.Ordinal))
        {
            if ((at == 0 || !char.IsLetterOrDigit(means[at - 1])) && (at + name.Length == means.Length || !char.IsLetterOrDigit(means[at + name.Length])))
            {
                return true;
            }
        }

        return false;
    }

    private IEnumerable<PublishedSentence> Sentences(HashSet<LessonRun.Claim> kept) =>
        _leads.Of(s => HasValue(s, kept) && _times.Says(s)).Select(g => new PublishedSentence(_times.Of(g[0]), string.Join(' ', g.Select(s => SaidSentence.Write(s, kept.Contains)))));

    private static bool HasValue(SpokenSentence sentence, HashSet<LessonRun.Claim> kept) => sentence.Runs.OfType<LessonRun.Claim>().Any(kept.Contains);
}
