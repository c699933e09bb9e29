using System.Collections.Immutable;

namespace Rostrum.Rulings.Telling;

/// <summary>A reason in words, and the spaces that it points at.</summary>
/// <param name="Reason">English without a full stop, to be read aloud.</param>
/// <param name="Spaces">Names of spaces, each once; may be empty.</param>
internal sealed record Tale(string Reason, ImmutableArray<string> Spaces)
{
    /// <summary>What the reason is the reason of, such as <c>A4 is open</c>; null where it stands alone.</summary>
    public string? Claim { get; init; }

    /// <summary>All of it: <c>A4 is open: A4 is empty</c>.</summary>
    public string Text => Claim is null ? Reason : $"{Claim}: {Reason}";

    /// <summary>All of it as the reason of something else: <c>A4 is open, because A4 is empty</c>.</summary>
    public string AsReason => Claim is null ? Reason : $"{Claim}, because {Reason}";

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

    // Of a claim whose reason is told already, only the claim is told.
    private Tale Beside(ImmutableArray<Tale> told) => Claim is not null && told.Any(t => Says(t.Text, Reason)) ? new Tale(Claim, Spaces) : this;

    // A reason that a longer one ends with, or goes on from, is said already.
    private static bool Says(string told, string part)
    {
        int at = told.IndexOf(part, StringComparison.Ordinal);
        int end = at + part.Length;
        return at == 0 ? end == told.Length : at > 0 && told[at - 1] == ' ' && (end == told.Length || told[end] is ' ' or ',' or ';');
    }
}
