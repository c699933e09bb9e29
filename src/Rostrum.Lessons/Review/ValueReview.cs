using System.Collections.Immutable;

namespace Rostrum.Lessons.Review;

/// <summary>A number that was heard, with the statement that it belongs to.</summary>
/// <param name="At">Which token.</param>
/// <param name="Statement">What the sheet says.</param>
/// <param name="Slot">The number of it that is meant.</param>
/// <param name="Confidence">How sure it is that this is meant and is wrong, 0 to 1; 0 where it is right.</param>
internal sealed record HeardNumber(int At, Statement Statement, Slot Slot, double Confidence)
{
    /// <summary>Why it is taken to be meant.</summary>
    public string Because { get; init; } = "";
}

/// <summary>Holds every number that was heard against the statements of the sheet.</summary>
/// <remarks>A number is wrong only where one statement fits what is said round it well, and no statement with the number itself fits nearly as well.
/// Where several statements fit, the number need only be one of theirs.</remarks>
internal sealed class ValueReview(Statements statements, ImmutableArray<SpokenToken> tokens)
{
    // How well a statement must fit, and how much better than any with the number that was said; chosen on lessons that no figure is taken from.
    private const double LeastFit = 0.5;
    private const double LeastLead = 0.2;

    // 'One' is most often no amount.
    private const double LeastFitOfOne = 0.85;
    private const double LeastFitBesideOne = 0.3;

    // So many numbers near each other are a sum, a dice roll or a table.
    private const int Dense = 3;
    private const int DenseReach = 6;

    // From this amount on a number is told by its size.
    private const long Large = 13;

    private static readonly HashSet<string> BeforeOne = ["the", "this", "that", "these", "which", "no", "any", "another", "other", "either", "neither", "number", "each", "every", "good", "big", "last", "first", "next", "only", "best"];

    private static readonly HashSet<string> HowMany = ["there", "there's", "there're", "has", "have", "with", "contains", "comes", "total", "box", "altogether", "includes", "got", "holds", "get", "gets", "lasts", "need", "everyone", "everybody", "whole", "play", "you'll", "game", "goes"];

    private readonly string _most = Stems.Of("most");
    private readonly string _least = Stems.Of("least");
    private readonly string _player = Stems.Of("player");

    /// <summary>Every number that is certainly meant by a statement: right ones with confidence 0, wrong ones with their own.</summary>
    public IEnumerable<HeardNumber> All()
    {
        for (int i = 0; i < tokens.Length; i++)
        {
            if (tokens[i] is { Number: { } number and not 0, IsTakenBack: false } && !statements.Units.IsInName(tokens, i) && Heard(i, number) is { } heard)
            {
                yield return heard;
            }
        }
    }

    // Keys of rows that are spoken with their values: the 'four' of 'a stack of four is ten'.
    private readonly HashSet<int> _keys = [.. Enumerable.Range(0, tokens.Length).Where(i => tokens[i].Amount is { } key && Next(tokens, i) is { } value && statements.Tables.Any(t => t.Rows.Contains((key, value))))];

    private static long? Next(ImmutableArray<SpokenToken> tokens, int at) =>
        Enumerable.Range(at + 1, 5).Where(i => i < tokens.Length && tokens[i].Number is not null).Select(i => tokens[i].Amount).FirstOrDefault();

    private HeardNumber? Heard(int at, long amount)
    {
        if (_keys.Contains(at))
        {
            return null;
        }

        string? unit = statements.Units.Of(tokens, at);
        bool isOne = amount == 1 && tokens[at].Text == "one";
        if (isOne && (unit is null || (at + 1 < tokens.Length && tokens[at + 1].Text == "of") || (at > 0 && BeforeOne.Contains(tokens[at - 1].Text))))
        {
            return null;
        }

        var near = new Surroundings(tokens, at);
        string? end = RangeEnd(at);
        var fits = (from statement in statements.All
                    from slot in statement.Slots
                    where slot.IsOrdinal == tokens[at].IsOrdinal
                    select (Statement: statement, Slot: slot, Fit: Fit(statement, slot, near, unit, at, end))).Where(f => f.Fit > 0).OrderByDescending(f => f.Fit).ToList();
        if (fits.Count == 0)
        {
            return null;
        }

        // The other numbers of a statement that fits may be the one that is meant.
        double same = fits.Where(f => Has(f.Statement, f.Slot, amount)).Select(f => f.Fit).FirstOrDefault();
        (Statement best, Slot meant, double fit) = fits[0];
        if (same > 0 && same >= fit - LeastLead)
        {
            (best, meant, _) = fits.First(f => Has(f.Statement, f.Slot, amount));
            return new HeardNumber(at, best, meant, 0);
        }

        if (isOne && same > LeastFitBesideOne)
        {
            return null;
        }

        double doubt = Math.Min(0.6, near.ExampleCues * 0.2) + (IsDense(at) && meant.Key is null ? 0.35 : 0) + (unit is null ? 0.05 : 0);
        double confidence = Math.Clamp(((fit - LeastFit) / (1 - LeastFit) * 0.5) + 0.5 - (same * 0.4) - doubt, 0.05, 1);
        return fit < (isOne ? LeastFitOfOne : LeastFit) ? null : new HeardNumber(at, best, meant, confidence);
    }

    private static bool Has(Statement statement, Slot slot, long amount) => slot.Value == amount || statement.Slots.Any(s => s.Value == amount && s.Key == slot.Key);

    private bool IsDense(int at) => Enumerable.Range(Math.Max(0, at - DenseReach), (2 * DenseReach) + 1).Count(i => i != at && i < tokens.Length && tokens[i].Number is not null) >= Dense;

    // 'Two to five', 'up to six': which end of a range it is.
    private string? RangeEnd(int at)
    {
        bool Joins(int i) => i > 0 && i + 1 < tokens.Length && tokens[i].Text is "to" or "through" or "till" or "until" && tokens[i - 1].Number is not null && tokens[i + 1].Number is not null;
        return Joins(at + 1) ? _least
            : Joins(at - 1) || (at > 1 && (tokens[at - 2].Text, tokens[at - 1].Text) is ("up", "to") or ("at", "most")) ? _most
            : at > 1 && (tokens[at - 2].Text, tokens[at - 1].Text) is ("at", "least") ? _least : null;
    }

    // The number right before it, where little stands between.
    private int Previous(int at) => Enumerable.Range(1, 5).Select(k => at - k).FirstOrDefault(i => i >= 0 && tokens[i].Number is not null, -1);

    // 1 where everything that the statement says is said near the number.
    private double Fit(Statement statement, Slot slot, Surroundings near, string? unit, int at, string? end)
    {
        if (slot.Key is { } key)
        {
            int before = Previous(at);
            bool isKey = before >= 0 && !tokens[before].IsOrdinal && tokens[before].Number == key && (unit is null || unit == slot.Unit || at - before <= 2);
            bool isNamed = isKey && statements.Units.Of(tokens, before) == slot.KeyUnit;
            bool isOther = at + 1 < tokens.Length && statements.Units.Is(tokens[at + 1].Stem) && tokens[at + 1].Stem != slot.Unit;
            return isOther ? 0 : isNamed && at - before <= 3 ? 0.75 : isKey ? Math.Min(0.7, Met(statement, slot, near, end)) : 0;
        }

        if (unit is not null && slot.Unit is not null && unit != slot.Unit)
        {
            return 0;
        }

        double unitless = unit is not null && unit == slot.Unit ? 1 : slot.Unit is null ? 0.85 : 0.7;
        if (slot.IsBare)
        {
            bool isCounted = Enumerable.Range(Math.Max(near.From, at - 5), Math.Min(5, at - near.From)).Any(i => HowMany.Contains(tokens[i].Text));
            return isCounted && unit == slot.Unit ? 0.62 : 0;
        }

        // 'Most players' is said as 'up to six' or as the end of a range, and nothing else is.
        string? asked = statement.Clause.Section == "Facts" && slot.Unit == _player ? statement.Words.ContainsKey(_most) ? _most : statement.Words.ContainsKey(_least) ? _least : null : end;
        if (asked != end)
        {
            return 0;
        }

        double large = (tokens[at].Number >= Large && slot.Value >= Large) ? 1.25 : 1;
        return Math.Min(1, Met(statement, slot, near, end) * unitless * large);
    }

    private static double Met(Statement statement, Slot slot, Surroundings near, string? end)
    {
        double all = 0;
        double met = 0;
        foreach ((string word, double weight) in statement.Words)
        {
            double counts = word == slot.Unit ? 0.3 : slot.Near.Contains(word) || slot.Near.IsEmpty ? 1 : 0.45;
            all += weight * counts;
            met += weight * counts * (word == end ? 1 : near.Nearness(word));
        }

        return all == 0 ? 0 : met / all;
    }
}
