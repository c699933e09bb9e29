using System.Collections.Immutable;

namespace Rostrum.Lessons.Review;

/// <summary>What became of a passage of the script.</summary>
internal enum Passage
{
    /// <summary>Nobody can tell.</summary>
    Unknown,

    /// <summary>It was said.</summary>
    Said,

    /// <summary>It was left out, if it was not said in other words elsewhere.</summary>
    PerhapsLeftOut,

    /// <summary>It was left out.</summary>
    LeftOut,
}

/// <summary>What of a script was not said: passages that tell a clause, rows of tables.</summary>
/// <remarks>Only where the rest of the topic is read from the script: somebody who speaks freely has left nothing out by saying it otherwise.</remarks>
internal sealed class ScriptPassages
{
    // A row is said in so many words.
    private const int Round = 6;

    // A passage was left out where the rest of its topic is read from the script and hardly any of it is heard; where the script is told in other words, where nothing of it is heard.
    private const double LeftOutOfRead = 0.46;
    private const double ReadInPart = 0.45;
    private const double LeftOutInPart = 0.2;
    private const double LeftOutOfScript = 0.04;
    private const double PassageSaid = 0.6;

    // Bullets are not read out: a talk from them is far longer.
    private const double LengthOfScript = 0.5;

    private const int FewestOfTopic = 30;
    private const double LeastFollowed = 0.35;
    private const double SaidOtherwise = 0.6;
    private const double OfNumber = 0.4;
    private const int FewestBeside = 2;
    private const double OfBeside = 2;
    private const double NearlyBest = 0.8;
    private const int FewestRows = 2;

    private readonly Statements _statements;
    private readonly ScriptAlignment _script;
    private readonly ImmutableArray<SpokenToken> _heard;
    private readonly Dictionary<string, int> _often;
    private readonly HashSet<int> _heardSentences;
    private readonly bool _isReader;
    private readonly bool _isScript;
    private readonly Lazy<ILookup<(long, long), int[]>> _pairs;

    /// <summary>Looks at a script that was laid beside a recording.</summary>
    public ScriptPassages(Statements statements, ScriptAlignment script)
    {
        (_statements, _script, _heard) = (statements, script, script.Heard);
        _heardSentences = [.. Enumerable.Range(0, script.Tokens.Length).GroupBy(i => script.Tokens[i].Sentence).Where(g => script.Followed(g) >= LeastFollowed).Select(g => g.Key)];
        _isReader = script.Read([.. Enumerable.Range(0, script.Tokens.Length).Where(i => _heardSentences.Contains(script.Tokens[i].Sentence))]) >= ScriptAlignment.ReadClosely;
        _isScript = script.Tokens.Length >= LengthOfScript * script.Heard.Length;
        _pairs = new Lazy<ILookup<(long, long), int[]>>(() => Pairs().ToLookup(p => p.Numbers, p => p.Places));
        _often = _heard.Where(t => t.Stem.Length > 0).GroupBy(t => t.Stem).ToDictionary(g => g.Key, g => g.Count());
    }

    /// <summary>Whether the passage of a rule was left out or said.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="all">All rules: some may be told in the same breath.</param>
    /// <returns>What became of it, and the token at which a passage begins that was said; -1 for none.</returns>
    public (Passage Was, int At) Of(SpokenRule rule, ImmutableArray<SpokenRule> all)
    {
        if (!_statements.Script.Places.TryGetValue(rule.Key, out (int First, int Count) place))
        {
            return (Passage.Unknown, -1);
        }

        SpokenRule[] beside = [.. all.Where(r => r.Key != rule.Key && _statements.Script.Places.TryGetValue(r.Key, out (int First, int Count) other) && other.First < place.First + place.Count && place.First < other.First + other.Count).DistinctBy(r => r.Key)];
        int[] passage = [.. Enumerable.Range(0, _script.Tokens.Length).Where(i => _script.Tokens[i].Sentence >= place.First && _script.Tokens[i].Sentence < place.First + place.Count)];
        passage = beside.Length == 0 || passage.Length == 0 ? passage : Best(rule, passage);
        (int At, double Weight)[] telling = [.. passage.Where(_script.IsTelling).Select(i => (i, Weight(rule, beside, i))).Where(t => t.Item2 > 0)];
        if (telling.Length == 0)
        {
            return (Passage.Unknown, -1);
        }

        (int At, double Weight)[] heard = Together(telling, 2 * passage.Length);
        double said = heard.Sum(t => t.Weight) / telling.Sum(t => t.Weight);
        if (said >= PassageSaid)
        {
            return (Passage.Said, _script.HeardAt[heard[0].At]);
        }

        double read = ReadRound(_script.Tokens[passage[0]].Topic, passage);
        double most = read >= ScriptAlignment.ReadClosely ? LeftOutOfRead : read >= ReadInPart ? LeftOutInPart : _isScript ? LeftOutOfScript : -1;
        return (said > most || IsSaidOtherwise(telling) ? Passage.Unknown : _isReader || read >= ScriptAlignment.ReadClosely ? Passage.LeftOut : Passage.PerhapsLeftOut, -1);
    }

    // Of a passage that tells several rules, the sentences with most of the words of one.
    private int[] Best(SpokenRule rule, int[] passage)
    {
        int[][] sentences = [.. passage.GroupBy(i => _script.Tokens[i].Sentence).Select(g => g.ToArray())];
        double[] told = [.. sentences.Select(s => s.SelectMany(i => RuleIdeas.Of(_script.Tokens[i].Token)).Where(rule.Ideas.ContainsKey).Distinct().Sum(RuleIdeas.Weight))];
        return [.. sentences.Where((_, k) => told[k] >= NearlyBest * told.Max()).SelectMany(s => s)];
    }

    // What a word of a passage tells of a rule: nothing where the rule has no such word, less where others that are told here have it or where it is heard all the time.
    private double Weight(SpokenRule rule, SpokenRule[] beside, int at) =>
        RuleIdeas.Of(_script.Tokens[at].Token).Where(i => !rule.IsTie || !SpokenRule.OfTies.Contains(i)).Sum(i => rule.Ideas.GetValueOrDefault(i) / (1 + (OfBeside * beside.Count(r => r.Ideas.ContainsKey(i))))) * Telling(at);

    // The heard words of a passage that stand closest together: what is heard far off belongs to something else.
    private (int At, double Weight)[] Together((int At, double Weight)[] telling, int reach)
    {
        (int At, double Weight)[] same = [.. telling.Where(t => _script.IsSame(t.At) && Neighbours(t.At) >= FewestBeside).OrderBy(t => _script.HeardAt[t.At])];
        return same.Select((from, k) => same.Skip(k).TakeWhile(t => _script.HeardAt[t.At] <= _script.HeardAt[from.At] + reach).ToArray()).MaxBy(found => found.Sum(t => t.Weight)) ?? [];
    }

    // A word that is heard all the time tells little of one passage.
    private double Telling(int at) => _script.Tokens[at].Token is { Number: null, Stem: var stem } ? 1 / Math.Sqrt(1 + _often.GetValueOrDefault(stem)) : OfNumber;

    // Between what stands before and behind it in the script the same is said in other words.
    private bool IsSaidOtherwise((int At, double Weight)[] telling)
    {
        (int first, int last) = (telling[0].At, telling[^1].At);
        int topic = _script.Tokens[first].Topic;
        int before = Enumerable.Range(1, first).Select(k => first - k).FirstOrDefault(i => _script.Tokens[i].Topic == topic && IsPlainlyHeard(i), -1);
        int behind = Enumerable.Range(last + 1, _script.Tokens.Length - last - 1).FirstOrDefault(i => _script.Tokens[i].Topic == topic && IsPlainlyHeard(i), -1);
        int reach = 2 * (last - first + 1);
        int from = before >= 0 ? _script.HeardAt[before] + 1 : behind >= 0 ? _script.HeardAt[behind] - reach : 0;
        int to = behind >= 0 ? _script.HeardAt[behind] : before >= 0 ? _script.HeardAt[before] + 1 + reach : 0;
        HashSet<string> gap = [.. _heard.Skip(from).Take(Math.Min(Math.Max(0, to - from), reach)).SelectMany(RuleIdeas.Of)];
        return telling.Where(t => RuleIdeas.Of(_script.Tokens[t.At].Token).Any(gap.Contains)).Sum(t => t.Weight) >= SaidOtherwise * telling.Sum(t => t.Weight);
    }

    // As written, with another word of the script beside it.
    private bool IsPlainlyHeard(int at) => _script.IsSame(at) && _script.IsTelling(at) && Neighbours(at) > 0;

    // How many of the words right beside it in the script are heard beside it.
    private int Neighbours(int at) =>
        Enumerable.Range(at - 3, 7).Count(i => i >= 0 && i != at && i < _script.Tokens.Length && _script.IsSame(i) && Math.Abs(_script.HeardAt[i] - _script.HeardAt[at]) <= Round);

    // How closely the sentences of a topic are read that are heard at all; where those are few, the whole script tells more.
    private double ReadRound(int topic, int[] without)
    {
        int[] others = [.. Enumerable.Range(0, _script.Tokens.Length).Except(without).Where(i => _heardSentences.Contains(_script.Tokens[i].Sentence))];
        int[] round = [.. others.Where(i => _script.Tokens[i].Topic == topic)];
        return _script.Read(round.Length >= FewestOfTopic ? round : others);
    }

    /// <summary>The rows of a table that the script has and nobody heard, where others of it are heard.</summary>
    /// <returns>The keys, and the first heard number of the rows around.</returns>
    public (ImmutableArray<long> Keys, int From) MissingRows(ImmutableArray<(long Key, long Value)> rows)
    {
        var told = rows.Select(r => (r.Key, Places: PlaceOf(r))).Where(r => r.Places is not null).Select(r => (r.Key, Places: r.Places!)).ToArray();
        int[] heard = [.. told.Where(r => r.Places.All(_script.IsSame)).Select(r => _script.HeardAt[r.Places.Min()])];
        return heard.Length < FewestRows ? ([], -1)
            : ([.. told.Where(r => r.Places.All(i => _script.HeardAt[i] < 0) && ReadRound(_script.Tokens[r.Places[0]].Topic, r.Places) >= ReadInPart).Select(r => r.Key)], heard.Min());
    }

    // Key and value of a row, in either order.
    private int[]? PlaceOf((long Key, long Value) row) =>
        row.Key == row.Value ? null : _pairs.Value[row].Concat(_pairs.Value[(row.Value, row.Key)]).MinBy(p => p[0]);

    // Two numbers in one sentence, nothing numbered between them.
    private IEnumerable<((long, long) Numbers, int[] Places)> Pairs()
    {
        int[] numbers = [.. Enumerable.Range(0, _script.Tokens.Length).Where(i => _script.Tokens[i].Token.Number is not null)];
        return from pair in numbers.Zip(numbers.Skip(1))
               let one = _script.Tokens[pair.First]
               let other = _script.Tokens[pair.Second]
               where pair.Second - pair.First <= Round && one.Sentence == other.Sentence && one.Token.Amount is not null && other.Token.Amount is not null
               select ((one.Token.Amount!.Value, other.Token.Amount!.Value), new[] { pair.First, pair.Second });
    }
}
