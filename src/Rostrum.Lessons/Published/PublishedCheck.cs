using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>Holds what published videos said against the sheet as it is now.</summary>
public sealed class PublishedCheck
{
    private const string Reading = "readings/";

    private readonly Today _today;
    private readonly CancellationToken _stop;

    private PublishedCheck(Game game, CancellationToken stop) => (_today, _stop) = (new Today(game), stop);

    /// <summary>The report.</summary>
    /// <param name="game">A game whose sheet is sound.</param>
    /// <param name="file">Its published videos.</param>
    /// <param name="stop">Asked between two sentences.</param>
    public static PublishedReport Of(Game game, PublishedFile file, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(file);
        var check = new PublishedCheck(game, stop);
        PublishedFinding[] findings = [.. file.Videos.SelectMany(v => check.Wrong(v).OrderBy(f => f.Time.At).ThenBy(f => f.IsValue))];
        var notes = new PublishedNotes(check._today);
        return new PublishedReport(file.Videos, [.. findings], [.. file.Videos.SelectMany(v => notes.Of(v, [.. findings.Where(f => ReferenceEquals(f.Video, v)).Select(f => f.Time.At)]))]);
    }

    private IEnumerable<PublishedFinding> Wrong(PublishedVideo video)
    {
        PublishedFinding[] rules = [.. video.Rules.SelectMany(r => OfRule(video, r))];
        HashSet<string> gone = [.. rules.Where(r => r.Kind == ChangeKind.Gone).Select(r => r.Clause)];
        return rules.Concat(video.Sentences.Select(s => OfSentence(video, s, gone)).OfType<PublishedFinding>());
    }

    private IEnumerable<PublishedFinding> OfRule(PublishedVideo video, PublishedRule then)
    {
        RuleState? now = _today.Now(video, then);
        ChangeKind kind = RuleChange.Of(then, now);
        if (kind is ChangeKind.None or ChangeKind.WrittenOtherwise or ChangeKind.Moved || IsToldElsewhere(video, then, kind, now))
        {
            return [];
        }

        string because = _today.Because(video, now?.Cite);
        string words = CorrectionWords.Now(then, now, kind);
        string insteadOf = kind is ChangeKind.Value ? CorrectionWords.InsteadOf(then.Says, words) : "";
        string line = CorrectionWords.Line(words, insteadOf, CiteInWords(now?.Cite, because));
        return then.Times.Select(t => new PublishedFinding(video, t, then.Clause, kind, CorrectionWords.Then(then, now), words, Citation.Tell(now?.Cite), line, because)
        {
            IsFormula = CorrectionWords.IsFormula(then, now, kind),
        });
    }

    // Where the video says that something is open, it is wrong there, and right where it says the rule.
    private bool IsToldElsewhere(PublishedVideo video, PublishedRule then, ChangeKind kind, RuleState? now) =>
        kind == ChangeKind.Decided && now?.Choice is { } choice && then.Status.StartsWith(RuleChange.Open, StringComparison.Ordinal)
        && video.Rules.Any(r => r.Clause != then.Clause && r.Clause.StartsWith(Reading, StringComparison.Ordinal) && _today.Rules.Find(r.Clause)?.Choice?.Owner == choice.Owner);

    private PublishedFinding? OfSentence(PublishedVideo video, PublishedSentence sentence, HashSet<string> gone)
    {
        _stop.ThrowIfCancellationRequested();
        ImmutableArray<LessonRun> runs = SaidSentence.Read(sentence.Said);
        AskedAgain[] asked = [.. runs.OfType<LessonRun.Claim>().Where(c => !_today.IsLaidAnew(video, c)).Select(_today.Ask)];
        return Wrong(video, sentence, runs, [.. asked.Where(a => a.Now is not null)])
            ?? (asked.FirstOrDefault(a => a.Checked.Status == ClaimStatus.Unsettled) is { } open ? Open(video, sentence, runs, open) : null)
            ?? (asked.FirstOrDefault(a => a.Checked.Status == ClaimStatus.Unasked && gone.Contains(ScoreOf(a.Checked.Claim))) is { } of ? Gone(video, sentence, runs, ScoreOf(of.Checked.Claim)) : null);
    }

    private PublishedFinding? Wrong(PublishedVideo video, PublishedSentence sentence, ImmutableArray<LessonRun> runs, AskedAgain[] wrong)
    {
        if (wrong.Length == 0)
        {
            return null;
        }

        Citation? cite = wrong.Select(w => w.Cite).FirstOrDefault(c => c is not null);
        string now = SaidSentence.Spoken(runs, c => wrong.FirstOrDefault(w => ReferenceEquals(w.Checked.Claim, c))?.Now);
        return Finding(video, sentence, runs, string.Join(", ", wrong.Select(w => w.Clause).Distinct()), ChangeKind.Value, now, (now, Prose.And(wrong.Select(Said))), cite);
    }

    private PublishedFinding Open(PublishedVideo video, PublishedSentence sentence, ImmutableArray<LessonRun> runs, AskedAgain open)
    {
        string now = SentenceCheck.Unsettled(open) is { Length: > 0 } readings ? $"{readings}." : "The rules do not say.";
        return Finding(video, sentence, runs, open.Clause, ChangeKind.Opened, now, ($"Not settled any more: {SaidSentence.Spoken(runs, _ => null)}", ""), open.Cite);
    }

    private PublishedFinding Gone(PublishedVideo video, PublishedSentence sentence, ImmutableArray<LessonRun> runs, string clause)
    {
        string now = $"No longer so: {SaidSentence.Spoken(runs, _ => null)}";
        return Finding(video, sentence, runs, clause, ChangeKind.Gone, now, (now, ""), null);
    }

    private PublishedFinding Finding(
        PublishedVideo video, PublishedSentence sentence, ImmutableArray<LessonRun> runs, string clause, ChangeKind kind, string now, (string Words, string InsteadOf) line, Citation? cite)
    {
        string because = _today.Because(video, cite);
        string correction = CorrectionWords.Line(line.Words, line.InsteadOf, CiteInWords(cite, because));
        return new PublishedFinding(video, sentence.Time, clause, kind, SaidSentence.Spoken(runs, _ => null), now, Citation.Tell(cite), correction, because) { IsValue = true };
    }

    private static string ScoreOf(LessonRun.Claim value) => ClaimTarget.Read(value.Target) is ClaimTarget.Tally tally ? $"score/{tally.Clause}" : "";

    private static string Said(AskedAgain value) => SpokenNumber.Read(value.Checked.Claim.Words) is null ? $"'{Film.OneLine.Of(value.Checked.Claim.Words)}'" : Film.OneLine.Of(value.Checked.Claim.Words);

    // The page with the printing that is new, or the note with its day.
    private static string CiteInWords(Citation? cite, string because) => (cite, because) switch
    {
        (null, _) => "",
        (_, "") => cite.InWords,
        ({ Page: { } page }, _) => $"{RuleStates.SourceInWords(cite.Source)}, page {page}",
        _ => RuleStates.SourceInWords(cite.Source),
    };
}
