using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>The names that formulas may use: those of the sheet, of the kernel, and of the scope at hand. The longest known name wins.</summary>
public sealed class Vocabulary
{
    /// <summary>Words of the grammar: no name that formulas use may hold one.</summary>
    public static ImmutableHashSet<string> GrammarWords { get; } = ImmutableHashSet.Create(
        StringComparer.OrdinalIgnoreCase,
        "if", "otherwise", "or", "and", "not", "is", "am", "in", "shows", "can", "of", "where", "times", "except", "minus", "the", "my", "their",
        "it", "a", "an", "to", "from", "nothing", "was", "this", "at", "by", "with", "than");

    // A tree of words, so that a thousand cards called `Task 1` to `Task 1000` cost no more than other names.
    private readonly Branch _root = new();
    private readonly List<Branch> _inOrder = [];
    private readonly List<ActionName> _actions = [];
    private readonly List<Place> _places = [];
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
        string[] parts = Prose.WordsOf(words);
        if (parts.Length == 0)
        {
            return;
        }

        Branch branch = parts.Aggregate(_root, (at, word) => at.Grow(word));
        if (branch.Senses.IsEmpty)
        {
            (branch.Words, branch.Length) = (string.Join(' ', parts), parts.Length);
            _inOrder.Add(branch);
        }

        if (!branch.Senses.Any(s => ReferenceEquals(s.Symbol, symbol)))
        {
            branch.Senses = branch.Senses.Add(new NameSense(symbol, isPlural));
            if (symbol is ActionName action)
            {
                _actions.Add(action);
            }

            if (symbol is Place place)
            {
                _places.Add(place);
            }
        }
    }

    /// <summary>What the exact words name; empty where nothing.</summary>
    public ImmutableArray<NameSense> Find(string words)
    {
        string[] parts = Prose.WordsOf(words);
        return parts.Length == 0 ? [] : FindExact(parts);
    }

    /// <summary>Every name that is known, for suggestions.</summary>
    public IEnumerable<(string Words, Named Symbol)> All =>
        _inOrder.SelectMany(e => e.Senses.Select(s => (e.Words, s.Symbol))).Concat(_outer?.All ?? []);

    /// <summary>The actions that are known, each once.</summary>
    internal IEnumerable<ActionName> Actions => _actions.Concat(_outer?.Actions ?? []).Distinct();

    /// <summary>The places that are known.</summary>
    internal IEnumerable<Place> Places => _places.Concat(_outer?.Places ?? []);

    /// <summary>Every name of so many words, for suggestions; the names of a scope before those round it.</summary>
    internal IEnumerable<string> OfLength(int words) => _inOrder.Where(b => b.Length == words).Select(b => b.Words).Concat(_outer?.OfLength(words) ?? []);

    /// <summary>The longest known name that begins at a token.</summary>
    internal (int Length, ImmutableArray<NameSense> Senses) Match(ImmutableArray<Token> tokens, int at)
    {
        (int Length, ImmutableArray<NameSense> Senses) best = _outer?.Match(tokens, at) ?? (0, []);
        return MatchFrom(_root, 0, tokens, at, best);
    }

    // `three` is the value 3 as well; of two names of equal length the later one wins.
    private static (int Length, ImmutableArray<NameSense> Senses) MatchFrom(
        Branch branch, int length, ImmutableArray<Token> tokens, int at, (int Length, ImmutableArray<NameSense> Senses) best)
    {
        if (length > 0 && length >= best.Length && !branch.Senses.IsEmpty)
        {
            best = (length, branch.Senses);
        }

        if (at + length >= tokens.Length || tokens[at + length].Kind is not (TokenKind.Word or TokenKind.Number))
        {
            return best;
        }

        Token token = tokens[at + length];
        if (branch.Find(token.Text) is { } written)
        {
            best = MatchFrom(written, length + 1, tokens, at, best);
        }

        return token.Kind == TokenKind.Number && Digits(token) is var digits && digits != token.Text && branch.Find(digits) is { } figure
            ? MatchFrom(figure, length + 1, tokens, at, best)
            : best;
    }

    private static string Digits(Token number) => number.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private ImmutableArray<NameSense> FindExact(string[] parts)
    {
        Branch? branch = _root;
        foreach (string word in parts)
        {
            branch = branch?.Find(word);
        }

        return branch is { Senses.IsEmpty: false } ? branch.Senses : _outer?.FindExact(parts) ?? [];
    }

    /// <summary>A word of a name with the words that may follow it.</summary>
    private sealed class Branch
    {
        private readonly Dictionary<string, Branch> _next = new(StringComparer.Ordinal);

        public string Words { get; set; } = "";

        /// <summary>How many words the name has.</summary>
        public int Length { get; set; }

        public ImmutableArray<NameSense> Senses { get; set; } = [];

        public Branch? Find(string word) => _next.GetValueOrDefault(KeyOf(word));

        public Branch Grow(string word)
        {
            string key = KeyOf(word);
            if (!_next.TryGetValue(key, out Branch? next))
            {
                _next[key] = next = new Branch();
            }

            return next;
        }

        // A single letter is itself only: a space `S` and a letter `s` are two names.
        private static string KeyOf(string word) => word.Length == 1 ? word : word.ToUpperInvariant();
    }
}

/// <summary>One thing that a name may mean.</summary>
/// <param name="Symbol">What it names.</param>
/// <param name="IsPlural">True where the name is the plural.</param>
public readonly record struct NameSense(Named Symbol, bool IsPlural);
