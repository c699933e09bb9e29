using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Review;

/// <summary>What numbers count in a game: its things, spaces and lines, and points, turns and players in any game.</summary>
internal sealed class Units
{
    private const int Reach = 4;
    private const int Back = 14;

    private const string NotCounted = "~";

    private static readonly string[] Common = ["point", "turn", "round", "action", "card", "die", "player", "space", "minute", "time", "piece", "step", "hand", "game", "pass", "trick", "seat", "side", "copy", "column", "row", "kind", "sort"];

    // Numbers behind these belong to a name.
    private static readonly HashSet<string> Labels = ["page", "chapter", "section", "step", "example", "figure", "part", "question", "number", "version", "episode", "video", "player", "seat", "round", "turn", "phase", "stage", "level", "day", "card", "option", "rule", "tip", "reason", "printing", "edition"];

    private static readonly HashSet<string> NotLabelled = ["each", "every", "a", "an", "any", "per", "the", "this", "that", "your", "his", "her", "their", "my", "another", "next", "last", "other", "further", "to", "than"];

    private static readonly HashSet<string> Passed = ["of", "your", "my", "the", "those", "these", "more", "different", "other", "new", "extra", "full", "whole", "single", "little", "tiny", "whopping"];

    // Named in passing, and seldom what 'them' means.
    private static readonly HashSet<string> Passing = [.. new[] { "point", "turn", "time", "round", "minute", "game", "step", "hand", "side", "player" }.Select(Stems.Of)];

    private readonly HashSet<string> _units;
    private readonly HashSet<string> _kinds;
    private readonly HashSet<string> _labels;
    private readonly HashSet<string> _places;

    /// <summary>The units of a sheet.</summary>
    public Units(Sheet sheet)
    {
        IEnumerable<string> names =
        [
            .. sheet.Kinds.SelectMany(k => k.Kind.Name == k.Kind.Plural ? [k.Kind.Name] : new[] { k.Kind.Name, k.Kind.Plural }),
            .. sheet.Kinds.SelectMany(k => k.Attributes).SelectMany(a => a.Values.Select(v => v.Name).Append(a.Attribute.Name)),
            .. sheet.Boards.SelectMany(b => b.Families.Select(f => f.Name).Append(b.Noun.Name).Append(b.Place.Name)),
            .. sheet.Places.Select(p => p.SlotNoun?.Name).OfType<string>(), .. sheet.Places.Select(p => p.Place.Name), .. sheet.Marks.Select(m => m.Name),
            .. sheet.Facts.Select(f => Head(f.Name)),
        ];
        _units = [.. names.Select(n => Prose.WordsOf(n).LastOrDefault() ?? "").Where(w => w.Length > 1 && w.All(char.IsLetter)).Select(w => Stems.Of(w.ToLowerInvariant())), .. Common.Select(Stems.Of)];
        _kinds = [.. sheet.Kinds.SelectMany(k => new[] { k.Kind.Name, k.Kind.Plural }).Select(n => Stems.Of((Prose.WordsOf(n).LastOrDefault() ?? "").ToLowerInvariant()))];
        _places = [.. sheet.Places.Select(p => p.Place.Name).Concat(sheet.Boards.Select(b => b.Place.Name)).Select(n => Stems.Of((Prose.WordsOf(n).LastOrDefault() ?? "").ToLowerInvariant()))];
        _labels = [.. Labels, .. sheet.Boards.SelectMany(b => b.Families).Select(f => f.Name.ToLowerInvariant()), .. sheet.CardTables.Select(c => c.Kind.Name.ToLowerInvariant())];
    }

    /// <summary>True for a kind of thing, such as cards: <c>pieces</c> may mean it.</summary>
    public bool IsKind(string stem) => _kinds.Contains(stem);

    /// <summary>True for an idea that is counted.</summary>
    public bool Is(string stem) => _units.Contains(stem);

    /// <summary>What the number at a place counts: the first unit behind it, else points where points are spoken of before it, else what was named last; null where nobody can say.</summary>
    public string? Of(IReadOnlyList<SpokenToken> tokens, int at)
    {
        string? OfThem() => Enumerable.Range(1, Back).Select(k => at - k).Where(i => i >= 0 && Is(tokens[i].Stem) && !Passing.Contains(tokens[i].Stem) && (!_places.Contains(tokens[i].Stem) || _kinds.Contains(tokens[i].Stem))).Select(i => tokens[i].Stem).FirstOrDefault();
        (string next, string after) = (at + 1 < tokens.Count ? tokens[at + 1].Text : "", at + 2 < tokens.Count ? tokens[at + 2].Text : "");
        if (next == "of" && after is "you" or "us")
        {
            // 'Five of us in this flat' are no players.
            return after == "you" ? Stems.Of("player") : NotCounted;
        }

        if (next == "of" && after is "them" or "those" or "these" or "each")
        {
            return OfThem();
        }

        if (at > 1 && tokens[at - 1].Text == "for" && tokens[at - 2].Text == "game")
        {
            return Stems.Of("player");
        }

        for (int i = at + 1; i < Math.Min(tokens.Count, at + 1 + Reach) && !tokens[i - 1].EndsSentence; i++)
        {
            if (Is(tokens[i].Stem))
            {
                // 'Ten times' counts what was spoken of.
                return tokens[i].Text == "times" ? OfThem() : tokens[i].Stem;
            }

            bool isPassed = Passed.Contains(tokens[i].Text) || (tokens[i].Stem.Length > 0 && i == at + 1) || (tokens[i].Stem.Length > 0 && Passed.Contains(tokens[i - 1].Text));
            if (!isPassed || tokens[i].Number is not null)
            {
                break;
            }
        }

        string point = Stems.Of("point");
        if (tokens[at].Number < 0)
        {
            return point;
        }

        string cost = Stems.Of("cost");
        for (int i = at - 1; i >= Math.Max(0, at - Reach) && !tokens[i].EndsSentence; i--)
        {
            if (tokens[i].Stem == point || (tokens[i].Stem == cost && tokens[i].Text is "minus" or "penalty" or "lose" or "loses"))
            {
                return point;
            }
        }

        return null;
    }

    /// <summary>True for a number that belongs to a name: <c>page 5</c>, <c>tier 1</c>, <c>Commission 12</c>.</summary>
    public bool IsInName(IReadOnlyList<SpokenToken> tokens, int at) =>
        at > 0 && _labels.Contains(tokens[at - 1].Text) && (tokens[at - 1].Text == "page" || !(at > 1 && NotLabelled.Contains(tokens[at - 2].Text))) && !tokens[at - 1].EndsSentence;

    /// <summary>The words of a fact's name up to the first that says of what: <c>points for a lone lamp</c> counts points.</summary>
    public static string Head(string name)
    {
        string[] words = Prose.WordsOf(name);
        int end = Array.FindIndex(words, w => w is "for" or "in" or "on" or "of" or "after" or "before" or "to" or "that" or "without" or "from" or "each" or "with" or "by" or "at");
        return string.Join(' ', end > 0 ? words[..end] : words);
    }
}
