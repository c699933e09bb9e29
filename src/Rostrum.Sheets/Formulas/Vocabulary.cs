using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <summary>The names that formulas may use: those of the sheet, of the kernel, and of the scope at hand. The longest known name wins.</summary>
public sealed class Vocabulary
{
    /// <summary>Words of the grammar: no name that formulas use may hold one.</summary>
    public static ImmutableHashSet<string> GrammarWords { get; } = ImmutableHashSet.Create(
        StringComparer.OrdinalIgnoreCase,
        "if", "otherwise", "or", "and", "not", "is", "am", "in", "shows", "can", "of", "where", "times", "except", "minus", "the", "my", "their",
        "it", "a", "an", "to", "from", "nothing", "was", "this", "at", "by", "with", "than");

    private readonly Dictionary<string, List<NameEntry>> _byFirstWord = new(StringComparer.OrdinalIgnoreCase);
    private readonly Vocabulary? _outer;

    /// <summary>An empty vocabulary.</summary>
    public Vocabulary()
    {
    }

    private Vocabulary(Vocabulary outer) => _outer = outer;

    /// <summary>A vocabulary that knows everything this one knows, and more.</summary>
    public Vocabulary Inner() => new(this);

    /// <summary>Makes a name known.</summary>
    /// <param name="words">The singular or plural form.</param>
    /// <param name="symbol">What it names.</param>
    /// <param name="isPlural">True for the plural form.</param>
    public void Add(string words, Named symbol, bool isPlural = false)
    {
        string[] parts = Split(words);
        if (parts.Length == 0)
        {
            return;
        }

        if (!_byFirstWord.TryGetValue(parts[0], out List<NameEntry>? entries))
        {
            _byFirstWord[parts[0]] = entries = [];
        }

        int known = entries.FindIndex(e => SameWords(e.Words, parts));
        if (known < 0)
        {
            entries.Add(new NameEntry([.. parts], [new NameSense(symbol, isPlural)]));
        }
        else if (!entries[known].Senses.Any(s => ReferenceEquals(s.Symbol, symbol)))
        {
            entries[known] = entries[known] with { Senses = entries[known].Senses.Add(new NameSense(symbol, isPlural)) };
        }
    }

    /// <summary>What the exact words name; empty where nothing.</summary>
    public ImmutableArray<NameSense> Find(string words)
    {
        string[] parts = Split(words);
        return parts.Length == 0 ? [] : FindExact(parts);
    }

    /// <summary>Every name that is known, for suggestions.</summary>
    public IEnumerable<(string Words, Named Symbol)> All =>
        _byFirstWord.Values.SelectMany(list => list).SelectMany(e => e.Senses.Select(s => (string.Join(' ', e.Words), s.Symbol))).Concat(_outer?.All ?? []);

    /// <summary>The longest known name that begins at a token.</summary>
    internal (int Length, ImmutableArray<NameSense> Senses) Match(ImmutableArray<Token> tokens, int at)
    {
        (int Length, ImmutableArray<NameSense> Senses) best = _outer?.Match(tokens, at) ?? (0, []);
        if (tokens[at].Kind is TokenKind.Word or TokenKind.Number)
        {
            best = MatchHere(tokens[at].Text, tokens, at, best);
        }

        // `three` is the value 3.
        return tokens[at].Kind == TokenKind.Number ? MatchHere(Digits(tokens[at]), tokens, at, best) : best;
    }

    private (int Length, ImmutableArray<NameSense> Senses) MatchHere(
        string first, ImmutableArray<Token> tokens, int at, (int Length, ImmutableArray<NameSense> Senses) best)
    {
        if (!_byFirstWord.TryGetValue(first, out List<NameEntry>? entries))
        {
            return best;
        }

        foreach (NameEntry entry in entries.Where(e => e.Words.Length >= best.Length && Matches(e, tokens, at)))
        {
            if (entry.Words.Length >= best.Length)
            {
                best = (entry.Words.Length, entry.Senses);
            }
        }

        return best;
    }

    private static string Digits(Token number) => number.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The words of a name, blanks folded.</summary>
    internal static string[] Split(string words) => words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static bool Matches(NameEntry entry, ImmutableArray<Token> tokens, int at)
    {
        for (int i = 0; i < entry.Words.Length; i++)
        {
            bool isSame = at + i < tokens.Length
                && (SameWord(entry.Words[i], tokens[at + i].Text) || (tokens[at + i].Kind == TokenKind.Number && entry.Words[i] == Digits(tokens[at + i])));
            if (!isSame)
            {
                return false;
            }
        }

        return true;
    }

    // A single letter is itself only: a space `S` and a letter `s` are two names.
    private static bool SameWord(string known, string written) =>
        string.Equals(known, written, known.Length == 1 ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase);

    private static bool SameWords(ImmutableArray<string> known, string[] written) =>
        known.Length == written.Length && known.Zip(written).All(p => SameWord(p.First, p.Second));

    private ImmutableArray<NameSense> FindExact(string[] parts)
    {
        if (_byFirstWord.TryGetValue(parts[0], out List<NameEntry>? entries))
        {
            int found = entries.FindIndex(e => SameWords(e.Words, parts));
            if (found >= 0)
            {
                return entries[found].Senses;
            }
        }

        return _outer?.FindExact(parts) ?? [];
    }

    private sealed record NameEntry(ImmutableArray<string> Words, ImmutableArray<NameSense> Senses);
}

/// <summary>One thing that a name may mean.</summary>
/// <param name="Symbol">What it names.</param>
/// <param name="IsPlural">True where the name is the plural.</param>
public readonly record struct NameSense(Named Symbol, bool IsPlural);
