using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>Finds characters that an editor does not show: control characters, signs that turn the writing direction, halves of characters.</summary>
internal static class UnreadableCharacters
{
    /// <summary>Tells each line that holds some, once.</summary>
    public static void Report(SourceText text, DiagnosticBag problems)
    {
        int reportedLine = -1;
        for (int i = 0; i < text.Content.Length; i++)
        {
            if (!IsUnreadable(text.Content, i))
            {
                continue;
            }

            int line = text.LineIndexOf(i);
            if (line != reportedLine)
            {
                problems.Add(OutlineProblems.UnreadableCharacter(text.Span(i, 1), Removal(text, i, text.LineEnd(line))));
                reportedLine = line;
            }
        }
    }

    /// <summary>True for a character that an editor does not show.</summary>
    public static bool IsUnreadable(string content, int at) => content[at] switch
    {
        '\t' or '\n' or '\r' => false,
        < ' ' or (>= '\u007F' and <= '\u009F') => true,
        (>= '\u200B' and <= '\u200F') or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') => !JoinsLetters(content[at]),
        '\uFEFF' => at > 0,
        '\u2028' or '\u2029' or '\uFFFE' or '\uFFFF' => true,
        char c when char.IsHighSurrogate(c) => at + 1 == content.Length || !char.IsLowSurrogate(content[at + 1]),
        char c when char.IsLowSurrogate(c) => at == 0 || !char.IsHighSurrogate(content[at - 1]),
        _ => false,
    };

    private static Fix Removal(SourceText text, int from, int end)
    {
        var edits = ImmutableArray.CreateBuilder<TextEdit>();
        bool besideSigns = false;
        for (int i = from; i < end; i++)
        {
            if (IsUnreadable(text.Content, i))
            {
                edits.Add(new TextEdit(text.Span(i, 1), ""));
                besideSigns |= IsSign(text.Content, Next(text.Content, i, -1)) || IsSign(text.Content, Next(text.Content, i, 1));
            }
        }

        return new Fix("delete what cannot be seen in this line", besideSigns ? FixGrade.Choice : FixGrade.Safe, edits.ToImmutable());
    }

    // The nearest character in a direction that is seen.
    private static int Next(string content, int at, int step)
    {
        do
        {
            at += step;
        }
        while (at >= 0 && at < content.Length && (OutlineInput.IsSpace(content[at]) || IsUnreadable(content, at)));
        return at;
    }

    // Beside a sign, such as a backslash or a dash, the removal may give the sign another meaning.
    private static bool IsSign(string content, int at) =>
        at >= 0 && at < content.Length && content[at] is not ('\n' or '\r') && !char.IsLetterOrDigit(content[at]) && !OutlineInput.IsSpace(content[at]) && !IsUnreadable(content, at);

    // Zero-width joiner and non-joiner are letters' business in several scripts.
    private static bool JoinsLetters(char c) => c is '\u200C' or '\u200D';
}
