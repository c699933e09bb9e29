using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Published;

/// <summary>Finds when a video says each rule.</summary>
/// <remarks>The script's coverage names a best place. A topic that names the page of a rule comes before it, for a rule is often said in words that
/// another rule shares; and a tie-break stands with the other tie-breaks.</remarks>
internal sealed partial class RuleTimes
{
    private static readonly string Mean = WordStems.OfWord("means");

    private readonly ScriptSpeech _speech;
    private readonly SentenceLeads _leads;
    private readonly SpokenTimes _times;
    private readonly ImmutableArray<RuleHeard> _heard;
    private readonly ClauseMatch _match;
    private readonly ILookup<int, int> _topicsOfPage;
    private readonly int? _topicOfTies;

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
        _topicsOfPage = speech.Sentences.Where(s => !s.IsCaption).SelectMany(s => Page().Matches(s.Words).Select(m => (Page: int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture), s.Topic))).Distinct().ToLookup(p => p.Page, p => p.Topic);
        _topicOfTies = report.Script.Clauses.Where(c => c.Clause is { Sort: ClauseSort.Tie, Variant: null } && c.Status == CoverStatus.Said).SelectMany(c => c.Topics).GroupBy(t => t).OrderByDescending(g => g.Count()).Select(g => (int?)g.Key).FirstOrDefault();
    }

    /// <summary>When a rule is said, in order; empty where no place of the script says it.</summary>
    public ImmutableArray<VideoTime> Of(ClauseCover cover)
    {
        VideoTime[] times = [.. Places(cover).Select(i => _times.Of(_leads.First(i)))];
        VideoTime[] heard = times.All(t => t.IsEstimated) ? [.. Heard(cover.Clause)] : [];
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

        return NearPage(cover) is { } near ? [near] : cover.Sentence >= 0 ? [cover.Sentence] : cover.Topics.Select(t => Sentences(s => s.Topic == t && !s.IsCaption).Take(1)).SelectMany(s => s);
    }

    private int? NearPage(ClauseCover cover)
    {
        LessonClause clause = cover.Clause;
        int[] topics = clause.Variant is not null ? []
            : clause.Sort == ClauseSort.Tie ? (_topicOfTies is { } ties ? [ties] : [])
            : clause.Cite?.Page is { } page ? [.. _topicsOfPage[page]] : [];
        // A lesson that gives the rule to topics itself knows better.
        bool isGiven = cover.Sentence >= 0 && topics.Contains(_speech.Sentences[cover.Sentence].Topic);
        if (topics.Length == 0 || isGiven || clause.Sort is ClauseSort.Reading or ClauseSort.Variant)
        {
            return null;
        }

        ClauseHit hit = _match.Best(clause, s => !s.IsCaption && topics.Contains(s.Topic));
        return hit.First >= 0 && ClauseMatch.IsEnough(clause, hit) ? hit.First : null;
    }

    // Where the presenter did not speak the script, the review of the recording may have heard the rule all the same.
    private IEnumerable<VideoTime> Heard(LessonClause clause)
    {
        string? section = clause.Variant is not null ? null : clause.Sort switch
        {
            ClauseSort.Law => "Laws",
            ClauseSort.Score => "Scoring",
            ClauseSort.End => "End of the game",
            _ => null,
        };
        return _heard.Where(h => h.Section == section && h.Clause == clause.Name && h.Time is not null).Select(h => VideoTime.Of(h.Time!.Value, false));
    }

    private IEnumerable<int> Sentences(Predicate<SpokenSentence> passes) => Enumerable.Range(0, _speech.Sentences.Length).Where(i => passes(_speech.Sentences[i]));

    [GeneratedRegex(@"\b[Pp]ages? (\d{1,4})\b")]
    private static partial Regex Page();

    [GeneratedRegex(@"\b(?:printing|edition)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PrintingWord();
}
