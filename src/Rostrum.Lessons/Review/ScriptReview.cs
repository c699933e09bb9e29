using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Claims;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Review;

/// <summary>Holds a recording against the script that was spoken: another number in the place of the script's, passages that were left out.</summary>
/// <remarks>The script itself was held against the sheet by the check before filming, so what is heard as the script has it is right. Where the presenter speaks freely it tells nothing.</remarks>
internal sealed class ScriptReview
{
    /// <summary>The name in place of a clause where only the script says it.</summary>
    public const string OfScript = "the lesson";

    // A number is the script's where most of the words round it are.
    private const int Round = 6;
    private const double PlainlyFollowed = 0.6;
    private const double Followed = 0.45;
    private const int FewestRound = 3;

    // A number belongs to a topic that is spoken of at all.
    private const double TopicInPart = 0.55;

    // A passage was left out where the rest of its topic is read from the script and hardly any of it is heard.
    private const double TopicRead = 0.45;
    private const double PassageLeftOut = 0.35;
    private const double SaidOtherwise = 0.5;
    private const double OfNumber = 0.4;
    private const double NearlyBest = 0.8;
    private const int FewestRows = 2;
    private const double PassageSaid = 0.6;

    private readonly ScriptAlignment _script;
    private readonly ScriptWords _words;
    private readonly ImmutableArray<SpokenToken> _heard;
    private readonly ImmutableArray<ReadClause> _clauses;
    private readonly Dictionary<int, double> _topics;
    private readonly Dictionary<string, int> _often;

    /// <summary>Lays the script beside what was said.</summary>
    public ScriptReview(ScriptWords words, ImmutableArray<ReadClause> clauses, ImmutableArray<SpokenToken> heard)
    {
        (_words, _clauses, _heard) = (words, clauses, heard);
        _script = new ScriptAlignment(words.Speech!, heard);
        _often = heard.Where(t => t.Stem.Length > 0).GroupBy(t => t.Stem).ToDictionary(g => g.Key, g => g.Count());
        _topics = Enumerable.Range(0, _script.Tokens.Length).GroupBy(TopicAt).ToDictionary(g => g.Key, g => _script.Followed(g));
        Right = [.. Enumerable.Range(0, _script.Tokens.Length).Where(i => _script.Tokens[i].Token.Number is not null && _script.IsSame(i) && Near(i) >= Followed && TopicOf(i) >= TopicInPart).Select(i => _script.HeardAt[i])];
    }

    /// <summary>Heard numbers that are those of the script.</summary>
    public ImmutableHashSet<int> Right { get; }

    /// <summary>Numbers that were said in the place of the script's.</summary>
    /// <returns>Which heard word, and the finding.</returns>
    public IEnumerable<(int At, long Right, Citation? Cite, string Clause, string Sheet, double Confidence, string Because)> WrongNumbers()
    {
        for (int i = 0; i < _script.Tokens.Length; i++)
        {
            int at = _script.HeardAt[i];
            if (_script.Tokens[i] is not { Token.Number: { } right } || at < 0 || _script.IsSame(i) || _heard[at].IsTakenBack || IsPronoun(i, at))
            {
                continue;
            }

            double near = Near(i);
            if (near >= Followed && TopicOf(i) >= TopicInPart)
            {
                (string clause, string sheet, Citation? cite) = Told(_script.Tokens[i]);
                yield return (at, right, cite, clause, sheet, near >= PlainlyFollowed && (_heard[at].Number is not null || IsBetween(i, at)) ? 0.95 : 0.6, string.Create(CultureInfo.InvariantCulture, $"the lesson says {right} here, and the words round it are those of the lesson"));
            }
        }
    }

    /// <summary>The rows of a table that the script has and nobody heard, where others of it are heard.</summary>
    /// <returns>The keys, and the first heard number of the rows around.</returns>
    public (ImmutableArray<long> Keys, int From) MissingRows(ImmutableArray<(long Key, long Value)> rows)
    {
        var told = rows.Select(r => (r.Key, Places: PlaceOf(r))).Where(r => r.Places is not null).Select(r => (r.Key, Places: r.Places!)).ToArray();
        int[] heard = [.. told.Where(r => r.Places.All(_script.IsSame)).Select(r => _script.HeardAt[r.Places.Min()])];
        return heard.Length < FewestRows ? ([], -1)
            : ([.. told.Where(r => r.Places.All(i => _script.HeardAt[i] < 0) && IsRead(TopicAt(r.Places[0]), r.Places)).Select(r => r.Key)], heard.Min());
    }

    // Key and value of a row in one sentence, in either order, nothing numbered between them.
    private int[]? PlaceOf((long Key, long Value) row)
    {
        for (int i = 0; i < _script.Tokens.Length; i++)
        {
            int next = Enumerable.Range(i + 1, Round).FirstOrDefault(k => k < _script.Tokens.Length && _script.Tokens[k].Token.Number is not null, -1);
            if (next > 0 && _script.Tokens[i].Sentence == _script.Tokens[next].Sentence && _script.Tokens[i].Token.Amount is { } one && _script.Tokens[next].Token.Amount is { } other && ((one, other) == row || (other, one) == row) && one != other)
            {
                return [i, next];
            }
        }

        return null;
    }

    /// <summary>True where a word was said in the place in which the script has another one: 'a tile goes on the lowest shelf' where it has 'a ware'.</summary>
    /// <param name="start">When the word was said.</param>
    /// <param name="name">What the script would have.</param>
    public bool IsInPlaceOf(TimeSpan start, string name)
    {
        int at = _heard.ToList().FindIndex(t => t.Start == start);
        HashSet<string> stems = [.. Statements.Spoken(name).Select(t => t.Stem)];
        bool IsMissing(int i) => i >= 0 && i < _script.Tokens.Length && _script.HeardAt[i] < 0 && stems.Contains(_script.Tokens[i].Token.Stem);
        return at >= 0 && Enumerable.Range(0, _script.Tokens.Length).Any(i => _script.IsSame(i) && ((_script.HeardAt[i] == at - 1 && IsMissing(i + 1)) || (_script.HeardAt[i] == at + 1 && IsMissing(i - 1))));
    }

    // 'Plates score for each': who wrote that heard four, where the words on both sides are the script's.
    private bool IsBetween(int at, int heard) => at > 0 && at + 1 < _script.Tokens.Length && _script.IsSame(at - 1) && _script.HeardAt[at - 1] == heard - 1 && _script.IsSame(at + 1) && _script.HeardAt[at + 1] == heard + 1;

    // 'The best flat one wants three' has no number in the place of 'the flat with a four wants three': 'one' counts only right behind the script's own words.
    private bool IsPronoun(int at, int heard) => _heard[heard].Text == "one" && !Enumerable.Range(at - 2, 2).Any(i => i >= 0 && _script.IsSame(i) && _script.HeardAt[i] == heard - 1);

    /// <summary>Whether the passage of a clause was left out or said; null where nobody can tell.</summary>
    /// <returns>True for left out; the token at which the passage begins, -1 for none.</returns>
    public (bool IsLeftOut, int At)? Passage((string Section, string Name) clause)
    {
        if (!_words.Places.TryGetValue(clause, out (int First, int Count) place))
        {
            return null;
        }

        int[] telling = Own(clause, place);
        if (telling.Length == 0)
        {
            return null;
        }

        HashSet<int> sentences = [.. telling.Select(i => _script.Tokens[i].Sentence)];
        int[] passage = [.. Enumerable.Range(0, _script.Tokens.Length).Where(i => sentences.Contains(_script.Tokens[i].Sentence))];
        int[] heard = Together(telling, 2 * passage.Length);
        double said = heard.Sum(Telling) / telling.Sum(Telling);
        if (said >= PassageSaid)
        {
            return (false, _script.HeardAt[heard[0]]);
        }

        int topic = _words.Speech!.Sentences[place.First].Topic;
        return IsRead(topic, passage) && said < PassageLeftOut && !IsSaidOtherwise(passage, telling) ? (true, -1) : null;
    }

    // The words of a passage that tell a clause: where others are told in the same breath, those of the sentence that tells it best.
    private int[] Own((string Section, string Name) clause, (int First, int Count) place)
    {
        bool isShared = _words.Places.Any(p => p.Key != clause && p.Value.First < place.First + place.Count && place.First < p.Value.First + p.Value.Count);
        HashSet<string> ideas = isShared ? IdeasOf(clause) : [];
        int[][] sentences = [.. Enumerable.Range(0, _script.Tokens.Length).Where(i => _script.Tokens[i].Sentence >= place.First && _script.Tokens[i].Sentence < place.First + place.Count).GroupBy(i => _script.Tokens[i].Sentence).Select(g => g.ToArray())];
        double[] told = [.. sentences.Select(s => s.SelectMany(i => RuleIdeas.Of(_script.Tokens[i].Token)).Where(ideas.Contains).Distinct().Sum(RuleIdeas.Weight))];
        return [.. sentences.Where((_, k) => told[k] >= NearlyBest * told.Max()).SelectMany(s => s).Where(_script.IsTelling)];
    }

    private HashSet<string> IdeasOf((string Section, string Name) clause) =>
        [.. Statements.Spoken(_clauses.FirstOrDefault(c => c.Section == clause.Section && c.Name == clause.Name)?.Says ?? clause.Name).SelectMany(RuleIdeas.Of)];

    // The heard words of a passage that stand closest together: what is heard far off belongs to something else.
    private int[] Together(int[] passage, int reach)
    {
        int[] same = [.. passage.Where(_script.IsSame).OrderBy(i => _script.HeardAt[i])];
        return same.Select((from, k) => same.Skip(k).TakeWhile(i => _script.HeardAt[i] <= _script.HeardAt[from] + reach).ToArray()).MaxBy(found => found.Sum(Telling)) ?? [];
    }

    // A word that is heard all the time tells little of one passage.
    private double Telling(int at) => _script.Tokens[at].Token is { Number: null, Stem: var stem } ? 1 / Math.Sqrt(1 + _often.GetValueOrDefault(stem)) : OfNumber;

    // Between what stands before and behind it in the script the same is said in other words.
    private bool IsSaidOtherwise(int[] passage, int[] telling)
    {
        int topic = TopicAt(passage[0]);
        int before = Enumerable.Range(1, passage[0]).Select(k => passage[0] - k).FirstOrDefault(i => TopicAt(i) == topic && IsPlainlyHeard(i), -1);
        int behind = Enumerable.Range(passage[^1] + 1, _script.Tokens.Length - passage[^1] - 1).FirstOrDefault(i => TopicAt(i) == topic && IsPlainlyHeard(i), -1);
        int reach = 2 * passage.Length;
        int from = before >= 0 ? _script.HeardAt[before] + 1 : behind >= 0 ? _script.HeardAt[behind] - reach : 0;
        int to = behind >= 0 ? _script.HeardAt[behind] : before >= 0 ? _script.HeardAt[before] + 1 + reach : 0;
        HashSet<string> gap = [.. _heard.Skip(from).Take(Math.Min(Math.Max(0, to - from), 2 * reach)).SelectMany(RuleIdeas.Of)];
        return telling.Where(i => RuleIdeas.Of(_script.Tokens[i].Token).Any(gap.Contains)).Sum(Telling) >= SaidOtherwise * telling.Sum(Telling);
    }

    // As written, with another word of the script beside it.
    private bool IsPlainlyHeard(int at) => _script.IsSame(at) && _script.IsTelling(at)
        && Enumerable.Range(at - 3, 7).Any(i => i >= 0 && i != at && i < _script.Tokens.Length && _script.IsSame(i) && Math.Abs(_script.HeardAt[i] - _script.HeardAt[at]) <= Round);

    private bool IsRead(int topic, int[] without) => Read([.. Enumerable.Range(0, _script.Tokens.Length).Where(i => TopicAt(i) == topic && !without.Contains(i))]) >= TopicRead;

    // Of two words that follow each other in the script, how often both are heard one right behind the other: high for somebody who reads, low for somebody who has bullets before them.
    private double Read(IReadOnlyList<int> of) =>
        of.Count < 2 ? 0 : (double)of.Zip(of.Skip(1)).Count(p => _script.IsSame(p.First) && _script.IsSame(p.Second) && _script.HeardAt[p.Second] - _script.HeardAt[p.First] is 1 or 2) / (of.Count - 1);

    private int TopicAt(int at) => _words.Speech!.Sentences[_script.Tokens[at].Sentence].Topic;

    // How much of its topic is heard as written.
    private double TopicOf(int at) => _topics[TopicAt(at)];

    // Of the words round a number, how many are heard as written.
    private double Near(int at)
    {
        int[] round = [.. Enumerable.Range(at - Round, (2 * Round) + 1).Where(i => i >= 0 && i != at && i < _script.Tokens.Length && Math.Abs(_script.Tokens[i].Sentence - _script.Tokens[at].Sentence) <= 1)];

        // What is heard far off belongs to something else, however it is laid.
        bool IsBeside(int i) => _script.IsSame(i) && Math.Abs(_script.HeardAt[i] - _script.HeardAt[at]) <= 2 * Round;
        return round.Count(i => IsBeside(i) && _script.IsTelling(i)) < FewestRound ? 0 : (double)round.Count(IsBeside) / round.Length;
    }

    private (string Clause, string Sheet, Citation? Cite) Told(ScriptToken token)
    {
        string sentence = _words.Speech!.Sentences[token.Sentence].Words;
        (string? name, string section) = token.Claim is null ? (null, "") : ClaimTarget.Read(token.Claim.Target) switch
        {
            ClaimTarget.Fact fact => (fact.Name, "Facts"),
            ClaimTarget.Tally { Clause: not "total" } tally => (tally.Clause, "Scoring"),
            _ => ((string?)null, ""),
        };
        return name is not null && _clauses.FirstOrDefault(c => c.Name == name && c.Section == section) is { } clause
            ? (clause.Name, section == "Facts" ? clause.Says : $"{clause.Says} In the lesson: {sentence}", clause.Cite)
            : (OfScript, sentence, null);
    }
}
