using System.Collections.Immutable;

namespace Rostrum.Rulings.Telling;

/// <summary>A reason in words, and the spaces that it points at.</summary>
/// <param name="Text">English without a full stop, to be read aloud.</param>
/// <param name="Spaces">Names of spaces, each once; may be empty.</param>
internal sealed record Tale(string Text, ImmutableArray<string> Spaces)
{
    /// <summary>True where the text is a word with the reason behind a colon; within another such text the colon becomes a <c>because</c>.</summary>
    public bool IsOfWord { get; init; }

    /// <summary>A reason that points nowhere.</summary>
    public static Tale Of(string text) => new(text, []);

    /// <summary>Several reasons as one.</summary>
    public static Tale Join(IEnumerable<Tale> tales, string between)
    {
        Tale[] all = [.. tales];
        Tale[] told = [.. all.Aggregate(ImmutableArray<Tale>.Empty, (sum, t) => sum.Any(e => Says(e.Text, t.Text)) ? sum : sum.Add(t.Beside(sum)))];
        ImmutableArray<string> spaces = [.. all.SelectMany(t => t.Spaces).Distinct()];
        return told is [var only] ? only with { Spaces = spaces } : new Tale(string.Join(between, told.Select(t => t.Text)), spaces);
    }

    // Of a word whose reason is told already, only the word is told.
    private Tale Beside(ImmutableArray<Tale> told)
    {
        int colon = IsOfWord ? Text.IndexOf(": ", StringComparison.Ordinal) : -1;
        return colon > 0 && told.Any(t => Says(t.Text, Text[(colon + 2)..])) ? this with { Text = Text[..colon], IsOfWord = false } : this;
    }

    // A reason that a longer one ends with, or goes on from, is said already.
    private static bool Says(string told, string part)
    {
        int at = told.IndexOf(part, StringComparison.Ordinal);
        int end = at + part.Length;
        return at == 0 ? end == told.Length : at > 0 && told[at - 1] == ' ' && (end == told.Length || told[end] is ' ' or ',' or ';');
    }
}
