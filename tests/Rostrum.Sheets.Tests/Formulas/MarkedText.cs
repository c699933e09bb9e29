namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>A text in which « and » mark the words that a message should underline.</summary>
internal sealed record MarkedText(string Text, int Start, int Length)
{
    public static MarkedText Of(string marked)
    {
        int start = marked.IndexOf('«', StringComparison.Ordinal);
        int end = marked.IndexOf('»', StringComparison.Ordinal);
        return new MarkedText(marked.Replace("«", "", StringComparison.Ordinal).Replace("»", "", StringComparison.Ordinal), start, end - start - 1);
    }
}
