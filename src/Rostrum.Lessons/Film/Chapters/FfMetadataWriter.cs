using System.Globalization;
using System.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Writes chapters as a metadata file of FFmpeg: <c>ffmpeg -i film.mp4 -i chapters.ffmeta -map 0 -map_chapters 1 -c copy out.mp4</c>.</summary>
/// <remarks>Format: FFmpeg documentation, chapter "Metadata" of ffmpeg-formats. The signs <c>= ; # \</c> and line ends are escaped by <c>\</c>.</remarks>
public static class FfMetadataWriter
{
    /// <summary>The file, with <c>\n</c> as line ends.</summary>
    /// <param name="list">The chapters; written in the order of their times, in milliseconds.</param>
    /// <param name="tags">Of the whole film, such as <c>title</c>; may be empty.</param>
    /// <remarks>Each chapter ends where the next begins: FFmpeg 5.1 takes the line behind a missing <c>END</c> for it, and loses the title.
    /// Without a length the last one ends where it begins.</remarks>
    public static string Write(ChapterList list, IEnumerable<FfTag> tags)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(tags);
        var file = new StringBuilder(";FFMETADATA1\n");
        foreach (FfTag tag in tags)
        {
            file.Append(Escaped(OneLine.Of(tag.Key))).Append('=').Append(Escaped(OneLine.Of(tag.Value))).Append('\n');
        }

        foreach ((Chapter chapter, TimeSpan end) in list.WithEnds())
        {
            file.Append(CultureInfo.InvariantCulture, $"[CHAPTER]\nTIMEBASE=1/1000\nSTART={Milliseconds(chapter.Start)}\nEND={Milliseconds(end)}\ntitle={Escaped(chapter.Title)}\n");
        }

        return file.ToString();
    }

    private static long Milliseconds(TimeSpan time) => time.Ticks / TimeSpan.TicksPerMillisecond;

    // FFmpeg 5.1 takes a line end behind any backslash for an escaped one, even where the backslash is escaped itself, and would
    // swallow the next chapter. A blank keeps them apart; readers of titles cut it.
    private static string Escaped(string words)
    {
        var escaped = new StringBuilder(words.Length);
        foreach (char sign in words)
        {
            escaped.Append(sign is '=' or ';' or '#' or '\\' or '\n' or '\r' ? "\\" : "").Append(sign);
        }

        return escaped.Append(words.EndsWith('\\') ? " " : "").ToString();
    }
}
