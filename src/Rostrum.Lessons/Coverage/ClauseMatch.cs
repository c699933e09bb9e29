using System.Collections.Immutable;
using Rostrum.Lessons.Speech;
using Rostrum.Text;

namespace Rostrum.Lessons.Coverage;

/// <summary>How well the script says a clause.</summary>
/// <param name="Score">0 to 1: the weight of the clause's stems that stand together in the best place.</param>
/// <param name="First">The first sentence of that place; -1 for none.</param>
/// <param name="Count">How many sentences it takes.</param>
internal readonly record struct ClauseHit(double Score, int First, int Count)
{
    /// <summary>Nothing in common.</summary>
    public static ClauseHit None { get; } = new(0, -1, 0);
}

/// <summary>Finds where a script says a clause: up to three sentences of one paragraph or list that hold enough of its words.</summary>
/// <remarks>A stem weighs the more the fewer clauses of the sheet use it; one that only the heading says weighs half; each further sentence costs
/// a little. The limits were set on the lesson of Kiln Night and the right lessons of the tests, and what they find and miss is measured there.</remarks>
internal sealed class ClauseMatch
{
    /// <summary>From here on a clause is said.</summary>
    public const double Enough = 0.40;

    /// <summary>From here on a change of a variant is said: it is sought only where the variant is spoken of.</summary>
    public const double EnoughOfChange = 0.30;

    // A tie-break is two words long: both have to be said.
    private const double EnoughOfTie = 0.55;

    private const int LongestPlace = 3;
    private const double CostOfSentence = 0.04;
    private const double CostOfSpread = 0.15;
    private const double WeightOfHeading = 0.5;
    private const double GainOfName = 0.15;
    private const double CostOfNoPoints = 0.4;
    private const double CostOfNoName = 0.65;

    // As many as fit a machine word; a sentence of a sheet has ten.
    private const int MostStems = 64;

    private static readonly ImmutableHashSet<string> OfPoints = Stems("point score worth make give cost total add pay");
    private static readonly ImmutableHashSet<string> OfTies = Stems("tie equal same level draw share shared otherwise");

    private static readonly HashSet<string> OfSharing = ["share", "shares", "shared", "sharing", "split", "draw", "together", "joint", "jointly", "both"];
    private static readonly HashSet<string> OfEquals = ["same", "equal", "equals", "equally", "tie", "tied", "ties", "level", "even", "still", "win", "wins", "victory"];

    private static readonly ImmutableHashSet<string> OfWinning = Stems("win winner victory");

    private static readonly ImmutableHashSet<string> OfBeginning = Stems("begin setup prepare ready");

    private readonly ScriptSpeech _speech;
    private readonly Dictionary<string, double> _weights;

    public ClauseMatch(ScriptSpeech speech, ImmutableArray<LessonClause> clauses)
    {
        _speech = speech;
        _weights = clauses.SelectMany(c => Meanings($"{c.Name} {c.Says}")).GroupBy(s => s, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => Math.Log(1 + ((double)clauses.Length / g.Count())), StringComparer.Ordinal);
    }

    /// <summary>The best place.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="mayStand">Which sentences count.</param>
    public ClauseHit Best(LessonClause clause, Predicate<SpokenSentence> mayStand)
    {
        ClauseHit best = Best(StemsOf(clause), clause, mayStand);
        // Of a changed clause only what is new has to be said, beside something that tells what is spoken of.
        string[] fresh = clause.Before is { } before ? [.. StemsOf(clause).Except(Meanings(before), StringComparer.Ordinal)] : [];
        return fresh.Length > 0 && Best(fresh, clause, mayStand) is { Score: > 0.9 } anew && anew.Score > best.Score ? anew with { Score = Math.Max(best.Score, Enough) } : best;
    }

    /// <summary>True where so much of a clause is said that it counts as said.</summary>
    public static bool IsEnough(LessonClause clause, ClauseHit hit) => hit.Score >= (clause.Sort == ClauseSort.Tie ? EnoughOfTie : clause.Variant is null ? Enough : EnoughOfChange);

    /// <summary>The stems that a clause is known by.</summary>
    public static string[] StemsOf(LessonClause clause)
    {
        string[] says = [.. Meanings(clause.Says).Take(MostStems)];
        return says.Length > 0 ? says : [.. Meanings(clause.Name).Take(MostStems)];
    }

    private static IEnumerable<string> Meanings(string words) => WordStems.Of(words).Select(TableTalk.Of).Distinct(StringComparer.Ordinal);

    private ClauseHit Best(string[] stems, LessonClause clause, Predicate<SpokenSentence> mayStand)
    {
        double[] weights = [.. stems.Select(s => _weights.GetValueOrDefault(s, 1))];
        SortedDictionary<int, ulong> held = Held(stems, mayStand);
        ClauseHit near = Near(held, stems, weights, clause);
        return clause.Sort == ClauseSort.Course && near.Score < Enough ? Spread(held, weights) is var spread && spread.Score > near.Score ? spread : near : near;
    }

    // A set-up or a turn is told over many sentences of a topic.
    private ClauseHit Spread(SortedDictionary<int, ulong> held, double[] weights)
    {
        ClauseHit best = ClauseHit.None;
        foreach (IGrouping<int, KeyValuePair<int, ulong>> topic in held.GroupBy(h => _speech.Sentences[h.Key].Topic))
        {
            ulong place = topic.Aggregate(0UL, (all, h) => all | h.Value);
            double score = (weights.Where((_, i) => (place & (1UL << i)) != 0).Sum() / weights.Sum()) - CostOfSpread;
            best = score > best.Score ? new ClauseHit(score, topic.Min(h => h.Key), topic.Max(h => h.Key) - topic.Min(h => h.Key) + 1) : best;
        }

        return best;
    }

    private ClauseHit Near(SortedDictionary<int, ulong> held, string[] stems, double[] weights, LessonClause clause)
    {
        double all = weights.Sum();
        string[] name = [.. Meanings(clause.Name)];
        ClauseHit best = ClauseHit.None;
        foreach (int first in held.Keys)
        {
            ulong place = 0;
            for (int count = 1; count <= LongestPlace && IsOneBlock(first, first + count - 1); count++)
            {
                place |= held.GetValueOrDefault(first + count - 1);
                double score = ScoreOf(place, first, count, stems, weights) / all;
                score += Context(clause, first, count, name) - (CostOfSentence * (count - 1));
                best = score > best.Score ? new ClauseHit(score, first, count) : best;
            }
        }

        return best with { Score = Math.Min(best.Score, 1) };
    }

    // For each sentence that holds any, which of the stems it holds, a bit for each.
    private SortedDictionary<int, ulong> Held(string[] stems, Predicate<SpokenSentence> mayStand)
    {
        var held = new SortedDictionary<int, ulong>();
        for (int i = 0; i < stems.Length; i++)
        {
            foreach (int sentence in _speech.Meaning(stems[i]).Where(s => mayStand(_speech.Sentences[s])))
            {
                held[sentence] = held.GetValueOrDefault(sentence) | (1UL << i);
            }
        }

        return held;
    }

    private bool IsOneBlock(int first, int last) => last < _speech.Sentences.Length && _speech.Sentences[first].Block == _speech.Sentences[last].Block;

    private double ScoreOf(ulong place, int first, int count, string[] stems, double[] weights)
    {
        ImmutableHashSet<string> heading = _speech.HeadingMeanings[_speech.Sentences[first].Topic];
        double score = 0;
        for (int i = 0; i < stems.Length; i++)
        {
            score += (place & (1UL << i)) != 0 ? weights[i] : heading.Contains(stems[i]) ? weights[i] * WeightOfHeading : 0;
        }

        return score;
    }

    // A scoring clause is told by its name beside a word of points, a set-up beside one of beginning; a tie-break is none without a word of ties.
    private double Context(LessonClause clause, int first, int count, string[] name) => clause.Sort switch
    {
        ClauseSort.Tie when name.All(OfTies.Contains) => IsShared(first, count) ? 0 : -1,
        ClauseSort.Tie => !Holds(OfTies, first, count) ? -1 : Holds(OfWinning, first, count) ? GainOfName : 0,
        ClauseSort.Course when clause.Name == "set-up" && Holds(OfBeginning, first, count) => GainOfName,
        ClauseSort.Law or ClauseSort.End when IsNamed(name, first, count) => GainOfName,
        ClauseSort.Score => (IsNamed(name, first, count) ? GainOfName : -CostOfNoName) - (Holds(OfPoints, first, count) ? 0 : CostOfNoPoints),
        _ => 0,
    };

    // 'If even that is equal, they share the win', or in a sentence of its own behind one of equal players; 'we share one kiln' is none.
    private bool IsShared(int first, int count)
    {
        int from = first > 0 && IsOneBlock(first - 1, first) ? first - 1 : first;
        bool Says(int at, int sentences, HashSet<string> words) =>
            _speech.Sentences.Skip(at).Take(sentences).SelectMany(s => Prose.WordsOf(s.Words)).Any(w => words.Contains(w.ToLowerInvariant().Trim('.', ',', '?', '!', ':', ';')));
        return Says(first, count, OfSharing) && Says(from, first + count - from, OfEquals);
    }

    private bool IsNamed(string[] name, int first, int count) =>
        name.All(n => _speech.HeadingMeanings[_speech.Sentences[first].Topic].Contains(n) || _speech.Sentences.AsSpan().Slice(first, count).ToArray().Any(s => s.Stems.Any(t => TableTalk.Of(t.Stem) == n)));

    private bool Holds(ImmutableHashSet<string> words, int first, int count) =>
        _speech.Sentences.AsSpan().Slice(first, count).ToArray().Any(s => s.Stems.Any(t => words.Contains(TableTalk.Of(t.Stem))));

    private static ImmutableHashSet<string> Stems(string words) => [.. Meanings(words)];
}
