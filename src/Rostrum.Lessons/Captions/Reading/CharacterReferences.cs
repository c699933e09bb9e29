using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using Markdig.Helpers;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Character references such as <c>&amp;amp;</c> and <c>&amp;#x20;</c>, read as HTML reads them outside of an attribute.</summary>
/// <remarks>WebVTT took over all references of HTML (w3c/webvtt, pull request 253). The names with a semicolon are those of the library that reads
/// our lessons; those that count without one are the 106 of the list of HTML.</remarks>
internal static class CharacterReferences
{
    private const char Unreadable = '\uFFFD';
    private const int LongestName = 32;

    // HTML, "named character references": those in the list without a semicolon.
    private static readonly FrozenSet<string> WithoutSemicolon = (
        "AElig AMP Aacute Acirc Agrave Aring Atilde Auml COPY Ccedil ETH Eacute Ecirc Egrave Euml GT Iacute Icirc Igrave Iuml LT Ntilde Oacute Ocirc " +
        "Ograve Oslash Otilde Ouml QUOT REG THORN Uacute Ucirc Ugrave Uuml Yacute aacute acirc acute aelig agrave amp aring atilde auml brvbar ccedil " +
        "cedil cent copy curren deg divide eacute ecirc egrave eth euml frac12 frac14 frac34 gt iacute icirc iexcl igrave iquest iuml laquo lt macr " +
        "micro middot nbsp not ntilde oacute ocirc ograve ordf ordm oslash otilde ouml para plusmn pound quot raquo reg sect shy sup1 sup2 sup3 szlig " +
        "thorn times uacute ucirc ugrave uml uuml yacute yen yuml").Split(' ').ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Reads what stands at an ampersand and adds what it means; a bare ampersand means itself.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where the ampersand stands.</param>
    /// <param name="into">Takes the meaning.</param>
    /// <returns>The offset behind the reference.</returns>
    public static int Read(string text, int at, StringBuilder into)
    {
        int read = at + 1 < text.Length && text[at + 1] == '#' ? Numeric(text, at + 2, into) : Named(text, at + 1, into);
        if (read > 0)
        {
            return read;
        }

        into.Append('&');
        return at + 1;
    }

    private static int Named(string text, int from, StringBuilder into)
    {
        int end = from;
        while (end < text.Length && end - from < LongestName && char.IsAsciiLetterOrDigit(text[end]))
        {
            end++;
        }

        if (end < text.Length && text[end] == ';' && EntityHelper.DecodeEntity(text.AsSpan(from, end - from)) is { } whole)
        {
            into.Append(whole);
            return end + 1;
        }

        while (end > from && !WithoutSemicolon.Contains(text[from..end]))
        {
            end--;
        }

        into.Append(end > from ? EntityHelper.DecodeEntity(text.AsSpan(from, end - from)) : null);
        return end > from ? end : 0;
    }

    private static int Numeric(string text, int from, StringBuilder into)
    {
        bool isHex = from < text.Length && text[from] is 'x' or 'X';
        int first = isHex ? from + 1 : from;
        int end = first;
        while (end < text.Length && (isHex ? char.IsAsciiHexDigit(text[end]) : char.IsAsciiDigit(text[end])))
        {
            end++;
        }

        if (end == first)
        {
            return 0;
        }

        AppendCode(into, text.AsSpan(first, end - first).TrimStart('0'), isHex);
        return end < text.Length && text[end] == ';' ? end + 1 : end;
    }

    private static void AppendCode(StringBuilder into, ReadOnlySpan<char> digits, bool isHex)
    {
        // Eight digits are more than any character has.
        bool isRead = int.TryParse(digits.Length > 8 ? "" : digits, isHex ? NumberStyles.AllowHexSpecifier : NumberStyles.None, CultureInfo.InvariantCulture, out int code);
        if (!isRead || !Rune.IsValid(code))
        {
            into.Append(Unreadable);
        }
        else
        {
            into.Append(code is >= 0x80 and <= 0x9F ? Windows1252.Character((byte)code).ToString() : new Rune(code).ToString());
        }
    }
}
