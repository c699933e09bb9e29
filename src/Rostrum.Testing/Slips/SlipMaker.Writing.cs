using System.Globalization;
using Rostrum.Text;

namespace Rostrum.Testing.Slips;

/// <summary>What a slip writes in the place of what is right.</summary>
public sealed partial class SlipMaker
{
    private static bool CanSwap(string content, int at) => at + 1 < content.Length && char.IsLetter(content[at + 1]) && content[at] != content[at + 1];

    private static string OtherLetter(char letter, SlipDraws draws)
    {
        char first = char.IsUpper(letter) ? 'A' : 'a';
        char other = (char)(first + draws.Below(26));
        return other == letter ? $"{(char)(first + ((other - first + 1) % 26))}" : $"{other}";
    }

    // A word goes with the blank beside it.
    private static TextEdit WithoutWord(SourceText text, SourceSpan word) => new(
        IsBlank(text.Content, word.End) ? text.Span(word.Start, word.Length + 1)
            : word.Start > 0 && text.Content[word.Start - 1] == ' ' ? text.Span(word.Start - 1, word.Length + 1) : word,
        "");

    private static string OtherWord(SourceText text, string word, SlipDraws draws)
    {
        string[] others = [.. SlipWords.In(text.Content).Distinct().Where(w => !w.Equals(word, StringComparison.OrdinalIgnoreCase))];
        return draws.Of(others);
    }

    private static string OtherNumber(string number, SlipDraws draws)
    {
        long value = long.Parse(number, CultureInfo.InvariantCulture);
        return $"{draws.Below(4) switch { 0 when value > 0 => value - 1, 1 => value * 10, 2 => value + 10, _ => value + 1 }}" is var other && other != number ? other : $"{value + 1}";
    }

    private static TextEdit Indented(SourceText text, int line, SlipDraws draws)
    {
        string written = text.Line(line);
        int blanks = written.Length - written.TrimStart().Length;
        int start = text.LineStart(line);
        return draws.Below(5) switch
        {
            0 => new TextEdit(text.Span(start, 0), " "),
            1 when blanks >= 1 => new TextEdit(text.Span(start, 1), ""),
            2 when blanks >= 2 => new TextEdit(text.Span(start, 2), ""),
            3 when blanks >= 2 => new TextEdit(text.Span(start, 2), "\t"),
            _ => new TextEdit(text.Span(start, 0), "  "),
        };
    }

    // Behind the next word, or behind the word before the last.
    private static IEnumerable<TextEdit> Moved(SourceText text, int comma)
    {
        (int start, int end) = (text.LineStart(text.LineIndexOf(comma)), text.LineEnd(text.LineIndexOf(comma)));
        SourceSpan[] words = [.. SlipWords.Word().Matches(text.Content[start..end]).Select(m => text.Span(start + m.Index, m.Length))];
        if (words.FirstOrDefault(w => w.Start > comma) is { Length: > 0 } next)
        {
            yield return new TextEdit(text.Span(comma, next.End - comma), $"{text.Content[(comma + 1)..next.End]},");
        }

        if (words.LastOrDefault(w => w.End <= comma) is { Length: > 0 } last && last.Start > start && text.Content[last.Start - 1] == ' ')
        {
            yield return new TextEdit(text.Span(last.Start - 1, comma + 1 - (last.Start - 1)), $",{text.Content[(last.Start - 1)..comma]}");
        }
    }
}
