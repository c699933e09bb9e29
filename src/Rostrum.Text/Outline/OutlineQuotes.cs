namespace Rostrum.Text.Outline;

/// <summary>Writes words so that an outline keeps them as they are.</summary>
public static class OutlineQuotes
{
    /// <summary>The words in double quotes, with <c>"</c> and <c>\</c> escaped and line ends written as <c>\n</c>.</summary>
    public static string Quote(string words)
    {
        string escaped = words.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
        return $"\"{escaped.ReplaceLineEndings("\\n")}\"";
    }

    /// <summary>A fix that puts the words of a stretch in double quotes.</summary>
    internal static Fix QuoteFix(SourceSpan words, FixGrade grade) =>
        new("put it in double quotes", grade, [new TextEdit(words, Quote(words.Text))]);
}
