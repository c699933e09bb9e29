using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>Holds what published videos said against the sheet as it is now.</summary>
public sealed class PublishedCheck
{
    private readonly Game _game;
    private readonly CancellationToken _stop;
    private readonly RuleStates _rules;
    private readonly SentenceCheck _sentences;
    private readonly Dictionary<string, string> _sources;
    private readonly Dictionary<string, string?> _sums = new(StringComparer.Ordinal);

    private PublishedCheck(Game game, CancellationToken stop)
    {
        (_game, _stop) = (game, stop);
        _rules = new RuleStates(game);
        _sentences = new SentenceCheck(game);
        _sources = _rules.Sources.ToDictionary(s => s.Name, s => s.Words, StringComparer.Ordinal);
    }

    /// <summary>The report.</summary>
    /// <param name="game">A game whose sheet is sound.</param>
    /// <param name="file">Its published videos.</param>
    /// <param name="stop">Asked between two sentences.</param>
    public static PublishedReport Of(Game game, PublishedFile file, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(file);
        var check = new PublishedCheck(game, stop);
        PublishedFinding[] findings = [.. file.Videos.SelectMany(v => check.Wrong(v).OrderBy(f => f.Time.At).ThenBy(f => f.IsValue))];
        return new PublishedReport(file.Videos, [.. findings], [.. file.Videos.SelectMany(v => check.Notes(v, [.. findings.Where(f => ReferenceEquals(f.Video, v)).Select(f => f.Time.At)]))]);
    }

    private IEnumerable<PublishedFinding> Wrong(PublishedVideo video) =>
        video.Rules.SelectMany(r => OfRule(video, r)).Concat(video.Sentences.Select(s => OfSentence(video, s)).OfType<PublishedFinding>());

    private IEnumerable<PublishedFinding> OfRule(PublishedVideo video, PublishedRule then)
    {
        RuleState? now = _rules.Find(then.Clause);
        ChangeKind kind = RuleChange.Of(then, now);
        if (IsQuiet(kind) || IsToldElsewhere(video, then, kind, now))
        {
            return [];
        }

        string because = Because(video, now?.Cite);
        string words = CorrectionWords.Now(then, now, kind);
        string insteadOf = kind is ChangeKind.Value ? CorrectionWords.InsteadOf(then.Says, words) : "";
        string line = CorrectionWords.Line(words, insteadOf, CiteInWords(now?.Cite, because));
        return then.Times.Select(t => new PublishedFinding(video, t, then.Clause, kind, CorrectionWords.Then(then, now), words, Citation.Tell(now?.Cite), line, because) { IsFormula = CorrectionWords.IsFormula(then, now, kind) });
    }

    private static bool IsQuiet(ChangeKind kind) => kind is ChangeKind.None or ChangeKind.WrittenOtherwise or ChangeKind.Moved;

    // Where the video says that something is open, it is wrong there, and right where it says the rule.
    private bool IsToldElsewhere(PublishedVideo video, PublishedRule then, ChangeKind kind, RuleState? now) =>
        kind == ChangeKind.Decided && now?.Choice is { } choice && then.Status.StartsWith("open", StringComparison.Ordinal)
        && video.Rules.Any(r => r.Clause != then.Clause && _rules.Find(r.Clause)?.Choice?.Owner == choice.Owner && r.Clause.StartsWith("readings/", StringComparison.Ordinal));

    private PublishedFinding? OfSentence(PublishedVideo video, PublishedSentence sentence)
    {
        _stop.ThrowIfCancellationRequested();
        ImmutableArray<LessonRun> runs = SaidSentence.Read(sentence.Said);
        AskedAgain[] asked = [.. runs.OfType<LessonRun.Claim>().Where(c => !IsLaidAnew(video, c)).Select(_sentences.Of)];
        AskedAgain[] wrong = [.. asked.Where(a => a.Now is not null)];
        if (wrong.Length == 0)
        {
            return asked.FirstOrDefault(a => a.Checked.Status == ClaimStatus.Unsettled) is { } open ? Open(video, sentence, runs, open) : null;
        }

        Citation? cite = wrong.Select(w => w.Cite).FirstOrDefault(c => c is not null);
        string because = Because(video, cite);
        string now = SaidSentence.Spoken(runs, c => wrong.FirstOrDefault(w => ReferenceEquals(w.Checked.Claim, c))?.Now);
        string line = CorrectionWords.Line(now, Prose.And(wrong.Select(Said)), CiteInWords(cite, because));
        return new PublishedFinding(video, sentence.Time, string.Join(", ", wrong.Select(w => w.Clause).Distinct()), ChangeKind.Value, SaidSentence.Spoken(runs, _ => null), now, Citation.Tell(cite), line, because) { IsValue = true };
    }

    private PublishedFinding Open(PublishedVideo video, PublishedSentence sentence, ImmutableArray<LessonRun> runs, AskedAgain open)
    {
        string said = SaidSentence.Spoken(runs, _ => null);
        string now = SentenceCheck.Unsettled(open) is { Length: > 0 } readings ? $"{readings}." : "The rules do not say.";
        string because = Because(video, open.Cite);
        string line = CorrectionWords.Line($"Not settled any more: {said}", "", CiteInWords(open.Cite, because));
        return new PublishedFinding(video, sentence.Time, open.Clause, ChangeKind.Opened, said, now, Citation.Tell(open.Cite), line, because) { IsValue = true };
    }

    private static string Said(AskedAgain value) => SpokenNumber.Read(value.Checked.Claim.Words) is null ? $"'{Film.OneLine.Of(value.Checked.Claim.Words)}'" : Film.OneLine.Of(value.Checked.Claim.Words);

    // What is counted on other pieces says nothing of the rules.
    private bool IsLaidAnew(PublishedVideo video, LessonRun.Claim claim) =>
        PositionSum.AskedBy(claim.Target) is { } name && video.Positions.FirstOrDefault(p => p.Name == name) is { Sum: { } then } && SumOf(name) != then;

    private string? SumOf(string position)
    {
        if (!_sums.TryGetValue(position, out string? sum))
        {
            _sums[position] = sum = PositionSum.Of(_game, position);
        }

        return sum;
    }

    // The page with the printing that is new, or the note with its day.
    private static string CiteInWords(Citation? cite, string because) => cite is null ? "" : because.Length == 0 ? cite.InWords : cite.Page is { } page ? $"{RuleStates.SourceInWords(cite.Source)}, page {page}" : RuleStates.SourceInWords(cite.Source);

    private string Because(PublishedVideo video, Citation? cite)
    {
        if (cite is null || !_sources.TryGetValue(cite.Source.Name, out string? now))
        {
            return "";
        }

        string? then = video.Sources.FirstOrDefault(s => s.Name == cite.Source.Name).Words;
        return then is null ? $"{now} is new since then" : then != now ? $"{now}; then it was {then}" : "";
    }

    private IEnumerable<PublishedNote> Notes(PublishedVideo video, HashSet<TimeSpan> wrong) =>
        Sources(video).Concat(video.Rules.Select(r => Quiet(video, r)).OfType<PublishedNote>()).Concat(Positions(video)).Concat(Unasked(video, wrong)).Concat(New(video));

    private IEnumerable<PublishedNote> Sources(PublishedVideo video)
    {
        foreach ((string name, string now) in _rules.Sources)
        {
            string? then = video.Sources.FirstOrDefault(s => s.Name == name).Words;
            if (then != now)
            {
                yield return then is null ? new PublishedNote(video, name, $"{now} is new since then.") : new PublishedNote(video, name, $"The video was made with {then}; now there is {now}.")
                {
                    Line = new Correction(video.PrintingAt?.At ?? TimeSpan.Zero, $"This video was made with: {then}. Now there is: {now}."),
                };
            }
        }
    }

    private PublishedNote? Quiet(PublishedVideo video, PublishedRule then)
    {
        RuleState? now = _rules.Find(then.Clause);
        string at = string.Join(", ", then.Times.Select(t => t.InWords));
        return RuleChange.Of(then, now) switch
        {
            ChangeKind.WrittenOtherwise => new PublishedNote(video, then.Clause, $"Said at {at}; the sheet says the same and writes it otherwise."),
            ChangeKind.Moved => new PublishedNote(video, then.Clause, $"Said at {at}; it stands on {Citation.Tell(now!.Cite)} now, then on {(then.Cite.Length == 0 ? "no page" : then.Cite)}."),
            _ => null,
        };
    }

    private IEnumerable<PublishedNote> Positions(PublishedVideo video) =>
        from position in video.Positions
        let now = SumOf(position.Name)
        where now != position.Sum
        select new PublishedNote(video, $"positions/{position.Name}", now is null ? "There is no such position any more, so what was said of it cannot be asked." : "It was laid anew since then, so what was said of it is not asked.");

    private IEnumerable<PublishedNote> Unasked(PublishedVideo video, HashSet<TimeSpan> wrong) =>
        from sentence in video.Sentences
        where !wrong.Contains(sentence.Time.At)
        from claim in SaidSentence.Read(sentence.Said).OfType<LessonRun.Claim>()
        where !IsLaidAnew(video, claim) && _sentences.Of(claim).Checked.Status == ClaimStatus.Unasked
        select new PublishedNote(video, claim.Target, $"Said at {sentence.Time.InWords}; it cannot be asked any more.");

    private IEnumerable<PublishedNote> New(PublishedVideo video)
    {
        HashSet<string> known = [.. video.Rules.Select(r => r.Clause), .. video.NotSaid.Select(Prose.Fold)];
        string[] added = [.. _rules.All.Where(r => r.Clause is not null && !known.Contains(Prose.Fold(r.Key))).Select(r => r.Key)];
        return added.Length == 0 ? [] : added.Select(a => new PublishedNote(video, a, "This rule is new since then, and the video does not say it."));
    }
}
