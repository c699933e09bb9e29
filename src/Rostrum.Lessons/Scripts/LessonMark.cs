using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Text;

namespace Rostrum.Lessons.Scripts;

/// <summary>What a presenter says about a piece of the script itself.</summary>
public enum MarkKind
{
    /// <summary>Left out on purpose: the names are clauses or variants.</summary>
    LeftOut,

    /// <summary>Said more simply than the rules are; it must be put right later or disclaimed aloud.</summary>
    Simplified,

    /// <summary>The rule behind an earlier simplification.</summary>
    PutRight,

    /// <summary>Promised for later: the names are topics, clauses or terms.</summary>
    Later,

    /// <summary>A number of things is announced; the first name is the number, the others are the things.</summary>
    Count,

    /// <summary>The topic teaches these clauses or terms.</summary>
    Teaches,
}

/// <summary>The marks of a script: <c>[I come to both later](later:burning)</c>, <c>&lt;!-- left out: solo --&gt;</c>.</summary>
public static class LessonMark
{
    private static readonly ImmutableArray<(string Word, MarkKind Kind)> Spoken =
        [("left out", MarkKind.LeftOut), ("simplified", MarkKind.Simplified), ("put right", MarkKind.PutRight), ("later", MarkKind.Later), ("count", MarkKind.Count)];

    private static readonly ImmutableArray<(string Word, MarkKind Kind)> Silent = [("teaches", MarkKind.Teaches), ("left out", MarkKind.LeftOut)];

    /// <summary>The words before the colon of a link's target.</summary>
    internal static IEnumerable<string> SpokenWords => Spoken.Select(s => s.Word);

    /// <summary>How a mark is written, such as <c>left out</c>.</summary>
    public static string WordOf(MarkKind kind) => Spoken.Concat(Silent).First(s => s.Kind == kind).Word;

    /// <summary>The mark that a link's target says; null where it says none.</summary>
    /// <param name="target">As written behind the link, <c>%20</c> for blanks allowed.</param>
    public static (MarkKind Kind, ImmutableArray<string> Names)? Read(string target)
    {
        ArgumentNullException.ThrowIfNull(target);
        return Read(Uri.UnescapeDataString(target), Spoken);
    }

    /// <summary>The mark that a note of the file says: <c>teaches: jugs, lamps</c>; null for any other note.</summary>
    internal static (MarkKind Kind, ImmutableArray<string> Names)? ReadNote(string words) => Read(words.Trim(), Silent);

    /// <summary>True where a target is meant for a mark, misspelt or not.</summary>
    internal static bool Looks(string target)
    {
        string words = Uri.UnescapeDataString(target);
        int colon = words.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && NearSpelling.Find(words[..colon], SpokenWords) is not null;
    }

    /// <summary>The number that a count announces; null where its first name is none.</summary>
    internal static int? Announced(ImmutableArray<string> names) =>
        names is [var first, ..] && int.TryParse(first, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number > 0 ? number : null;

    private static (MarkKind Kind, ImmutableArray<string> Names)? Read(string words, ImmutableArray<(string Word, MarkKind Kind)> forms)
    {
        int colon = words.IndexOf(':', StringComparison.Ordinal);
        string head = colon < 0 ? words : words[..colon];
        foreach ((string word, MarkKind kind) in forms)
        {
            if (head.Trim().Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return colon < 0 ? null : (kind, NamesIn(kind, words[(colon + 1)..]));
            }
        }

        return null;
    }

    // `count:4 bowls, jugs`: the number stands before the names without a comma.
    private static ImmutableArray<string> NamesIn(MarkKind kind, string words)
    {
        string rest = Prose.Fold(words);
        if (kind == MarkKind.Count)
        {
            int blank = rest.IndexOf(' ', StringComparison.Ordinal);
            return blank < 0 ? [rest] : [rest[..blank].TrimEnd(','), .. Parts(rest[blank..])];
        }

        return [.. Parts(rest)];
    }

    private static IEnumerable<string> Parts(string words) => words.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
