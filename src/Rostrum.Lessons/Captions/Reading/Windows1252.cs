namespace Rostrum.Lessons.Captions.Reading;

/// <summary>The letters of Western European Windows, which is Latin-1 with signs such as curly quotes in its gap.</summary>
internal static class Windows1252
{
    // 80 to 9F, after the index of the WHATWG encoding standard; the five that mean nothing stay control characters.
    private const string Gap =
        "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F" +
        "\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178";

    /// <summary>The character that a byte stands for.</summary>
    public static char Character(byte code) => code is >= 0x80 and <= 0x9F ? Gap[code - 0x80] : (char)code;

    /// <summary>The text of bytes; every byte is a character.</summary>
    public static string Decode(ReadOnlySpan<byte> bytes)
    {
        var text = new char[bytes.Length];
        for (int i = 0; i < bytes.Length; i++)
        {
            text[i] = Character(bytes[i]);
        }

        return new string(text);
    }
}
