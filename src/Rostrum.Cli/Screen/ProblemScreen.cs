using System.Collections.Immutable;
using System.Text;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows problems on a screen, the first twenty of them.</summary>
internal static class ProblemScreen
{
    /// <summary>How many are shown.</summary>
    public const int Most = 20;

    /// <summary>The text, with a blank line between two problems; empty where there is none.</summary>
    /// <param name="problems">In the order in which they are shown.</param>
    public static string Of(ImmutableArray<Diagnostic> problems)
    {
        var text = new StringBuilder();
        foreach (Diagnostic problem in problems.Take(Most))
        {
            text.Append(DiagnosticText.Render(problem, Paper.Width)).Append("\n\n");
        }

        int further = problems.Sum(p => p.Further);
        string kept = further > 0 ? $"the first {problems.Length} with --json" : "all with --json";
        return problems.Length > Most ? text.Append($"… and {problems.Length - Most + further} more ({kept})\n").ToString() : text.ToString();
    }
}
