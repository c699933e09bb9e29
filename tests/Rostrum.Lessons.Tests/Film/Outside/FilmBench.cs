using System.Text.Json;
using Rostrum.Lessons.Film.Chapters;

namespace Rostrum.Lessons.Tests.Film.Outside;

/// <summary>A folder with a film of 45 seconds that shows nothing; taken away in the end.</summary>
internal sealed class FilmBench : IDisposable
{
    private const string Film = "film.mkv";

    private readonly string _folder;

    public FilmBench()
    {
        // Before there is a folder that nobody would take away.
        FilmTool.Find("ffmpeg");
        _folder = Directory.CreateTempSubdirectory("rostrum-film-").FullName;
        FilmTool.Run("ffmpeg", _folder, "-v", "error", "-f", "lavfi", "-i", "color=c=black:s=64x36:r=5:d=45", "-c:v", "mpeg4", Film);
    }

    /// <summary>The film with chapters that FFmpeg put in.</summary>
    /// <param name="metadata">A metadata file.</param>
    /// <param name="name">The film to make; its ending says the container.</param>
    public string WithMetadata(string metadata, string name)
    {
        File.WriteAllText(Path.Combine(_folder, "chapters.ffmeta"), metadata);
        FilmTool.Run("ffmpeg", _folder, "-v", "error", "-y", "-i", Film, "-i", "chapters.ffmeta", "-map", "0", "-map_metadata", "1", "-map_chapters", "1", "-c", "copy", name);
        return name;
    }

    /// <summary>The film with chapters that mkvmerge put in.</summary>
    /// <param name="xml">A file of chapters.</param>
    public string WithMatroska(string xml)
    {
        File.WriteAllText(Path.Combine(_folder, "chapters.xml"), xml);
        FilmTool.Run("mkvmerge", _folder, "-q", "-o", "merged.mkv", "--chapters", "chapters.xml", Film);
        return "merged.mkv";
    }

    /// <summary>The chapters that ffprobe finds in a film, in milliseconds.</summary>
    public (long Start, long End, string Title)[] Probed(string film)
    {
        string json = FilmTool.Run("ffprobe", _folder, "-v", "error", "-show_chapters", "-of", "json", film);
        return [.. JsonDocument.Parse(json).RootElement.GetProperty("chapters").EnumerateArray().Select(c => (Milliseconds(c, "start_time"), Milliseconds(c, "end_time"), Title(c)))];
    }

    /// <summary>The metadata that FFmpeg writes of a film.</summary>
    public string MetadataOf(string film) => FilmTool.Run("ffmpeg", _folder, "-v", "error", "-i", film, "-f", "ffmetadata", "-");

    /// <summary>The chapters that mkvextract takes out of a film.</summary>
    public string MatroskaOf(string film)
    {
        FilmTool.Run("mkvextract", _folder, film, "chapters", "taken.xml");
        return File.ReadAllText(Path.Combine(_folder, "taken.xml"));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>What a probe finds where all is well.</summary>
    public static IEnumerable<(long Start, long End, string Title)> Expected(ChapterList list) =>
        list.WithEnds().Select(c => ((long)c.Chapter.Start.TotalMilliseconds, (long)c.End.TotalMilliseconds, c.Chapter.Title));

    private static long Milliseconds(JsonElement chapter, string name) =>
        (long)Math.Round(double.Parse(chapter.GetProperty(name).GetString()!, System.Globalization.CultureInfo.InvariantCulture) * 1000);

    // FFmpeg keeps the blank that parts a last '\' from the line end.
    private static string Title(JsonElement chapter) => chapter.TryGetProperty("tags", out JsonElement tags) ? tags.GetProperty("title").GetString()!.TrimEnd() : "";
}
