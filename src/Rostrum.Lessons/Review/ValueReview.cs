using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Lessons.Review;

/// <summary>A number that was heard, with the statement that it belongs to.</summary>
/// <param name="At">Which token.</param>
/// <param name="Statement">What the sheet says.</param>
/// <param name="Slot">The number of it that is meant.</param>
/// <param name="Confidence">How sure it is that this is meant and is wrong, 0 to 1.</param>
/// <param name="Because">Why it is taken to be meant.</param>
internal sealed record HeardNumber(int At, Statement Statement, Slot Slot, double Confidence, string Because);

/// <summary>Holds every number that was heard against the numbers of the sheet.</summary>
/// <remarks>A number is wrong where a number of the sheet fits what is said round it, has another value, is not heard rightly anywhere else, and where no number of the sheet with the value that was said fits nearly as well.</remarks>
internal sealed class ValueReview
{
    private const int Dense = 3;
    private const int DenseReach = 6;
    private const int Close = 8;
    private const int MostCandidates = 8;

    // What is said rightly so plainly is meant, whatever else it might be.
    private const double LeastPlain = 0.6;
    private const double NearlyAsWell = 0.88;

    private const double LeastApart = 0.06;
    private const double OfTaken = 0.55;
    private const double OfNamedKey = 0.7;

    private static readonly HashSet<string> OfExamples =
        ["here", "that's", "so", "now", "look", "see", "my", "i've", "i'd", "i'm", "mine", "me", "example", "say", "imagine", "suppose", "altogether", "together", "makes", "plus", "gives", "leaves", "already", "currently", "remaining", "rest", "he's", "she's", "got"];

    private static readonly HashSet<string> Personal =
        ["years", "year", "weeks", "week", "months", "month", "days", "euros", "euro", "pounds", "dollars", "percent", "episode", "o'clock", "since", "age", "comments", "subscribers", "played", "yesterday", "us", "last", "hours", "evenings", "i", "i've"];

    private static readonly HashSet<string> Telling =
        ["there", "there's", "there're", "have", "has", "get", "gets", "each", "every", "everybody", "everyone", "must", "need", "needs", "up", "until", "exactly", "always", "whole", "total", "per", "comes", "come", "deal", "worth", "costs", "cost", "scores", "than", "most", "least", "you", "your", "you've"];

    private static readonly HashSet<string> BeforeOne = ["the", "this", "that", "these", "which", "no", "any", "another", "other", "either", "neither", "number", "each", "every", "good", "big", "last", "first", "next", "only", "best", "a", "new"];

    private static readonly HashSet<string> OfLength = ["takes", "take", "lasts", "last", "plays", "play", "game", "long", "players", "people", "box"];

    private static readonly HashSet<string> OfWaiting = ["until", "till", "i've", "i'm", "ago", "left", "next", "another", "more", "waiting", "spent", "late", "been", "hour", "hours"];

    private static readonly string Minute = Stems.Of("minute");

    private readonly ImmutableArray<SpokenToken> _tokens;
    private readonly NumberLinks _links;
    private readonly HashSet<int> _keys;
    private readonly ILookup<(Statement, Slot), NumberLink> _heard;

    /// <summary>Links what was said with what the sheet says.</summary>
    public ValueReview(Statements statements, ImmutableArray<SpokenToken> tokens)
    {
        (_tokens, _links) = (tokens, new NumberLinks(statements, tokens));
        _keys = [.. Enumerable.Range(0, tokens.Length).Where(i => tokens[i].Amount is { } key && Next(i) is { } value && statements.Tables.Any(t => t.Rows.Contains((key, value))) && !_links.Of[i].Any(l => l.Slot.Key is not null && l.Score > OfNamedKey))];
        _heard = Heard(tokens, _links).ToLookup(l => (l.Statement, l.Slot));
    }

    // Where a right number says several things, those are heard that it says best.
    private static IEnumerable<NumberLink> Heard(ImmutableArray<SpokenToken> tokens, NumberLinks links)
    {
        foreach (ImmutableArray<NumberLink> all in links.Of)
        {
            NumberLink[] right = [.. all.Where(l => tokens[l.At].Size == l.Slot.Value)];
            foreach (NumberLink link in right.Where(l => l.Score >= right[0].Score - LeastApart))
            {
                yield return link;
            }
        }
    }

    /// <summary>Every number that may be wrong.</summary>
    public IEnumerable<HeardNumber> All()
    {
        for (int i = 0; i < _tokens.Length; i++)
        {
            if (IsJudged(i, _tokens[i].Number) && Judged(i, _tokens[i].Size!.Value) is { } heard)
            {
                yield return heard;
            }
        }
    }

    /// <summary>True for a number that states something and is not the key of a row.</summary>
    internal bool IsJudged(int at, long? amount) => amount is not null && _links.IsHeard(at) && !_keys.Contains(at) && !(amount == 1 && IsPronoun(at));

    /// <summary>What is known of a number if it had a value: each number of the sheet with another value that may be meant.</summary>
    internal IEnumerable<(NumberLink Link, double[] Features)> Weighed(int at, long amount)
    {
        NumberLink[] links = [.. _links.Of[at].Where(l => !l.IsElsewhere)];
        double same = links.Where(l => Has(l, amount)).Select(Left).DefaultIfEmpty(0).Max();
        double sameUnit = links.Where(l => Has(l, amount) && l.Unit >= 1).Select(Left).DefaultIfEmpty(0).Max();
        NumberLink[] other = [.. links.Where(l => !l.Slot.IsOnlyRight && !Has(l, amount) && !(same >= LeastPlain && same >= l.Score * NearlyAsWell)).Take(MostCandidates)];
        return other.Select(link => (link, Features(link, amount, same, sameUnit, other)));
    }

    // What a link says for a number being right: less where the same thing is said better elsewhere.
    private double Left(NumberLink link) => link.Score * (HeardElsewhere(link) > link.Score + LeastApart ? OfTaken : 1);

    /// <summary>What is known of a link, in the order of <see cref="ValueWeights"/>: it counts the same, it fits, how well a number with the said value fits, whether the right one is heard elsewhere, how the talk sounds here.</summary>
    private double[] Features(NumberLink link, long amount, double same, double sameUnit, NumberLink[] other)
    {
        int at = link.At;
        double heard = HeardElsewhere(link);
        double plain = HeardElsewhere(link, leastUnit: 1);
        double slip = Slip(amount, link.Slot.Value);
        double second = other.Where(l => l.Slot.Value != link.Slot.Value).Select(l => l.Score).DefaultIfEmpty(0).Max();
        double open = link.Score * (1 - heard) * (1 - same);
        string section = link.Statement.Clause.Section;
        return
        [
            1, link.Unit, link.Met, link.Score, same, heard, plain, Math.Min(3, Cues(at, OfExamples)) / 3.0, Math.Min(2, Cues(at, Personal)) / 2.0, IsDense(at) ? 1 : 0, slip,
            link.Slot.Key is null ? 0 : 1, section is "Facts" ? 1 : 0, link.Score - second, link.Unit >= 1 ? 1 : 0, open, open * slip, link.Unit * link.Met, _tokens[at].IsOrdinal ? 1 : 0, amount == 1 ? 1 : 0,
            section is "Components" ? 1 : 0, amount >= 13 ? 1 : 0, Math.Max(0, same - link.Score), sameUnit, Math.Min(2, Cues(at, Telling)) / 2.0, link.Slot.Unit is null ? 1 : 0, link.Slot.IsBare ? 1 : 0,
            Math.Min(1, Math.Abs(amount - link.Slot.Value) / (double)Math.Max(2, link.Slot.Value)), slip * (1 - plain) * link.Unit,
            HeardElsewhere(link, within: Close), IsLength(link) && Cues(at, OfLength) > 0 ? 1 : 0, IsLength(link) && Cues(at, OfWaiting) > 0 ? 1 : 0,
        ];
    }

    // How long a game lasts.
    private static bool IsLength(NumberLink link) => link.Slot is { IsBare: true, Unit: { } unit } && unit == Minute;

    // A slip of the tongue is off by little, has its digits the wrong way round or takes teen for ty.
    private static double Slip(long said, long right)
    {
        long off = Math.Abs(said - right);
        bool isTwisted = (said is > 9 and < 100 && right == ((said % 10) * 10) + (said / 10)) || said == right * 10 || right == said * 10 || (said is > 12 and < 20 && right == (said - 10) * 10) || (right is > 12 and < 20 && said == (right - 10) * 10);
        return isTwisted ? 1 : Math.Exp(-Math.Max(0, off - 1) / (1 + (0.45 * Math.Abs(right))));
    }

    private HeardNumber? Judged(int at, long amount)
    {
        (NumberLink Link, double Confidence) best = Weighed(at, amount).Select(w => (w.Link, ValueWeights.Confidence(w.Features))).OrderByDescending(w => w.Item2).FirstOrDefault();
        return best.Link is null ? null : new HeardNumber(at, best.Link.Statement, best.Link.Slot, best.Confidence, Because(best.Link));
    }

    private string Because(NumberLink link) => string.Create(CultureInfo.InvariantCulture,
        $"{(link.Slot.Key is { } key ? $"the row for {key} is spoken here" : link.Unit >= 1 ? "it counts the same thing" : "what it counts is spoken of just before")}, {(HeardElsewhere(link) > 0 ? "and" : "and nowhere else is")} {link.Slot.Value}{(HeardElsewhere(link) > 0 ? " is heard elsewhere" : " heard for it")}");

    private long? Next(int at) => Enumerable.Range(at + 1, 5).Where(i => i < _tokens.Length && _tokens[i].Number is not null).Select(i => _tokens[i].Amount).FirstOrDefault();

    private bool IsPronoun(int at) => _tokens[at].Text == "one" && ((at + 1 < _tokens.Length && _tokens[at + 1].Text == "of") || (at > 0 && BeforeOne.Contains(_tokens[at - 1].Text)));

    // How well the right number is heard for it anywhere else; with what it counts right behind it, or within so many words, where that is asked.
    // 'Or else minus two. A shard is minus one': what is said rightly right beside is not said here too.
    private double HeardElsewhere(NumberLink link, double leastUnit = 0, int within = int.MaxValue) =>
        _heard[(link.Statement, link.Slot)].Where(l => l.At != link.At && l.Unit >= leastUnit && Math.Abs(l.At - link.At) <= within).Select(l => l.Score).DefaultIfEmpty(0).Max();

    private int Cues(int at, HashSet<string> words) => Enumerable.Range(at - Close, (2 * Close) + 1).Count(i => i >= 0 && i < _tokens.Length && words.Contains(_tokens[i].Text));

    private static bool Has(NumberLink link, long amount) => link.Slot.Value == amount || link.Statement.Slots.Any(s => s.Value == amount && s.Key == link.Slot.Key);

    private bool IsDense(int at) => Enumerable.Range(Math.Max(0, at - DenseReach), (2 * DenseReach) + 1).Count(i => i != at && i < _tokens.Length && _tokens[i].Number is not null) >= Dense;
}
