using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Steps;

/// <summary>Finds the step or action that an author most likely meant.</summary>
internal static class StepHelp
{
    private const int MostWords = 4;

    /// <summary>The words that are misspelt, and the nearest beginning of a step or action; null where none is near enough.</summary>
    public static (SourceSpan At, string? Near) Nearest(ImmutableArray<Token> tokens, IReadOnlyList<ActionName> actions)
    {
        string[] known = [.. StepWords.All, .. Loading.Sections.ActionsSection.BlockKeys, .. actions.Select(a => a.Name), .. actions.Select(Lead).OfType<string>()];
        int most = Math.Min(MostWords, tokens.Length - 1);
        for (int length = most; length > 0; length--)
        {
            SourceSpan span = tokens[0].Span.To(tokens[length - 1].Span);
            string written = string.Join(' ', tokens.Take(length).Select(t => t.Text));
            if (NearSpelling.Find(written, known.Where(k => Prose.WordsOf(k).Length == length)) is { } near)
            {
                return (span, near);
            }
        }

        return (tokens[0].Span, null);
    }

    private static string? Lead(ActionName action) => action.Phrase.Parts is [{ IsGap: false } first, ..] ? first.Words : null;
}
