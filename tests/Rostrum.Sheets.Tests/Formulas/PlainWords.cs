using System.Text.RegularExpressions;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>Words from layers that no author ever chose; no message may say one.</summary>
internal static partial class PlainWords
{
    /// <summary>The words of a message that it must not use.</summary>
    public static IEnumerable<string> ForbiddenIn(Diagnostic problem) =>
        Forbidden().Matches($"{problem.Message} {problem.Hint} {problem.Fix?.Title} {string.Join(' ', problem.Related.Select(r => r.Note))}").Select(m => m.Value);

    [GeneratedRegex(@"\b(tokens?|pars\w+|nodes?|scalars?|mappings?|sequences?|null|exceptions?|invalid|illegal character|syntax|unexpected|EOF|AST|identifiers?|booleans?|integers?|strings?|enums?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Forbidden();
}
