using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Claims;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Review;

/// <summary>A number that was said in the place of the script's.</summary>
/// <param name="At">Which heard word.</param>
/// <param name="Right">The number of the script.</param>
/// <param name="Clause">The clause that it states; <see cref="ScriptReview.OfScript"/> for none.</param>
/// <param name="Sheet">What the sheet says, or the sentence of the script.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
/// <param name="Confidence">How sure it is, 0 to 1.</param>
/// <param name="Because">Why it is taken for wrong.</param>
internal sealed record ScriptNumber(int At, long Right, string Clause, string Sheet, Citation? Cite, double Confidence, string Because);

/// <summary>Holds a recording against the script that was spoken: another number in the place of the script's, another name.</summary>
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

    // A sentence of the script states a number of the sheet where both fit plainly.
    private const double LeastTold = 0.5;

    // Where the script is read, what stands among words of nobody's script is an aside.
    private const int FewestOfAside = 4;

    private readonly Statements _statements;
    private readonly ScriptAlignment _script;
    private readonly ImmutableArray<SpokenToken> _heard;
    private readonly Dictionary<int, double> _topics;
    private readonly Dictionary<int, int> _sameAt;
    private readonly Lazy<Dictionary<TimeSpan, int>> _places;
    private readonly bool _isRead;
    private readonly Lazy<NumberLinks> _links;

    /// <summary>Looks at a script that was laid beside a recording.</summary>
    public ScriptReview(Statements statements, ScriptAlignment script)
    {
        (_statements, _script, _heard) = (statements, script, script.Heard);
        _topics = Enumerable.Range(0, _script.Tokens.Length).GroupBy(i => _script.Tokens[i].Topic).ToDictionary(g => g.Key, g => _script.Followed(g));
        _sameAt = Enumerable.Range(0, script.Tokens.Length).Where(script.IsSame).DistinctBy(i => script.HeardAt[i]).ToDictionary(i => script.HeardAt[i]);
        _places = new Lazy<Dictionary<TimeSpan, int>>(() => Enumerable.Range(0, script.Heard.Length).DistinctBy(i => script.Heard[i].Start).ToDictionary(i => script.Heard[i].Start));
        _isRead = script.Read([.. Enumerable.Range(0, script.Tokens.Length)]) >= ScriptAlignment.ReadClosely;
        _links = new Lazy<NumberLinks>(() => new NumberLinks(statements, [.. script.Tokens.Select(t => t.Token)]));
        Right = [.. Enumerable.Range(0, _script.Tokens.Length).Where(i => _script.Tokens[i].Token.Number is not null && _script.IsSame(i) && Near(i) >= Followed && TopicOf(i) >= TopicInPart).Select(i => _script.HeardAt[i])];
    }

    /// <summary>Heard numbers that are those of the script.</summary>
    public ImmutableHashSet<int> Right { get; }

    /// <summary>True for a number said by the way, of a cat or a kettle: the script is read, and hardly a word round it is the script's.</summary>
    public bool IsAside(int heard) => _isRead && Enumerable.Range(heard - Round, (2 * Round) + 1).Count(_sameAt.ContainsKey) < FewestOfAside;

    /// <summary>Numbers that were said in the place of the script's.</summary>
    public IEnumerable<ScriptNumber> WrongNumbers()
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
                (string clause, string sheet, Citation? cite) = Told(i);
                yield return new ScriptNumber(at, right, clause, sheet, cite, near >= PlainlyFollowed && (_heard[at].Number is not null || IsBetween(i, at)) ? 0.95 : 0.6, string.Create(CultureInfo.InvariantCulture, $"the lesson says {right} here, and the words round it are those of the lesson"));
            }
        }
    }

    /// <summary>True where a word was said in the place in which the script has another one: 'a tile goes on the lowest shelf' where it has 'a ware'.</summary>
    /// <param name="start">When the word was said.</param>
    /// <param name="name">What the script would have.</param>
    public bool IsInPlaceOf(TimeSpan start, string name)
    {
        HashSet<string> stems = [.. Statements.Spoken(name).Select(t => t.Stem)];
        bool IsMissing(int i) => i >= 0 && i < _script.Tokens.Length && _script.HeardAt[i] < 0 && stems.Contains(_script.Tokens[i].Token.Stem);
        return _places.Value.TryGetValue(start, out int at)
            && ((_sameAt.TryGetValue(at - 1, out int before) && IsMissing(before + 1)) || (_sameAt.TryGetValue(at + 1, out int behind) && IsMissing(behind - 1)));
    }

    // 'Plates score for each': who wrote that heard four, where the words on both sides are the script's.
    private bool IsBetween(int at, int heard) => at > 0 && at + 1 < _script.Tokens.Length && _script.IsSame(at - 1) && _script.HeardAt[at - 1] == heard - 1 && _script.IsSame(at + 1) && _script.HeardAt[at + 1] == heard + 1;

    // 'The best flat one wants three' has no number in the place of 'the flat with a four wants three': 'one' counts only right behind the script's own words.
    private bool IsPronoun(int at, int heard) => _heard[heard].Text == "one" && !Enumerable.Range(at - 2, 2).Any(i => i >= 0 && _script.IsSame(i) && _script.HeardAt[i] == heard - 1);

    // How much of its topic is heard as written.
    private double TopicOf(int at) => _topics[_script.Tokens[at].Topic];

    // Of the words round a number, how many are heard as written.
    private double Near(int at)
    {
        int[] round = [.. Enumerable.Range(at - Round, (2 * Round) + 1).Where(i => i >= 0 && i != at && i < _script.Tokens.Length && Math.Abs(_script.Tokens[i].Sentence - _script.Tokens[at].Sentence) <= 1)];

        // What is heard far off belongs to something else, however it is laid.
        bool IsBeside(int i) => _script.IsSame(i) && Math.Abs(_script.HeardAt[i] - _script.HeardAt[at]) <= 2 * Round;
        return round.Count(i => IsBeside(i) && _script.IsTelling(i)) < FewestRound ? 0 : (double)round.Count(IsBeside) / round.Length;
    }

    // The clause that the script states here: that of its checked value, else the number of the sheet that its words fit.
    private (string Clause, string Sheet, Citation? Cite) Told(int at)
    {
        ScriptToken token = _script.Tokens[at];
        string sentence = _script.Speech.Sentences[token.Sentence].Words;
        (string? name, string section) = token.Claim is null ? (null, "") : ClaimTarget.Read(token.Claim.Target) switch
        {
            ClaimTarget.Fact fact => (fact.Name, "Facts"),
            ClaimTarget.Tally { Clause: not "total" } tally => (tally.Clause, "Scoring"),
            _ => ((string?)null, ""),
        };
        ReadClause? clause = (name is null ? null : _statements.Clauses.FirstOrDefault(c => c.Name == name && c.Section == section))
            ?? _links.Value.Of[at].FirstOrDefault(l => l.Slot.Value == token.Token.Size && l.Score >= LeastTold)?.Statement.Clause;
        return clause is null ? (OfScript, sentence, null) : (clause.Name, clause.Section is "Facts" or "Components" ? clause.Says : $"{clause.Says} In the lesson: {sentence}", clause.Cite);
    }
}
