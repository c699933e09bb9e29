using Rostrum.Lessons.Captions.Reading;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Reads chapters from a file, in whichever of the three forms they are.</summary>
public static class ChapterReader
{
    /// <summary>Reads a file of which the length is known before.</summary>
    /// <param name="name">The name to show in messages.</param>
    /// <param name="lengthBytes">How long it is; where that is more than <see cref="FilmFile.LargestBytes"/>, it is refused and <paramref name="read"/> is not called.</param>
    /// <param name="read">Gives its bytes.</param>
    public static PlacedChapters Read(string name, long lengthBytes, Func<ReadOnlyMemory<byte>> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (lengthBytes > FilmFile.LargestBytes)
        {
            return TooLarge(name, lengthBytes);
        }

        // A file may have grown since its length was told.
        ReadOnlyMemory<byte> bytes = read();
        return bytes.Length > FilmFile.LargestBytes ? TooLarge(name, bytes.Length) : Read(CaptionBytes.Decode(name, bytes.Span).Text);
    }

    /// <summary>Reads a text: FFmpeg metadata where it begins with <c>;FFMETADATA</c>, Matroska chapters where it begins with <c>&lt;</c>, else lines of a description.</summary>
    /// <param name="source">The whole file; its name does not matter.</param>
    public static PlacedChapters Read(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        ReadOnlySpan<char> begin = source.Content.AsSpan(XmlProlog.Blanks(source.Content));
        return begin switch
        {
            _ when begin.StartsWith(FfMetadataReader.Signature, StringComparison.Ordinal) => FfMetadataReader.Read(source).Chapters,
            ['<', ..] => MatroskaChapters.Read(source),
            _ => ChapterLines.Read(source),
        };
    }

    private static PlacedChapters TooLarge(string name, long lengthBytes)
    {
        var empty = new SourceText(name, "");
        return new PlacedChapters(new ChapterList([], null), [], empty.Whole, [FilmProblems.TooLarge(empty.Whole, lengthBytes)]);
    }
}
