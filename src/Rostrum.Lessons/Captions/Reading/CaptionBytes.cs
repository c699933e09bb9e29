using System.Buffers.Binary;
using System.Text;
using Rostrum.Text;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Makes text of the bytes of a caption file.</summary>
internal static class CaptionBytes
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text, and which letters it was taken to be written in.</summary>
    /// <param name="name">The file's name, for messages.</param>
    /// <param name="bytes">The whole file.</param>
    public static (SourceText Text, CaptionLetters Letters) Decode(string name, ReadOnlySpan<byte> bytes)
    {
        (string content, CaptionLetters letters) = bytes switch
        {
            [0xEF, 0xBB, 0xBF, .. var rest] => Utf8(rest),
            [0xFF, 0xFE, .. var rest] => Utf16(rest, isBigEndian: false),
            [0xFE, 0xFF, .. var rest] => Utf16(rest, isBigEndian: true),
            _ => Utf8(bytes),
        };
        return (new SourceText(name, content), letters);
    }

    private static (string Content, CaptionLetters Letters) Utf8(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return (StrictUtf8.GetString(bytes), CaptionLetters.Sound);
        }
        catch (DecoderFallbackException)
        {
            return (Windows1252.Decode(bytes), CaptionLetters.TakenForWestern);
        }
    }

    // Halves of characters are made U+FFFD below, as is a last odd byte.
    private static (string Content, CaptionLetters Letters) Utf16(ReadOnlySpan<byte> bytes, bool isBigEndian)
    {
        var text = new StringBuilder(bytes.Length / 2);
        for (int i = 0; i + 1 < bytes.Length; i += 2)
        {
            text.Append((char)(isBigEndian ? BinaryPrimitives.ReadUInt16BigEndian(bytes[i..]) : BinaryPrimitives.ReadUInt16LittleEndian(bytes[i..])));
        }

        text.Append(bytes.Length % 2 == 0 ? "" : "\uFFFD");
        string raw = text.ToString();
        string sound = Whole(raw);
        return (sound, bytes.Length % 2 == 0 && sound == raw ? CaptionLetters.Sound : CaptionLetters.Damaged);
    }

    private static string Whole(string raw)
    {
        var whole = new StringBuilder(raw.Length);
        foreach (Rune rune in raw.EnumerateRunes())
        {
            whole.Append(rune.ToString());
        }

        return whole.ToString();
    }
}

/// <summary>Whether the letters of a file could be read for sure.</summary>
internal enum CaptionLetters
{
    /// <summary>UTF-8 or UTF-16 without a flaw.</summary>
    Sound,

    /// <summary>No UTF-8, so every byte was taken for a letter of Western Europe.</summary>
    TakenForWestern,

    /// <summary>UTF-16 with halves of characters, which are lost.</summary>
    Damaged,
}
