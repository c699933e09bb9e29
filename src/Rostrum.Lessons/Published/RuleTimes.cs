using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Published;

/// <summary>Finds when a video says each rule.</summary>
/// <remarks>The script's coverage names a best place; a tie-break stands with the other tie-breaks.</remarks>
internal sealed partial class RuleTimes
{
    private static readonly string Mean = WordStems.OfWord("means");

    private readonly ScriptSpeech _speech;
    private readonly SentenceLeads _leads;
    private readonly SpokenTimes _times;
    private readonly ImmutableArray<RuleHeard> _heard;
    private readonly ClauseMatch _match;
    private readonly Dictionary<string, int> _clausesOfStem;
    private readonly int? _blockOfTies;

    /// <summary>The times of a lesson.</summary>
    /// <param name="report">The checked lesson.</param>
    /// <param name="speech">Its sentences.</param>
    /// <param name="leads">Which of them belong together.</param>
    /// <param name="times">When each is said.</param>
    /// <param name="heard">The rules that were heard in the finished video; empty without captions.</param>
    public RuleTimes(LessonReport report, ScriptSpeech speech, SentenceLeads leads, SpokenTimes times, ImmutableArray<RuleHeard> heard)
    {
        (_speech, _leads, _times, _heard) = (speech, leads, times, heard);
        _match = new ClauseMatch(speech, [.. report.Script.Clauses.Select(c => c.Clause)]);
        _clausesOfStem = report.Script.Clauses.SelectMany(c => ClauseMatch.StemsOf(c.Clause)).GroupBy(t => t, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        _blockOfTies = report.Script.Clauses.Where(c => c is { Clause: { Sort: ClauseSort.Tie, Variant: null }, Sentence: >= 0 }).GroupBy(c => speech.Sentences[c.Sentence].Block).OrderByDescending(g => g.Count()).Select(g => (int?)g.Key).FirstOrDefault();
    }

    /// <summary>When a rule is said, in order; empty where no place of the script says it.</summary>
    public ImmutableArray<VideoTime> Of(ClauseCover cover)
    {
        VideoTime[] times = [.. Places(cover).Select(i => _times.Of(_leads.First(i)))];
        // The review hears a rule in the words of the sheet and of the script; the script's best place may be another rule's.
        VideoTime[] heard = [.. Heard(cover.Clause)];
        return [.. (heard.Length > 0 ? heard : times).Distinct().OrderBy(t => t.At)];
    }

    /// <summary>When it is told what a word means: 'beside means left and right only'. Empty where it never is.</summary>
    public IEnumerable<VideoTime> Telling(string word)
    {
        string[] stems = [.. WordStems.Of(word), Mean];
        return Sentences(s => !s.IsCaption && stems.All(w => s.Stems.Any(t => t.Stem == w))).Select(i => _times.Of(_leads.First(i)));
    }

    /// <summary>When it is said which printing is taught; null where it is not.</summary>
    public VideoTime? Printing => Sentences(s => !s.IsCaption && PrintingWord().IsMatch(s.Words)).Select(i => (VideoTime?)_times.Of(_leads.First(i))).FirstOrDefault();

    private IEnumerable<int> Places(ClauseCover cover)
    {
        int[] readings = [.. Sentences(s => s.Runs.OfType<LessonRun.Claim>().Any(c => ClaimTarget.Read(c.Target) is ClaimTarget.Tally { Reading: { } asked } && cover.Clause.Readings.Contains(asked)))];
        if (readings.Length > 0)
        {
            return readings;
        }

        ClauseHit? place = AmongTies(cover) ?? (cover.Sentence >= 0 ? new ClauseHit(cover.Score, cover.Sentence, cover.Sentences) : null);
        return place is { } said ? [Telling(cover.Clause, said)] : cover.Topics.Select(t => Sentences(s => s.Topic == t && !s.IsCaption).Take(1)).SelectMany(s => s);
    }

    // Of the sentences that say it together, the one that says most of it, rare words before common ones; a set-up or turn is said by all of them.
    private int Telling(LessonClause clause, ClauseHit place)
    {
        string[] stems = ClauseMatch.StemsOf(clause);
        double Weight(int i) => _speech.Sentences[i].IsCaption ? -1 : _speech.Sentences[i].Stems.Select(t => TableTalk.Of(t.Stem)).Distinct().Where(stems.Contains).Sum(t => 1.0 / _clausesOfStem.GetValueOrDefault(t, 1));
        return clause.Sort == ClauseSort.Course ? place.First : Enumerable.Range(place.First, Math.Max(1, place.Count)).MaxBy(Weight);
    }

    private ClauseHit? AmongTies(ClauseCover cover) =>
        cover is { Clause: { Sort: ClauseSort.Tie, Variant: null }, Sentence: >= 0 } && _blockOfTies is { } block && _speech.Sentences[cover.Sentence].Block != block ? Best(cover.Clause, s => s.Block == block) : null;

    private ClauseHit? Best(LessonClause clause, Predicate<SpokenSentence> mayStand)
    {
        ClauseHit hit = _match.Best(clause, s => !s.IsCaption && mayStand(s));
        return hit.First >= 0 ? hit : null;
    }

    // Laws, scores and ends are looked for in what was said, one by one.
    private IEnumerable<VideoTime> Heard(LessonClause clause)
    {
        string? section = clause is { Variant: null, Sort: ClauseSort.Law or ClauseSort.Score or ClauseSort.End } ? LessonClause.ToldIn(clause.Sort) : null;
        return _heard.Where(h => h.Section == section && h.Clause == clause.Name && h.Time is not null).Select(h => VideoTime.Of(h.Time!.Value, false));
    }

    private IEnumerable<int> Sentences(Predicate<SpokenSentence> passes) => Enumerable.Range(0, _speech.Sentences.Length).Where(i => passes(_speech.Sentences[i]));

    [GeneratedRegex(@"\b(?:printing|edition)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PrintingWord();
}
