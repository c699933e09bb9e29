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

        return problems.Length > Most ? text.Append($"… and {problems.Length - Most} more (all with --json)\n").ToString() : text.ToString();
    }
}
