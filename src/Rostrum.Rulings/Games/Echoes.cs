using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Rulings.Games;

/// <summary>One name that nothing bears, written in many places, is one problem.</summary>
internal static class Echoes
{
    private const int MostLines = 5;

    /// <summary>The problems, those of one name told once, with the lines of the others.</summary>
    /// <param name="problems">In order.</param>
    public static ImmutableArray<Diagnostic> Fold(ImmutableArray<Diagnostic> problems) =>
        [.. problems.GroupBy(p => IsOfName(p) ? (p.Id, p.Message, p.At.Source.Name, p.At.Text.ToUpperInvariant()) : (p.Id, p.Message, $"{p.At}", "")).Select(g => One([.. g]))];

    private static bool IsOfName(Diagnostic problem) => problem.At.Length > 0 && problem.Id is "ROS0201" or "ROS0213" or "ROS0214" or "ROS0221" or "ROS0228" or "ROS0501" or "ROS0207" or "ROS0311";

    private static Diagnostic One(Diagnostic[] same)
    {
        if (same.Length == 1)
        {
            return same[0];
        }

        int[] lines = [.. same.Skip(1).Select(p => p.At.StartPosition.Line).Distinct()];
        string where = lines.Length > MostLines
            ? $"{string.Join(", ", lines.Take(MostLines))} and {lines.Length - MostLines} more"
            : Prose.And(lines.Select(l => $"{l}"));
        return same[0] with
        {
            Hint = $"{same[0].Hint} The same stands in {(lines.Length == 1 ? "line" : "lines")} {where}.",
            Fix = same.All(p => p.Fix is { Edits.Length: 1 } fix && fix.Edits[0].NewText == same[0].Fix?.Edits[0].NewText)
                ? same[0].Fix! with { Edits = [.. same.SelectMany(p => p.Fix!.Edits).DistinctBy(e => e.At.Start)] }
                : same[0].Fix,
        };
    }
}
