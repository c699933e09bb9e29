using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Xml;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Writes chapters as XML for Matroska, with the names and times that <c>mkvmerge --chapters</c> reads.</summary>
/// <remarks>Sense of the elements: RFC 9559, section Chapters. <c>mkvmerge</c> wants the first line, and times as <c>HH:MM:SS.nnnnnnnnn</c>
/// (hours to nanoseconds) where the standard has one number of nanoseconds. The numbers that tell chapters apart are made from their content, so that the
/// same chapters give the same file.</remarks>
internal static class MatroskaWriter
{
    public static string Write(ChapterList list, MatroskaLanguage language)
    {
        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, IndentChars = "  ", NewLineChars = "\n" }))
        {
            xml.WriteStartElement("Chapters");
            xml.WriteStartElement("EditionEntry");
            (Chapter Chapter, TimeSpan End)[] all = [.. list.WithEnds()];
            xml.WriteElementString("EditionUID", Uid(string.Join('\n', all.Select(c => $"{c.Chapter.Start.Ticks} {c.Chapter.Title}"))));
            for (int i = 0; i < all.Length; i++)
            {
                Write(xml, i, all[i].Chapter, i + 1 < all.Length || list.Length is not null ? all[i].End : null, language);
            }
        }

        return $"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{text}\n";
    }

    private static void Write(XmlWriter xml, int index, Chapter chapter, TimeSpan? end, MatroskaLanguage language)
    {
        xml.WriteStartElement("ChapterAtom");
        xml.WriteElementString("ChapterUID", Uid($"{index} {chapter.Start.Ticks} {chapter.Title}"));
        xml.WriteElementString("ChapterTimeStart", Time(chapter.Start));
        if (end is { } known)
        {
            xml.WriteElementString("ChapterTimeEnd", Time(known));
        }

        xml.WriteStartElement("ChapterDisplay");
        xml.WriteElementString("ChapterString", chapter.Title);
        xml.WriteElementString("ChapterLanguage", language.ThreeLetters);
        xml.WriteElementString("ChapLanguageIETF", language.Tag);
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string Time(TimeSpan time)
    {
        long nanoseconds = time.Ticks % TimeSpan.TicksPerSecond * TimeSpan.NanosecondsPerTick;
        return string.Create(CultureInfo.InvariantCulture, $"{time.Ticks / TimeSpan.TicksPerHour:00}:{time.Minutes:00}:{time.Seconds:00}.{nanoseconds:000000000}");
    }

    // Zero is not allowed; the lowest bit is set so that it cannot come.
    private static string Uid(string content) =>
        (BinaryPrimitives.ReadUInt64BigEndian(SHA256.HashData(Encoding.UTF8.GetBytes(content))) | 1).ToString(CultureInfo.InvariantCulture);
}
