using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Finds values between which a comma is missing: <c>[bowl jug, plate]</c>, <c>[bowl; jug]</c>.</summary>
internal static class ValueList
{
    /// <summary>The values of one member of a list: the member itself, or (with a message) the values that stand in it.</summary>
    public static IEnumerable<(string Word, SourceSpan At)> Of(LoadContext context, OutlineScalar member)
    {
        string text = member.Text;
        char parting = text.Contains(';', StringComparison.Ordinal) ? ';' : ' ';
        string[] parts = [.. text.Split(parting, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Prose.Fold)];
        if (member.Style != OutlineStyle.Plain || parts.Length < 2 || (parting == ' ' && !StandAlone(context, Prose.Fold(text), parts)))
        {
            return [(Prose.Fold(text), member.Span)];
        }

        context.Problems.Add(SheetProblems.ValuesWithoutComma(member.Span, parts));
        return Placed(member, parts);
    }

    /// <summary>Values with commas between them that no brackets hold together, such as <c>bowl, jug]</c>; told, and read all the same.</summary>
    public static IEnumerable<(string Word, SourceSpan At)> WithoutBrackets(LoadContext context, OutlineScalar text)
    {
        string[] parts = [.. text.Text.Split([',', '[', ']'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Prose.Fold)];
        context.Problems.Add(SheetProblems.ValuesWithoutBrackets(text.Span, parts));
        return Placed(text, parts);
    }

    // Every word is used without the others elsewhere in the sheet, and all of them together nowhere.
    private static bool StandAlone(LoadContext context, string whole, string[] parts) =>
        context.Mentions(whole) < 2 && parts.All(p => context.Uses(p) > 0 || context.Mentions(p) > context.Mentions(whole));

    private static IEnumerable<(string Word, SourceSpan At)> Placed(OutlineScalar member, string[] parts)
    {
        int at = 0;
        foreach (string part in parts)
        {
            at = member.Text.IndexOf(part, at, StringComparison.Ordinal);
            yield return (part, at < 0 ? member.Span : member.SpanOf(at, part.Length));
            at = Math.Max(at, 0) + part.Length;
        }
    }
}
