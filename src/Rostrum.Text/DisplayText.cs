using System.Globalization;
using System.Text;

namespace Rostrum.Text;

/// <summary>How text takes room on a terminal.</summary>
internal static class DisplayText
{
    private const int ColumnsPerTab = 4;

    /// <summary>One line that is safe to show: control characters and signs that turn the writing direction become <c>·</c>.</summary>
    public static string Of(string text)
    {
        var shown = new StringBuilder();
        foreach (Rune rune in text.EnumerateRunes())
        {
            AppendSafe(shown, rune, tabStop: 1);
        }

        return shown.ToString();
    }

    /// <summary>Columns that a text takes.</summary>
    public static int WidthOf(string text)
    {
        int width = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            width += WidthOf(rune);
        }

        return width;
    }

    /// <summary>Adds a character as it is shown; a tab becomes blanks up to the next stop.</summary>
    /// <param name="shown">The line so far.</param>
    /// <param name="rune">The character.</param>
    /// <param name="tabStop">Columns up to the next tab stop.</param>
    public static void AppendSafe(StringBuilder shown, Rune rune, int tabStop)
    {
        if (rune.Value == '\t')
        {
            shown.Append(' ', tabStop);
        }
        else if (IsUnsafe(rune))
        {
            shown.Append('·');
        }
        else
        {
            shown.Append(rune.ToString());
        }
    }

    /// <summary>Columns from <paramref name="column"/> to the next tab stop, 1 to 4.</summary>
    public static int ToTabStop(int column) => ColumnsPerTab - (column % ColumnsPerTab);

    /// <summary>Columns that a character takes: 0 for one that combines with the one before, 2 for wide ones.</summary>
    /// <remarks>The wide ranges are the large blocks of East Asian and picture characters, from memory.</remarks>
    public static int WidthOf(Rune rune) => rune.Value switch
    {
        _ when IsUnsafe(rune) => 1,
        _ when Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
        >= 0x1100 and <= 0x115F => 2,
        >= 0x2E80 and <= 0xA4CF => 2,
        >= 0xAC00 and <= 0xD7A3 => 2,
        >= 0xF900 and <= 0xFAFF => 2,
        >= 0xFE30 and <= 0xFE6F => 2,
        >= 0xFF00 and <= 0xFF60 => 2,
        >= 0x1F300 and <= 0x1FAFF => 2,
        >= 0x20000 and <= 0x3FFFD => 2,
        _ => 1,
    };

    private static bool IsUnsafe(Rune rune) => Rune.IsControl(rune) || rune.Value is (>= 0x200E and <= 0x200F) or (>= 0x2028 and <= 0x202E) or (>= 0x2066 and <= 0x2069);
}
