using System.Buffers.Binary;
using System.Text;

namespace Rostrum.Pictures;

/// <summary>Widths of letters, read from a TrueType file without any drawing library.</summary>
/// <remarks>Tables head, hhea, hmtx and cmap (format 4) of the OpenType specification (ISO/IEC 14496-22).
/// Kerning is left out on purpose, because the PNG writer does not kern either.</remarks>
public sealed class FontMetrics
{
    private readonly Dictionary<int, ushort> _glyphs = [];
    private readonly ushort[] _advances;
    private readonly double _unitsPerEm;

    /// <summary>Reads the tables.</summary>
    /// <param name="file">A whole TrueType file.</param>
    /// <exception cref="InvalidDataException">A needed table is missing.</exception>
    internal FontMetrics(ReadOnlySpan<byte> file)
    {
        _unitsPerEm = Word(Table(file, "head"), 18);
        ReadOnlySpan<byte> header = Table(file, "hhea");
        Ascent = Signed(header, 4) / _unitsPerEm;
        Descent = -Signed(header, 6) / _unitsPerEm;
        _advances = ReadAdvances(Table(file, "hmtx"), Word(header, 34));
        ReadGlyphs(UnicodeMap(Table(file, "cmap")));
    }

    /// <summary>Height above the base line that lines of text keep free; ems.</summary>
    public double Ascent { get; }

    /// <summary>Depth below the base line that lines of text keep free; ems, positive.</summary>
    public double Descent { get; }

    /// <summary>Whether the font can draw the character; otherwise an empty box stands for it.</summary>
    public bool Has(Rune character) => _glyphs.ContainsKey(character.Value);

    /// <summary>The width of a line of text.</summary>
    /// <param name="text">One line; a character that the font lacks is as wide as the empty box.</param>
    /// <param name="size">Height of an em, in the unit that the answer shall have.</param>
    public double Width(string text, double size)
    {
        long units = 0;
        foreach (Rune character in text.EnumerateRunes())
        {
            int glyph = _glyphs.GetValueOrDefault(character.Value);
            units += _advances[Math.Min(glyph, _advances.Length - 1)];
        }

        return units * size / _unitsPerEm;
    }

    private static ReadOnlySpan<byte> Table(ReadOnlySpan<byte> file, string tag)
    {
        for (int entry = 12; entry < 12 + (16 * Word(file, 4)); entry += 16)
        {
            if (Encoding.ASCII.GetString(file.Slice(entry, 4)) == tag)
            {
                int offset = BinaryPrimitives.ReadInt32BigEndian(file[(entry + 8)..]);
                return file.Slice(offset, BinaryPrimitives.ReadInt32BigEndian(file[(entry + 12)..]));
            }
        }

        throw new InvalidDataException($"The font has no table '{tag}'.");
    }

    private static ushort[] ReadAdvances(ReadOnlySpan<byte> table, int count)
    {
        ushort[] advances = new ushort[count];
        for (int glyph = 0; glyph < count; glyph++)
        {
            advances[glyph] = Word(table, 4 * glyph);
        }

        return advances;
    }

    private static ReadOnlySpan<byte> UnicodeMap(ReadOnlySpan<byte> table)
    {
        for (int entry = 4; entry < 4 + (8 * Word(table, 2)); entry += 8)
        {
            ReadOnlySpan<byte> map = table[BinaryPrimitives.ReadInt32BigEndian(table[(entry + 4)..])..];
            if (Word(table, entry) == 3 && Word(table, entry + 2) == 1 && Word(map, 0) == 4)
            {
                return map;
            }
        }

        throw new InvalidDataException("The font has no Unicode character map of format 4.");
    }

    private void ReadGlyphs(ReadOnlySpan<byte> map)
    {
        int doubled = Word(map, 6);
        for (int i = 0; i < doubled; i += 2)
        {
            int last = Word(map, 14 + i);
            int first = Word(map, 16 + doubled + i);
            int delta = Word(map, 16 + (2 * doubled) + i);
            int rangeAt = 16 + (3 * doubled) + i;
            int range = Word(map, rangeAt);
            for (int code = first; code <= last && code != 0xFFFF; code++)
            {
                int glyph = range == 0 ? code : Word(map, rangeAt + range + (2 * (code - first)));
                _glyphs[code] = glyph == 0 ? (ushort)0 : (ushort)((glyph + delta) & 0xFFFF);
            }
        }
    }

    private static ushort Word(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);

    private static short Signed(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt16BigEndian(bytes[at..]);
}
