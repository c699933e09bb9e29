using System.Xml;
using System.Xml.Linq;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Chapters as XML for Matroska.</summary>
public static class MatroskaChapters
{
    // Chapters inside of chapters: nobody makes more than three or four steps of them.
    private const int Deepest = 100;

    /// <summary>The file, with <c>\n</c> as line ends; the same chapters give the same file.</summary>
    /// <param name="list">The chapters; written in the order of their times. Without a length, the last has no end.</param>
    /// <param name="language">The language of the titles.</param>
    public static string Write(ChapterList list, MatroskaLanguage language)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(language);
        return MatroskaWriter.Write(list, language);
    }

    /// <summary>Reads the chapters of the edition that players take: the one flagged as default, else the first.</summary>
    /// <param name="source">The whole file.</param>
    /// <param name="language">Which titles are wanted, as three letters; where a chapter has none in it, its first one.</param>
    /// <remarks>Chapters inside of chapters follow theirs; hidden and disabled ones are left out. Both names of each element are read, those of RFC 9559 and those of
    /// <c>mkvmerge</c>, and both forms of times. A file with a document type is refused: nothing outside of it is ever opened.</remarks>
    public static PlacedChapters Read(SourceText source, string language = "eng")
    {
        ArgumentNullException.ThrowIfNull(source);
        var problems = new DiagnosticBag();
        XElement? edition = Load(source, problems)?.Root is { Name.LocalName: "Chapters" } root ? Edition(root) : null;
        if (edition is null && !problems.HasErrors)
        {
            problems.Add(FilmProblems.NoMatroska(source.Span(0, source.LineEnd(0)), isXml: true));
        }

        return new MatroskaReader(source, language, problems).Read(edition);
    }

    private static XElement? Edition(XElement root)
    {
        XElement[] all = [.. root.Elements("EditionEntry")];
        return all.FirstOrDefault(e => e.Element("EditionFlagDefault")?.Value.Trim() == "1") ?? all.FirstOrDefault();
    }

    private static XDocument? Load(SourceText source, DiagnosticBag problems)
    {
        if (XmlProlog.DocumentType(source.Content) is { } declared)
        {
            problems.Add(FilmProblems.DocumentTypes(source.Span(declared, source.LineEnd(source.LineIndexOf(declared)) - declared)));
            return null;
        }

        try
        {
            if (IsTooDeep(source))
            {
                problems.Add(FilmProblems.DeepMatroska(source.Span(0, source.LineEnd(0)), Deepest));
                return null;
            }

            using XmlReader xml = Open(source);
            return XDocument.Load(xml, LoadOptions.SetLineInfo);
        }
        catch (XmlException problem)
        {
            problems.Add(FilmProblems.NoMatroska(MatroskaReader.PlaceOf(source, problem.LineNumber, problem.LinePosition), isXml: false));
            return null;
        }
    }

    // A tree of depth n takes n times n steps to build, so the depth is looked at before.
    private static bool IsTooDeep(SourceText source)
    {
        using XmlReader xml = Open(source);
        while (xml.Read() && xml.Depth <= Deepest)
        {
        }

        return !xml.EOF;
    }

    // Document types are forbidden here once more: nothing that the look before missed is ever opened or unfolded.
    private static XmlReader Open(SourceText source) => XmlReader.Create(
        new StringReader(source.Content[XmlProlog.Blanks(source.Content)..]),
        new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, MaxCharactersInDocument = FilmFile.LargestBytes, CloseInput = true });
}
