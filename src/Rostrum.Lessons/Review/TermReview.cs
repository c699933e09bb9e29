using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Speech;
using Rostrum.Lessons.Terms;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Lessons.Review;

/// <summary>Hears names that the sheet forbids for a thing, and other names where the one of the rules is never said.</summary>
/// <remarks>A forbidden name is certain only where it is said as the name itself, not as a verb or as part of another word, where words of the game stand
/// around it, and where it is no word of daily table talk nor a name of another thing; or where the script has the right name in its place. All else is to be listened to.</remarks>
internal sealed class TermReview
{
    private const double Plain = 0.85;
    private const double Doubtful = 0.4;
    private const int Around = 7;
    private const int FewestAround = 2;
    private const int RepairReach = 6;
    private const int MostTimes = 4;

    // Words before or behind that tell that the name is spoken of, compared or put right, and not used.
    private static readonly HashSet<string> NotUsed = ["not", "never", "called", "call", "calls", "don't", "isn't", "instead", "rather", "like", "say", "word", "name", "sorry", "wait", "mean"];

    // Words that mean many things at any table and in front of any camera.
    private static readonly HashSet<string> Daily =
        ["turn", "round", "move", "place", "set", "point", "score", "play", "player", "game", "rule", "space", "piece", "part", "thing", "hand", "line", "row", "side", "end", "start", "top", "bottom", "group", "run", "pair", "way", "step", "level", "table", "page", "number", "value", "time", "box", "board", "card", "colour", "color", "name", "word", "figure", "spot", "bit", "goal", "pass", "draw", "deal", "bank", "home"];

    // What stands right before a name of a thing.
    private static readonly HashSet<string> Before =
        ["a", "an", "the", "this", "that", "these", "those", "your", "my", "our", "his", "her", "their", "each", "every", "both", "all", "any", "some", "no", "of", "two", "three", "four", "five", "six", "one", "more", "other", "another", "many"];

    private readonly ImmutableArray<TimedWord> _words;
    private readonly string[] _bare;
    private readonly ILookup<string, int> _byStem;
    private readonly (string Stem, int Word)[] _stems;
    private readonly HashSet<string> _known;

    private readonly ScriptReview? _script;

    private TermReview(Sheet sheet, ImmutableArray<TimedWord> words, ScriptReview? script)
    {
        (_words, _script) = (words, script);
        _bare = [.. words.Select(w => w.Text.Trim('.', ',', '!', '?', ':', ';', '"').ToLowerInvariant())];
        _stems = [.. words.SelectMany((w, i) => WordStems.Of(w.Text).Select(s => (s, i)))];
        _byStem = _stems.Select((s, at) => (s.Stem, at)).ToLookup(p => p.Stem, p => p.at, StringComparer.Ordinal);
        _known = [.. TermList.Of(sheet).SelectMany(t => t.Phrases).SelectMany(p => p)];
    }

    /// <summary>The findings, one for each name.</summary>
    public static IEnumerable<Finding> Of(Sheet sheet, ImmutableArray<TimedWord> words, ScriptReview? script)
    {
        ImmutableArray<SaidNames> all = SaidNames.Of(sheet);
        if (all.IsEmpty || words.IsEmpty)
        {
            return [];
        }

        var review = new TermReview(sheet, words, script);
        ImmutableArray<ReadClause> clauses = SheetReadBack.Of(sheet);
        return all.SelectMany(names => review.Of(names, clauses.FirstOrDefault(c => c.Name == names.Name || Prose.Plural(names.Name) == c.Name)?.Cite));
    }

    private IEnumerable<Finding> Of(SaidNames names, Citation? cite)
    {
        foreach (string never in names.Never)
        {
            // 'Wares' may be forbidden where 'ware' is the name: both have one stem.
            bool isForm = WordStems.Of(never).SequenceEqual(WordStems.Of(names.Name));
            int[] said = [.. Places(never).Where(at => !IsPutRight(at, names.Name) && (!isForm || string.Equals(_bare[at], never, StringComparison.OrdinalIgnoreCase)))];
            int[] plain = [.. said.Where(at => IsPlain(at, never) || (_script?.IsInPlaceOf(_words[at].Start, names.Name) ?? false))];
            if (said.Length > 0)
            {
                int at = plain.Length > 0 ? plain[0] : said[0];
                yield return Found(at, $"It is called '{names.Name}' and never '{never}'.", names.Name, cite, plain.Length > 0 ? Plain : Doubtful, Times(plain.Length > 0 ? plain : said, plain.Length > 0));
            }
        }

        int[] others = [.. names.Called.SelectMany(Places).Order()];
        if (others.Length > 0 && !Places(names.Name).Any())
        {
            yield return Found(others[0], $"It is called '{names.Name}'.", names.Name, cite, Doubtful, "the name that the rules use is never said");
        }
    }

    private Finding Found(int at, string sheet, string clause, Citation? cite, double confidence, string because) => new(
        FindingKind.WrongTerm, _words[at].Start, string.Join(' ', _words.Skip(Math.Max(0, at - Around)).Take(Math.Min(at, Around) + Around).Select(w => w.Text)), sheet, clause, cite, confidence, because);

    private string Times(int[] places, bool isPlain)
    {
        string[] times = [.. places.Take(MostTimes).Select(p => Film.FilmTime.Write(_words[p].Start))];
        string how = isPlain ? "it is said of a thing of the game" : "it may be meant otherwise";
        return places.Length == 1 ? how : $"{how}; said {places.Length} times, at {Prose.And(times)}{(places.Length > MostTimes ? " and later" : "")}";
    }

    // Where the name is said: the words of its stems, nothing but small words between them.
    private IEnumerable<int> Places(string name)
    {
        ImmutableArray<string> stems = WordStems.Of(name);
        return stems.IsEmpty
            ? []
            : _byStem[stems[0]].Where(at => at + stems.Length <= _stems.Length && Enumerable.Range(0, stems.Length).All(k => _stems[at + k].Stem == stems[k] && _stems[at + k].Word - _stems[at].Word <= 2 * k)).Select(at => _stems[at].Word);
    }

    private bool IsPlain(int at, string never)
    {
        string[] parts = Prose.WordsOf(never.ToLowerInvariant());
        if (parts.Length > 1)
        {
            return true;
        }

        bool isName = _bare[at] == parts[0] || _bare[at] == Prose.Plural(parts[0]);
        bool isDaily = Daily.Contains(parts[0]) || WordStems.Of(never).Any(_known.Contains);
        return isName && !isDaily && at > 0 && (Before.Contains(_bare[at - 1]) || IsOfGame(at - 1) || char.IsDigit(_bare[at - 1].FirstOrDefault())) && Near(at, Around).Count(IsOfGame) >= FewestAround;
    }

    // 'Tiles, sorry, ware', 'don't call them tiles'.
    private bool IsPutRight(int at, string name)
    {
        HashSet<string> right = [.. WordStems.Of(name)];
        bool isSpokenOf = Enumerable.Range(Math.Max(0, at - 3), Math.Min(3, at)).Any(i => NotUsed.Contains(_bare[i]));
        int[] behind = [.. Enumerable.Range(at + 1, RepairReach).Where(i => i < _words.Length)];
        return isSpokenOf || (behind.Take(3).Any(i => NotUsed.Contains(_bare[i])) && behind.Any(i => WordStems.Of(_words[i].Text).Any(right.Contains)));
    }

    private bool IsOfGame(int at) => WordStems.Of(_words[at].Text) is [{ } stem, ..] && _known.Contains(stem);

    private IEnumerable<int> Near(int at, int reach) => Enumerable.Range(at - reach, (2 * reach) + 1).Where(i => i != at && i >= 0 && i < _words.Length);
}
