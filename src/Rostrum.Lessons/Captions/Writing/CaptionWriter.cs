namespace Rostrum.Lessons.Captions.Writing;

/// <summary>Writes caption files strictly, so that every player reads them: UTF-8 text, lines ended by <c>\n</c>, every time with hours.</summary>
public static class CaptionWriter
{
    /// <summary>The text of a file in its own format; <see cref="CaptionFile.As"/> gives it in the other.</summary>
    /// <remarks>Reading it again gives the same cues, and for WebVTT the same header, notes, styles and regions. Lines that could not be read come out as
    /// a note of WebVTT, and not at all in SubRip, which has no notes. SubRip numbers its cues from 1.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A cue has a time before 0.</exception>
    public static string Write(CaptionFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Format == CaptionFormat.WebVtt ? WebVttWriter.Write(file) : SubRipWriter.Write(file);
    }
}
