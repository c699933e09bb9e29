namespace Rostrum.Text.Outline;

/// <summary>Signs that mean something of their own to every program that reads this kind of file.</summary>
internal static class OwnedSigns
{
    /// <summary>Tells a bare text that begins with such a sign.</summary>
    public static void Check(OutlineScalar text, DiagnosticBag problems)
    {
        if (text.Style == OutlineStyle.Plain && text.Text.Length > 0 && text.Text[0] is '&' or '*' or '!' or '%' or '@' or '`')
        {
            // Over several lines it may hold comments, or a slip may have swallowed what follows.
            FixGrade grade = text.Span.Text.AsSpan().ContainsAny('\n', '\r') ? FixGrade.Choice : FixGrade.Safe;
            problems.Add(OutlineProblems.OwnedSign(text.Span, OutlineQuotes.QuoteFix(text.Span, grade)));
        }
    }
}
