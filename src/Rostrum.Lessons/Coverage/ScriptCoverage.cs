using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Rulings.Verdicts;

namespace Rostrum.Lessons.Coverage;

/// <summary>Which topic of a lesson says which clause, and which clause none.</summary>
internal sealed class ScriptCoverage
{
    // Where more than this share of a table's numbers is said together, the rest is told row by row.
    private const double MostOfTable = 0.5;

    private readonly ScriptSpeech _speech;
    private readonly ImmutableArray<LessonClause> _clauses;
    private readonly ClauseMatch _match;
    private readonly MarkedNames _marks;
    private readonly TopicPages _pages;
    private readonly ILookup<string, int> _claimed;

    private ScriptCoverage(ScriptSpeech speech, ImmutableArray<LessonClause> clauses, ImmutableArray<CheckedClaim> claims, MarkedNames marks)
    {
        (_speech, _clauses, _marks) = (speech, clauses, marks);
        _match = new ClauseMatch(speech, clauses);
        _pages = new TopicPages(speech);
        var topicOf = speech.Lesson.Topics.SelectMany((t, i) => t.Blocks.SelectMany(b => b.Runs).OfType<LessonRun.Claim>().Select(c => (c, i)))
            .ToDictionary<(LessonRun.Claim, int), LessonRun, int>(p => p.Item1, p => p.Item2, ReferenceEqualityComparer.Instance);
        _claimed = claims.SelectMany(c => ClausesOf(c).Select(n => (n, topic: topicOf[c.Claim]))).ToLookup(p => p.n, p => p.topic, StringComparer.Ordinal);
    }

    /// <summary>How a script deals with each clause.</summary>
    public static ImmutableArray<ClauseCover> Of(ScriptSpeech speech, ImmutableArray<LessonClause> clauses, ImmutableArray<CheckedClaim> claims, MarkedNames marks)
    {
        var coverage = new ScriptCoverage(speech, clauses, claims, marks);
        ClauseCover[] covers = [.. clauses.Select(coverage.Of)];
        return [.. covers.Select(c => BySaidParts(c, covers))];
    }

    private ClauseCover Of(LessonClause clause)
    {
        ImmutableArray<int> named = _marks.TopicsOf(clause);
        Predicate<SpokenSentence> mayStand = Where(clause, named);
        ClauseHit said = _match.Best(clause, s => !s.IsCaption && mayStand(s));
        said = named.IsEmpty ? NearPage(clause, said) ?? said : said;
        ImmutableArray<int> topics = !named.IsEmpty ? named : TopicsOf(clause, said);
        if (_marks.LeavesOut(clause))
        {
            return new ClauseCover(clause, CoverStatus.LeftOut, topics);
        }

        if (IsSaid(clause, said) || !named.IsEmpty)
        {
            return Whole(new ClauseCover(clause, CoverStatus.Said, topics) { Sentence = said.First, Sentences = said.Count, Score = said.Score });
        }

        // Here a caption is among the sentences: without one the best place would be the same.
        ClauseHit shown = _match.Best(clause, mayStand);
        return ClauseMatch.IsEnough(clause, shown)
            ? new ClauseCover(clause, CoverStatus.OnlyShown, []) { Sentence = CaptionIn(shown) }
            : new ClauseCover(clause, IsNamed(clause, mayStand) ? CoverStatus.PerhapsNeverSaid : CoverStatus.NeverSaid, []) { Score = said.Score };
    }

    // A rule is often said in words that another one shares: a topic that names its page comes first. One that names no page may say any rule; one that names only others says
    // this one by chance.
    private ClauseHit? NearPage(LessonClause clause, ClauseHit best)
    {
        int[] topics = clause is { Variant: null, Cite.Page: { } page } && clause.Sort is not (ClauseSort.Tie or ClauseSort.Reading or ClauseSort.Variant) ? [.. _pages.Of(page)] : [];
        int at = best.First >= 0 ? _speech.Sentences[best.First].Topic : -1;
        if (topics.Length == 0 || topics.Contains(at))
        {
            return null;
        }

        ClauseHit near = _match.Best(clause, s => !s.IsCaption && topics.Contains(s.Topic));
        double enough = at >= 0 && _pages.NamesAny(at) ? ClauseMatch.EnoughOfChange : ClauseMatch.Enough;
        return near.First >= 0 && near.Score >= enough ? near with { Score = Math.Max(near.Score, Math.Min(best.Score, ClauseMatch.Enough)) } : null;
    }

    private bool IsSaid(LessonClause clause, ClauseHit said) => ClauseMatch.IsEnough(clause, said) || clause.Sort switch
    {
        ClauseSort.Reading => IsReadingTold(clause),
        ClauseSort.Variant => IsVariantNamed(clause),
        _ => clause.Called.Any(c => clause.Sort is ClauseSort.Rating && Says(c)),
    };

    // A checked value that names a reading tells of it; so does saying two of the readings by their names.
    private bool IsReadingTold(LessonClause clause) =>
        clause.Readings.Any(r => _claimed.Contains(ReadingKey(r))) || clause.Readings.Count(Says) > 1;

    // A variant is there once its name is said; whether its changes are, is asked clause by clause.
    private bool IsVariantNamed(LessonClause clause) => _speech.Lesson.Topics.Any(t => t.Title.Contains(clause.Name, StringComparison.OrdinalIgnoreCase)) || clause.Called.Append(clause.Name).Any(Means);

    // A sentence that holds all words of the name may speak of the rule in words of its own. Set-up and turn are spoken of under any name; a
    // tie-break is told in a word or two, so that one which is not found is not there.
    private bool IsNamed(LessonClause clause, Predicate<SpokenSentence> mayStand)
    {
        string[] stems = [.. WordStems.Of(clause.Name).Select(TableTalk.Of)];
        return clause.Sort is ClauseSort.Course
            || (clause.Sort is not (ClauseSort.Tie or ClauseSort.Variant) && stems.Length > 0
                && _speech.Meaning(stems[0]).Select(i => _speech.Sentences[i]).Any(s => !s.IsCaption && mayStand(s) && stems.All(w => s.Stems.Any(t => TableTalk.Of(t.Stem) == w))));
    }

    private bool Means(string name)
    {
        string[] stems = [.. WordStems.Of(name).Select(TableTalk.Of)];
        return stems.Length > 0 && (_speech.HeadingMeanings.Any(h => stems.All(h.Contains))
            || _speech.Meaning(stems[0]).Any(i => !_speech.Sentences[i].IsCaption && stems.All(s => _speech.Sentences[i].Stems.Any(t => TableTalk.Of(t.Stem) == s))));
    }

    private bool Says(string name)
    {
        string[] stems = [.. WordStems.Of(name)];
        return stems.Length > 0 && _speech.With(stems[0]).Any(i => !_speech.Sentences[i].IsCaption && stems.All(s => _speech.Sentences[i].Stems.Any(t => t.Stem == s)));
    }

    // A change of a variant is said where the variant is spoken of; a clause that the lesson gives to a topic, in that topic.
    private Predicate<SpokenSentence> Where(LessonClause clause, ImmutableArray<int> named)
    {
        if (!named.IsEmpty)
        {
            return s => named.Contains(s.Topic);
        }

        if (clause.Variant is not { } variant)
        {
            return _ => true;
        }

        ImmutableHashSet<int> topics = _marks.TopicsOfVariant(variant);
        return s => topics.Contains(s.Topic);
    }

    private ImmutableArray<int> TopicsOf(LessonClause clause, ClauseHit said)
    {
        IEnumerable<int> best = ClauseMatch.IsEnough(clause, said) ? [_speech.Sentences[said.First].Topic] : [];
        return [.. best.Concat(clause.Variant is null ? _claimed[$"{LessonClause.SectionOf(clause.Sort)}/{clause.Name}"] : []).Distinct().Order()];
    }

    private int CaptionIn(ClauseHit hit) =>
        Enumerable.Range(hit.First, hit.Count).First(i => _speech.Sentences[i].IsCaption);

    // A table is said when all numbers of one of its versions are said in one topic.
    private ClauseCover Whole(ClauseCover cover)
    {
        if (cover.Clause.Rows.IsEmpty)
        {
            return cover;
        }

        ImmutableArray<long>[] missing = [.. from rows in cover.Clause.Rows from topic in MayTell(cover) select rows.Where(n => !SaysNumber(topic, n)).ToImmutableArray()];
        ImmutableArray<long> least = missing.Length == 0 ? [] : missing.MinBy(m => m.Length);
        int rowsInAll = cover.Clause.Rows.Min(r => r.Length);
        return least.IsEmpty || least.Length > rowsInAll * MostOfTable ? cover : cover with { Status = CoverStatus.InPart, Missing = least };
    }

    // An example may have the words of the table and some of its rows; the table itself is where most of them are.
    private IEnumerable<int> MayTell(ClauseCover cover) => cover.Clause.Variant is null && _marks.TopicsOf(cover.Clause).IsEmpty ? Enumerable.Range(0, _speech.Lesson.Topics.Length) : cover.Topics;

    private bool SaysNumber(int topic, long number) => _speech.With($"{number}").Any(i => _speech.Sentences[i] is { IsCaption: false } sentence && sentence.Topic == topic);

    // 'Take your turn: carry, accept, burn' is said once these are.
    private static ClauseCover BySaidParts(ClauseCover cover, ClauseCover[] all)
    {
        if (cover.Status is not (CoverStatus.NeverSaid or CoverStatus.PerhapsNeverSaid) || cover.Clause.Calls.IsEmpty)
        {
            return cover;
        }

        ClauseCover[] parts = [.. all.Where(c => c.Clause.Sort is ClauseSort.Action && cover.Clause.Calls.Contains(c.Clause.Name) && c.Clause.Variant is null)];
        int told = parts.Count(p => p.Status is CoverStatus.Said or CoverStatus.LeftOut);
        return parts.Length > 0 && told * 2 >= parts.Length ? cover with { Status = CoverStatus.Said, Topics = [.. parts.SelectMany(p => p.Topics).Distinct().Order()] } : cover;
    }

    private static string ReadingKey(string reading) => $"reading/{reading}";

    // The clauses that a checked value speaks of.
    private static IEnumerable<string> ClausesOf(CheckedClaim claim) => (claim.Answer, ClaimTarget.Read(claim.Claim.Target)) switch
    {
        (ClaimAnswer.OfTally { Line: { } line }, ClaimTarget.Tally target) => target.Reading is { } reading ? [$"score/{line.Clause}", ReadingKey(reading)] : [$"score/{line.Clause}"],
        (ClaimAnswer.OfRuling { Ruling: Ruling.Illegal illegal }, _) => illegal.Breaches.Select(b => $"laws/{b.Clause}"),
        (ClaimAnswer.OfValue { Table: { } table }, _) => [$"tables/{table}"],
        _ => [],
    };
}
