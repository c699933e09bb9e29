using System.Collections.Immutable;

namespace Rostrum.Lessons.Review;

/// <summary>How well a number that was heard and a number of the sheet belong together, whatever their values are.</summary>
/// <param name="At">Which token.</param>
/// <param name="Statement">What the sheet says.</param>
/// <param name="Slot">The number of it.</param>
/// <param name="Unit">How surely both count the same, 0 to 1.</param>
/// <param name="Met">How much of what else the statement says is spoken of round the number, 0 to 1.</param>
/// <param name="Score">Both together, 0 to 1.</param>
internal sealed record NumberLink(int At, Statement Statement, Slot Slot, double Unit, double Met, double Score)
{
    /// <summary>True where it belongs to a variant of which nobody speaks here.</summary>
    public bool IsElsewhere { get; init; }
}

/// <summary>Links every number that was heard with every number of the sheet that it may stand for.</summary>
internal sealed class NumberLinks
{
    // Words that name a thing of the game without saying which.
    private static readonly HashSet<string> AnyThing = ["piece", "pieces", "thing", "things", "one", "ones", "kinds", "kind", "sorts", "sort", "types", "bits", "items"];

    private static readonly HashSet<string> OfPlayers = ["for", "with", "play", "plays", "players", "player", "people", "persons", "most", "maximum"];

    private static readonly HashSet<string> BehindPlayers = ["can", "play", "players", "people", "persons"];

    private static readonly HashSet<string> ForEach = ["for", "per"];

    private static readonly string[] Reaching = ["end", "after", "until", "last"];

    private const int VariantBack = 140;
    private const int VariantAhead = 40;
    private const double LeastScore = 0.12;
    private const double OfSoftUnit = 0.8;
    private const double OfEach = 0.9;
    private const double OfNamedOtherwise = 0.6;
    private const double OfAnother = 0.4;
    private const double WithoutUnit = 0.75;
    private const double OfUnitAlone = 0.4;

    private readonly Statements _statements;
    private readonly ImmutableArray<SpokenToken> _tokens;
    private readonly string _most = Stems.Of("most");
    private readonly string _least = Stems.Of("least");
    private readonly string _player = Stems.Of("player");

    /// <summary>Links what was said with what the sheet says.</summary>
    public NumberLinks(Statements statements, ImmutableArray<SpokenToken> tokens)
    {
        (_statements, _tokens) = (statements, tokens);
        Of = [.. Enumerable.Range(0, tokens.Length).Select(i => IsHeard(i) ? Linked(i) : [])];
    }

    /// <summary>By token, its links, the best first; none for a word.</summary>
    public ImmutableArray<ImmutableArray<NumberLink>> Of { get; }

    /// <summary>True for a number that may state something: not one that was taken back, nor one that belongs to a name.</summary>
    public bool IsHeard(int at) => _tokens[at] is { Number: { } number, IsTakenBack: false } && number != 0 && !_statements.Units.IsInName(_tokens, at);

    private ImmutableArray<NumberLink> Linked(int at)
    {
        var near = new Context(_tokens, at);
        string? unit = _statements.Units.Of(_tokens, at) ?? Asked(at);
        string? end = RangeEnd(at);
        return
        [
            .. (from statement in _statements.All
                from slot in statement.Slots
                let link = Link(statement, slot, near, unit, at, end)
                where link.Score >= LeastScore
                orderby link.Score descending
                select link),
        ];
    }

    private NumberLink Link(Statement statement, Slot slot, Context near, string? unit, int at, string? end)
    {
        bool isElsewhere = !statement.OfVariant.IsEmpty && !IsSpokenOf(statement.OfVariant, at);
        NumberLink Made(double counts, double met, double score) => new(at, statement, slot, counts, met, score) { IsElsewhere = isElsewhere };
        if (slot.Key is { } key)
        {
            return KeyIsSaid(slot, key, unit, at) is > 0 and { } keyed ? Made(keyed, Met(statement, slot, near, end), keyed) : Made(0, 0, 0);
        }

        if (_tokens[at].IsOrdinal ? !MayBeReached(statement, slot, unit) : slot.IsOrdinal)
        {
            return Made(0, 0, 0);
        }

        double counts = Counts(slot, near, unit, at);
        if ((_tokens[at].Number < 0 && !slot.IsMinus) || CountsAnother(statement, slot, unit, at) || (slot.Unit == _player && !MayBeHowMany(statement, slot, at, unit, end)))
        {
            return Made(0, 0, 0);
        }

        double met = Met(statement, slot, near, end);
        double together = counts * (OfUnitAlone + ((1 - OfUnitAlone) * met));
        double fit = IsForAnother(statement, at) ? OfAnother : 1;
        return Made(counts, met, fit * (slot.Unit is null ? WithoutUnit * met : unit is null && !slot.IsBare ? Math.Max(together, WithoutUnit * met * met) : together));
    }

    // 'Four points for a lamp' is nothing that is said of plates.
    private bool IsForAnother(Statement statement, int at)
    {
        int by = Enumerable.Range(at + 1, 2).FirstOrDefault(i => i < _tokens.Length && ForEach.Contains(_tokens[i].Text), -1);
        int thing = by < 0 ? -1 : Enumerable.Range(by + 1, 3).FirstOrDefault(i => i < _tokens.Length && _tokens[i].Stem.Length > 0, -1);
        return thing >= 0 && _statements.Units.Is(_tokens[thing].Stem) && _statements.Weights.ContainsKey(_tokens[thing].Stem) && !statement.Words.ContainsKey(_tokens[thing].Stem);
    }

    // A variant is named when its part begins, and seldom again.
    private bool IsSpokenOf(ImmutableHashSet<string> variant, int at) =>
        Enumerable.Range(at - VariantBack, VariantBack + VariantAhead).Any(i => i >= 0 && i < _tokens.Length && variant.Contains(_tokens[i].Stem));

    // 'The drying boards. How many? Four.'
    private string? Asked(int at)
    {
        int asked = Enumerable.Range(1, 4).Select(k => at - k).FirstOrDefault(i => i > 0 && (_tokens[i - 1].Text, _tokens[i].Text) == ("how", "many"), -1);
        if (asked < 0)
        {
            return null;
        }

        if (Enumerable.Range(asked + 1, at - asked - 1).Any(i => _tokens[i].Text is "play" or "people" or "players"))
        {
            return _player;
        }

        return asked + 1 < at && _statements.Units.Is(_tokens[asked + 1].Stem) ? _tokens[asked + 1].Stem
            : Enumerable.Range(1, 10).Select(k => asked - k).Where(i => i >= 0 && _statements.Units.Is(_tokens[i].Stem)).Select(i => _tokens[i].Stem).FirstOrDefault();
    }

    // 'Six sticks, three swaps': of 'two sticks for a swap' the three counts the swaps.
    private bool CountsAnother(Statement statement, Slot slot, string? unit, int at) => slot.Unit is not null && unit is null && !_tokens[at].EndsSentence
        && at + 1 < _tokens.Length && _tokens[at + 1].Stem is { Length: > 0 } next && next != slot.Unit && statement.Clause.Section == "Facts" && statement.Words.ContainsKey(next);

    // 1 where the number is followed by what the slot counts, 0 where it is followed by something else, between where nothing follows.
    private double Counts(Slot slot, Context near, string? unit, int at)
    {
        if (slot.Unit is null)
        {
            return 0;
        }

        if (unit == slot.Unit)
        {
            return 1;
        }

        bool isEach = at + 2 < _tokens.Length && _tokens[at + 1].Text == "of" && _tokens[at + 2].Text == "each";
        if (isEach)
        {
            return slot.IsOfEach ? OfEach : 0;
        }

        bool isAnything = at + 1 < _tokens.Length && AnyThing.Contains(_tokens[at + 1].Text);
        // 'Two pots on each board' counts pots, whatever the sheet calls them.
        bool isNamed = at + 1 < _tokens.Length && !_tokens[at].EndsSentence && _tokens[at + 1] is { Stem.Length: > 0, Number: null } && !isAnything;
        return unit is null || (isAnything && _statements.Units.IsKind(slot.Unit)) ? OfSoftUnit * (isNamed ? OfNamedOtherwise : 1) * near.Nearness(slot.Unit) : 0;
    }

    // 'The third storm' is said of three storms that end something, and of nothing that is merely so many.
    private static bool MayBeReached(Statement statement, Slot slot, string? unit) =>
        slot.IsOrdinal || (unit is not null && unit == slot.Unit && (statement.Clause.Section is "End of the game" or "Course" || (statement.Clause.Section is "Facts" && Reaching.Any(w => statement.Clause.Name.Contains(w, StringComparison.Ordinal)))));

    // 'Up to six', 'two to five', 'for four': how many play. Nothing else that counts players says so, least of all 'if two of you'.
    private bool MayBeHowMany(Statement statement, Slot slot, int at, string? unit, string? end)
    {
        if (statement.Clause.Section is not ("Facts" or "Components"))
        {
            return true;
        }

        string? asked = statement.Words.ContainsKey(_most) ? _most : statement.Words.ContainsKey(_least) ? _least : null;
        bool isPlayers = statement.Clause.Section is "Components" || statement.Clause.Name is "players";
        string before = at > 0 ? _tokens[at - 1].Text : "";
        return asked is not null ? asked == end && (unit == _player || Behind(at, BehindPlayers.Contains) || (Before(at, OfPlayers.Contains) && !Before(at, w => w is "from" or "at") && !Behind(at, w => w is "on" or "faces"))) : !isPlayers || (statement.Slots.Length > 1 ? end == (slot == statement.Slots[0] ? _least : _most) : end is null && (Asked(at) == _player || before is "for" or "exactly" or "always" or "need" or "with" or "are" or "there's" or "of" or "plays"));
    }

    private bool Before(int at, Predicate<string> word) => Enumerable.Range(at - 5, 5).Any(i => i >= 0 && word(_tokens[i].Text));

    private bool Behind(int at, Predicate<string> word) => Enumerable.Range(at + 1, 3).Any(i => i < _tokens.Length && word(_tokens[i].Text));

    private double KeyIsSaid(Slot slot, long key, string? unit, int at)
    {
        int before = Enumerable.Range(1, 7).Select(k => at - k).FirstOrDefault(i => i >= 0 && _tokens[i].Number is not null, -1);
        if (before < 0 || _tokens[before].IsOrdinal || _tokens[before].Number != key)
        {
            return 0;
        }

        bool isOther = at + 1 < _tokens.Length && _statements.Units.Is(_tokens[at + 1].Stem) && _tokens[at + 1].Stem != slot.Unit;
        bool isNamed = slot.KeyUnit is not null && _statements.Units.Of(_tokens, before) == slot.KeyUnit;
        return isOther ? 0 : isNamed ? 0.8 : unit is not null && unit == slot.Unit ? 0.6 : unit is null || at - before <= 2 ? 0.45 : 0;
    }

    // 'Two to five', 'up to six': which end of a range it is.
    private string? RangeEnd(int at)
    {
        // 'The most it takes is five'.
        bool IsSaidToBe(string end) => at > 1 && _tokens[at - 1].Text is "is" or "are" && Enumerable.Range(at - 6, 5).Any(i => i >= 0 && _tokens[i].Text == end && !_tokens[i].EndsSentence);
        bool Joins(int i) => i > 0 && i + 1 < _tokens.Length && _tokens[i].Text is "to" or "through" or "till" or "until" && _tokens[i - 1].Number is { } low && _tokens[i + 1].Number is { } high && low < high;
        return Joins(at + 1) ? _least
            : Joins(at - 1) || (at > 1 && (_tokens[at - 2].Text, _tokens[at - 1].Text) is ("up", "to") or ("at", "most") or ("many", "as") or ("maximum", "of")) || IsSaidToBe("most") || IsSaidToBe("maximum") ? _most
            : at > 1 && (_tokens[at - 2].Text, _tokens[at - 1].Text) is ("at", "least") or ("more", "than") ? _least : null;
    }

    private static double Met(Statement statement, Slot slot, Context near, string? end)
    {
        double all = 0;
        double met = 0;
        foreach ((string word, double weight) in statement.Words)
        {
            double counts = word == slot.Unit ? 0 : slot.Near.Contains(word) || slot.Near.IsEmpty ? 1 : 0.5;
            all += weight * counts;
            met += weight * counts * (word == end ? 1 : near.Nearness(word));
        }

        return all == 0 ? 0.5 : met / all;
    }
}
