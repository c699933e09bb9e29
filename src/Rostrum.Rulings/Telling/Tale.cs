using System.Collections.Immutable;

namespace Rostrum.Rulings.Telling;

/// <summary>A reason in words, and the spaces that it points at.</summary>
/// <param name="Text">English without a full stop, to be read aloud.</param>
/// <param name="Spaces">Names of spaces, each once; may be empty.</param>
internal sealed record Tale(string Text, ImmutableArray<string> Spaces)
{
    /// <summary>A reason that points nowhere.</summary>
    public static Tale Of(string text) => new(text, []);

    /// <summary>Several reasons as one.</summary>
    public static Tale Join(IEnumerable<Tale> tales, string between)
    {
        Tale[] all = [.. tales.DistinctBy(t => t.Text)];
        return new Tale(string.Join(between, all.Select(t => t.Text)), [.. all.SelectMany(t => t.Spaces).Distinct()]);
    }
}
