using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>What <c>columns</c> or <c>rows</c> of a board says: <c>bay A to E</c>, <c>A to E</c>, <c>A to H J</c>, <c>bay</c>.</summary>
/// <param name="Name">What a line is called; null where it only has labels.</param>
/// <param name="Labels">The labels in order; empty where none are named.</param>
/// <param name="Near">How it is written, where it was written with a dash (<c>bay A-E</c>); else null.</param>
internal sealed record LineLabels(string? Name, ImmutableArray<string> Labels, string? Near)
{
    private static readonly string[] Dashes = ["-", "–", "—", ".."];

    /// <summary>Reads the words.</summary>
    public static LineLabels Of(string text)
    {
        string[] words = Prose.Fold(text).Split(' ');
        int to = Array.IndexOf(words, "to");
        if (to >= 1 && to + 1 < words.Length)
        {
            return new LineLabels(Joined(words[..(to - 1)]), [.. SpaceList.Ranged([.. words[(to - 1)..].Select(w => w.TrimEnd(',')).Where(w => w.Length > 0)])], null);
        }

        string[] ends = words[^1].Split(Dashes, 2, StringSplitOptions.RemoveEmptyEntries);
        ImmutableArray<string> labels = ends.Length == 2 ? [.. LabelRange.Between(ends[0], ends[1])] : [];
        return labels.Length > 2
            ? new LineLabels(Joined(words[..^1]), labels, string.Join(' ', [.. words[..^1], ends[0], "to", ends[1]]))
            : new LineLabels(Joined(words), [], null);
    }

    private static string? Joined(string[] words) => words.Length == 0 || words[0].Length == 0 ? null : string.Join(' ', words);
}
