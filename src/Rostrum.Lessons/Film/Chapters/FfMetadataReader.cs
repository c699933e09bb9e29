using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Reads metadata files of FFmpeg.</summary>
/// <remarks>Format: FFmpeg documentation, chapter "Metadata" of ffmpeg-formats. Without a time base, times are nanoseconds, as FFmpeg reads them.</remarks>
public static class FfMetadataReader
{
    /// <summary>How such a file begins; a version follows.</summary>
    public const string Signature = ";FFMETADATA";

    private const int Nanoseconds = 1_000_000_000;

    /// <summary>The tags, chapters and streams of a file.</summary>
    /// <param name="source">The whole file.</param>
    /// <remarks>A file without the signature is refused. Lines that are no tags, and chapters whose times cannot be read, are told and left out.</remarks>
    public static FfMetadata Read(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var problems = new DiagnosticBag();
        if (!source.Content.TrimStart('\uFEFF').StartsWith(Signature, StringComparison.Ordinal))
        {
            problems.Add(FilmProblems.NoMetadata(source.Span(0, source.LineEnd(0))));
            return new FfMetadata([], [], [], new PlacedChapters(new ChapterList([], null), [], source.Span(0, 0), problems.InOrder()));
        }

        Section[] sections = [.. Sections(source, problems)];
        (FfChapter Chapter, SourceSpan At)[] chapters =
            [.. sections.Where(s => s.Kind == "[CHAPTER]").Select(s => (Chapter(s, problems), s.At)).Where(c => c.Item1 is not null).Select(c => (c.Item1!, c.At))];
        return new FfMetadata(
            [.. sections[0].Tags],
            [.. chapters.Select(c => c.Chapter)],
            [.. sections.Where(s => s.Kind == "[STREAM]").Select(s => s.Tags.ToImmutableArray())],
            Placed(source, chapters, problems));
    }

    private static PlacedChapters Placed(SourceText source, (FfChapter Chapter, SourceSpan At)[] chapters, DiagnosticBag problems)
    {
        TimeSpan? length = chapters.OrderBy(c => c.Chapter.StartTime).LastOrDefault().Chapter is { } last && last.EndTime > last.StartTime ? last.EndTime : null;
        var list = new ChapterList([.. chapters.Select(c => new Chapter(c.Chapter.StartTime!.Value, c.Chapter.Title))], length);
        return new PlacedChapters(list, [.. chapters.Select(c => c.At)], source.Span(0, 0), problems.InOrder());
    }

    private static List<Section> Sections(SourceText source, DiagnosticBag problems)
    {
        var sections = new List<Section> { new("", source.Span(0, 0), []) };
        foreach (SourceSpan at in FfMetadataLines.Of(source))
        {
            string line = at.Text;
            if (line.StartsWith('[') && line.TrimEnd().EndsWith(']'))
            {
                sections.Add(new Section(line.TrimEnd(), at, []));
            }
            else if (FfMetadataLines.Tag(line) is { } tag)
            {
                sections[^1].Tags.Add(tag);
            }
            else if (line.Trim('\uFEFF', ' ', '\t').Length > 0 && !line.StartsWith('\uFEFF'))
            {
                problems.Add(FilmProblems.MetadataLine(at, line));
            }
        }

        return sections;
    }

    // Times are tags until here: FFmpeg wants them first and in their order, we take them anywhere.
    private static FfChapter? Chapter(Section section, DiagnosticBag problems)
    {
        string? timeBase = section.Take("TIMEBASE");
        string? start = section.Take("START");
        string? end = section.Take("END");
        int[]? parts = timeBase is null ? [1, Nanoseconds] : TimeBase(timeBase);
        FfChapter? chapter = parts is not null && Number(start) is { } from && (end is null || Number(end) is not null)
            ? new FfChapter(parts[0], parts[1], from, Number(end), [.. section.Tags])
            : null;
        if (chapter?.StartTime is null)
        {
            problems.Add(FilmProblems.MetadataChapter(section.At));
            return null;
        }

        return chapter;
    }

    private static int[]? TimeBase(string written)
    {
        int?[] parts = [.. written.Split('/').Select(p => int.TryParse(p, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n > 0 ? n : (int?)null)];
        return parts is [{ } numerator, { } denominator] ? [numerator, denominator] : null;
    }

    private static long? Number(string? written) =>
        long.TryParse(written, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long number) ? number : null;

    private sealed record Section(string Kind, SourceSpan At, List<FfTag> Tags)
    {
        public string? Take(string key)
        {
            int at = Tags.FindIndex(t => t.Key == key);
            string? value = at < 0 ? null : Tags[at].Value.Trim();
            if (at >= 0)
            {
                Tags.RemoveAt(at);
            }

            return value;
        }
    }
}
