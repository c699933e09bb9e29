using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>Cuts a formula into words, numbers and signs.</summary>
internal static class Lexer
{
    /// <summary>All parts in order; the last one is the end.</summary>
    /// <param name="words">The formula.</param>
    public static ImmutableArray<Token> Cut(FormulaText words)
    {
        var tokens = ImmutableArray.CreateBuilder<Token>();
        string text = words.Text;
        int at = 0;
        while (at < text.Length)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                at++;
                continue;
            }

            int length = LengthAt(text, at);
            tokens.Add(Make(words, at, length));
            at += length;
        }

        tokens.Add(new Token(TokenKind.End, "", text.Length, words.SpanOf(text.Length, 0), 0));
        return tokens.ToImmutable();
    }

    private static int LengthAt(string text, int at)
    {
        if (!IsWordSign(text, at))
        {
            return char.IsHighSurrogate(text[at]) && at + 1 < text.Length ? 2 : 1;
        }

        int end = at;
        while (end < text.Length && (IsWordSign(text, end) || IsInnerHyphen(text, end)))
        {
            end++;
        }

        return end - at;
    }

    private static bool IsWordSign(string text, int at) =>
        char.IsLetterOrDigit(text, at) || text[at] is '\'' or '’' or '_' || CharUnicodeInfo.GetUnicodeCategory(text, at) is UnicodeCategory.NonSpacingMark
        || (char.IsLowSurrogate(text[at]) && at > 0 && char.IsLetterOrDigit(text, at - 1));

    private static bool IsInnerHyphen(string text, int at) =>
        text[at] == '-' && at > 0 && at + 1 < text.Length && char.IsLetterOrDigit(text[at - 1]) && char.IsLetter(text[at + 1]);

    private static Token Make(FormulaText words, int at, int length)
    {
        string text = words.Text.Substring(at, length);
        SourceSpan span = words.SpanOf(at, length);
        if (text.All(char.IsAsciiDigit) && long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number) && number <= int.MaxValue)
        {
            return new Token(TokenKind.Number, text, at, span, number);
        }

        if (Prose.NumberOf(text) is { } spelt)
        {
            return new Token(TokenKind.Number, text, at, span, spelt);
        }

        TokenKind kind = IsWordSign(words.Text, at) ? TokenKind.Word : text is "(" or ")" or "," or "+" or "-" ? TokenKind.Sign : TokenKind.Stray;
        return new Token(kind, text, at, span, 0);
    }
}
