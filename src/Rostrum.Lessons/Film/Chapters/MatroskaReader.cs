using System.Collections.Immutable;
using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Takes the chapters from an edition of a Matroska file.</summary>
/// <param name="source">The file.</param>
/// <param name="language">Which titles are wanted, as three letters.</param>
/// <param name="problems">Receives what is left out.</param>
internal sealed class MatroskaReader(SourceText source, string language, DiagnosticBag problems)
{
    // RFC 9559: the language of a title that names none.
    private const string DefaultLanguage = "eng";

    public PlacedChapters Read(XElement? edition)
    {
        var chapters = ImmutableArray.CreateBuilder<Chapter>();
        var places = ImmutableArray.CreateBuilder<SourceSpan>();
        (TimeSpan Start, TimeSpan? End) last = default;
        foreach (XElement atom in (edition?.Descendants("ChapterAtom") ?? []).Where(IsShown))
        {
            SourceSpan at = PlaceOf(source, ((IXmlLineInfo)atom).LineNumber, ((IXmlLineInfo)atom).LinePosition);
            if (Time(atom.Element("ChapterTimeStart")) is not { } start)
            {
                problems.Add(FilmProblems.MatroskaTimes(at, hasStart: false));
                continue;
            }

            TimeSpan? end = Time(atom.Element("ChapterTimeEnd"));
            if (end < start)
            {
                problems.Add(FilmProblems.MatroskaTimes(at, hasStart: true));
            }

            last = start >= last.Start ? (start, end > start ? end : null) : last;
            chapters.Add(new Chapter(start, Title(atom)));
            places.Add(at);
        }

        return new PlacedChapters(new ChapterList(chapters.ToImmutable(), last.End), places.ToImmutable(), source.Span(0, 0), problems.InOrder());
    }

    /// <summary>The place of a line and column as the XML reader counts them: from 1, in code units; blanks at the beginning are not counted.</summary>
    public static SourceSpan PlaceOf(SourceText source, int line, int column)
    {
        int skipped = XmlProlog.Blanks(source.Content);
        int first = source.LineIndexOf(skipped);
        int index = Math.Clamp(first + line - 1, 0, source.LineCount - 1);
        int start = index == first ? skipped : source.LineStart(index);
        return source.Span(start + Math.Max(0, column - 1), Math.Max(0, source.LineEnd(index) - start - Math.Max(0, column - 1)));
    }

    private static bool IsShown(XElement atom) =>
        atom.Element("ChapterFlagHidden")?.Value.Trim() != "1" && atom.Element("ChapterFlagEnabled")?.Value.Trim() != "0";

    private string Title(XElement atom)
    {
        XElement[] displays = [.. atom.Elements("ChapterDisplay")];
        XElement? display = displays.FirstOrDefault(d => Languages(d).Contains(language, StringComparer.Ordinal)) ?? displays.FirstOrDefault();
        return (display?.Element("ChapterString") ?? display?.Element("ChapString"))?.Value ?? "";
    }

    private static IEnumerable<string> Languages(XElement display)
    {
        string[] named = [.. display.Elements().Where(e => e.Name.LocalName is "ChapterLanguage" or "ChapLanguage").Select(e => e.Value.Trim())];
        return named.Length > 0 ? named : [DefaultLanguage];
    }

    // RFC 9559: one number of nanoseconds; mkvmerge: hours, minutes, seconds and up to nine digits.
    private static TimeSpan? Time(XElement? element)
    {
        string written = element?.Value.Trim() ?? "";
        if (written.Contains(':', StringComparison.Ordinal))
        {
            return FilmTime.Read(written);
        }

        return ulong.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out ulong nanoseconds)
            && nanoseconds / TimeSpan.NanosecondsPerTick is var ticks && ticks <= (ulong)FilmTime.Latest.Ticks
                ? TimeSpan.FromTicks((long)ticks)
                : null;
    }
}
