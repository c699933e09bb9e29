using System.Collections.Frozen;
using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>Finds what an unknown word most likely stands for.</summary>
internal static class NameHelp
{
    private const int MostWords = 3;

    // Words of other languages of formulas, and of plain English, with what is written here.
    private static readonly FrozenDictionary<string, string> Instead = new Dictionary<string, string>
    {
        ["plus"] = "'+'",
        ["x"] = "'times'",
        ["multiplied"] = "'times'",
        ["divided"] = "'down(number, by 2)' or 'up(number, by 2)'",
        ["equals"] = "'is'",
        ["more"] = "'is more than' behind what is compared",
        ["less"] = "'is less than' behind what is compared",
        ["fewer"] = "'is less than' behind what is compared",
        ["greater"] = "'is more than'",
        ["then"] = "it the other way round, as in '5 if count(my apples) is more than 3 otherwise 0'",
        ["else"] = "'otherwise'",
        ["for"] = "a key 'each' for what is gone through and 'points' for what each scores",
        ["number"] = "'count(…)'",
        ["total"] = "'sum(what, number of each)'",
        ["max"] = "'largest(what, number of each)'",
        ["min"] = "'smallest(what, number of each)'",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly string[] Anything = ["thing", "things", "piece", "pieces", "anything", "something"];

    // Words of the grammar with which the name of a line goes on.
    private static readonly string[] BehindOf = ["of", "my", "their", "the"];

    // `less then 3`
    private static readonly FrozenDictionary<string, string> Compared = new Dictionary<string, string> { ["less"] = "less", ["fewer"] = "less", ["more"] = "more", ["greater"] = "more" }
        .ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The message for a word that nobody declared, with the nearest name; names of several words are tried too.</summary>
    public static Diagnostic Unknown(Vocabulary names, ImmutableArray<Token> tokens, int at)
    {
        if (tokens[at + 1].Is("then") && Compared.TryGetValue(tokens[at].Text, out string? compared))
        {
            return FormulaProblems.ThenForThan(tokens[at].Span.To(tokens[at + 1].Span), compared);
        }

        if (ThingIn(tokens, at) is { } thing)
        {
            return thing;
        }

        if (Area(names, tokens[at]) is { } area)
        {
            return area;
        }

        if (tokens[at + 1].Is("was"))
        {
            return FormulaProblems.NoSuchAction(tokens[at].Span, tokens[at].Text, Actions(names));
        }

        // 'total worht' is a misspelt name, and 'total' alone is another language's word.
        string? instead = Instead.GetValueOrDefault(tokens[at].Text);
        if (Nearest(names, tokens, at, instead is null ? 1 : 2) is { } nearest)
        {
            return nearest;
        }

        if (Counter(tokens, at) is { } counter)
        {
            return counter;
        }

        if (NumberOf(names, tokens, at) is { } number)
        {
            return number;
        }

        if (instead is not null)
        {
            return FormulaProblems.OtherWord(tokens[at].Span, tokens[at].Text, instead);
        }

        if (at == 0 && tokens[at].Is("each"))
        {
            return FormulaProblems.EachIsAKey(tokens[at].Span);
        }

        return Lines(names, tokens[at]) ?? FormulaProblems.UnknownName(tokens[at].Span, tokens[at].Text, null, null);
    }

    /// <summary>The names of the actions, in the order of the sheet.</summary>
    public static string[] Actions(Vocabulary names) => [.. names.All.Select(n => n.Symbol).OfType<ActionName>().Select(a => a.Name).Distinct()];

    // `turns is 20`, `count(rounds) is 10`, `number of turns is 20`
    private static Diagnostic? Counter(ImmutableArray<Token> tokens, int at)
    {
        bool isNumberOf = tokens[at].Is("number") && tokens[at + 1].Is("of");
        int word = isNumberOf ? at + 2 : at;
        string? of = tokens[word].Is("turn") || tokens[word].Is("turns") ? "turn" : tokens[word].Is("round") || tokens[word].Is("rounds") ? "round" : null;
        if (of is null)
        {
            return null;
        }

        bool isCounted = at > 1 && tokens[at - 2].Is("count") && tokens[at - 1].Is("(") && tokens[word + 1].Is(")");
        SourceSpan span = isCounted ? tokens[at - 2].Span.To(tokens[word + 1].Span) : tokens[at].Span.To(tokens[word].Span);
        return FormulaProblems.CounterMeant(span, $"{of} number", of);
    }

    // `number of course of spot`: a line, a slot or a value has a number, and there are several of everything else.
    private static Diagnostic? NumberOf(Vocabulary names, ImmutableArray<Token> tokens, int at)
    {
        if (!tokens[at].Is("number") || !tokens[at + 1].Is("of") || !names.Match(tokens, at + 2).Senses.Any(s => s is { IsPlural: false, Symbol: LineFamily }))
        {
            return null;
        }

        int last = at + 2;
        while (tokens[last + 1].Kind is TokenKind.Word or TokenKind.Number && (BehindOf.Any(tokens[last + 1].Is) || !Vocabulary.GrammarWords.Contains(tokens[last + 1].Text)))
        {
            last++;
        }

        return FormulaProblems.NumberOf(tokens[at].Span, tokens[at + 2].Span.To(tokens[last].Span).Text);
    }

    // A declared name that is nearly written round the unknown word, with at least so many words.
    private static Diagnostic? Nearest(Vocabulary names, ImmutableArray<Token> tokens, int at, int leastWords)
    {
        for (int first = Math.Max(0, at - MostWords + 1); first <= at; first++)
        {
            for (int length = MostWords; first + length > at && length >= leastWords; length--)
            {
                if (first + length <= tokens.Length - 1 && (length > 1 || first == at) && Near(tokens, first, length, names) is { } near)
                {
                    SourceSpan span = tokens[first].Span.To(tokens[first + length - 1].Span);
                    Named? symbol = names.Find(near).Select(s => s.Symbol).FirstOrDefault();
                    return FormulaProblems.UnknownName(span, span.Text, near, symbol);
                }
            }
        }

        return null;
    }

    /// <summary>The word of a look that a letter may be a misspelling of; null for one letter, or where none is near.</summary>
    public static string? NearLook(Vocabulary names, string letter) =>
        letter.Length < 2 ? null : NearSpelling.Find(letter, names.All.Where(n => FormulaParser.TellsLook([new NameSense(n.Symbol, false)])).Select(n => n.Words));

    // `a thing in stock`, `pieces in my field`: a place is what lies in it.
    private static Diagnostic? ThingIn(ImmutableArray<Token> tokens, int at)
    {
        if (!Anything.Any(tokens[at].Is) || !tokens[at + 1].Is("in"))
        {
            return null;
        }

        int last = at + 1;
        while (tokens[last + 1].Kind == TokenKind.Word && (tokens[last + 1].Is("my") || !Vocabulary.GrammarWords.Contains(tokens[last + 1].Text)))
        {
            last++;
        }

        bool isOne = at > 0 && (tokens[at - 1].Is("a") || tokens[at - 1].Is("one"));
        SourceSpan place = tokens[Math.Min(at + 2, last)].Span.To(tokens[last].Span);
        return last == at + 1 ? null : FormulaProblems.ThingIn(tokens[isOne ? at - 1 : at].Span.To(place), tokens[at].Text, place.Text, isOne);
    }

    // `bog` alone is the label of an area: it needs its family and its board.
    private static Diagnostic? Area(Vocabulary names, Token token) => names.All.Select(n => n.Symbol).OfType<LineFamily>().Where(f => f.Form == LineForm.Areas)
        .SelectMany(f => f.Lines.Where(l => string.Equals(l.Label, token.Text, StringComparison.OrdinalIgnoreCase)).Select(l => $"{f.Name} {l.Label} of {(f.Board.EachPlayer ? "my " : "")}{f.Board.Name}"))
        .Select(a => FormulaProblems.UnknownName(token.Span, token.Text, a, null)).FirstOrDefault();

    // Rows and columns are there before they have a name, or under another one.
    private static Diagnostic? Lines(Vocabulary names, Token token)
    {
        string word = token.Text.ToLowerInvariant();
        if (word is not ("row" or "rows" or "column" or "columns"))
        {
            return null;
        }

        bool isPlural = word.EndsWith('s');
        LineForm form = word.StartsWith('c') ? LineForm.Columns : LineForm.Rows;
        return names.All.Select(n => n.Symbol).OfType<LineFamily>().FirstOrDefault(f => f.Form == form) is { } family
            ? FormulaProblems.UnknownName(token.Span, token.Text, isPlural ? family.Plural : family.Name, family)
            : FormulaProblems.LineWithoutName(token.Span, token.Text, form == LineForm.Columns ? "columns" : "rows", form == LineForm.Columns ? "column" : "row");
    }

    private static string? Near(ImmutableArray<Token> tokens, int first, int length, Vocabulary names)
    {
        string written = string.Join(' ', tokens.Skip(first).Take(length).Select(t => t.Text));
        return NearSpelling.Find(written, names.OfLength(length));
    }
}
