using Rostrum.Lessons.Captions.Reading;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;

namespace Rostrum.Lessons.Film;

/// <summary>What a presenter writes down of a film: when its chapters begin, and what was wrong in it.</summary>
/// <param name="Chapters">The chapters.</param>
/// <param name="Corrections">The corrections; none in files of other programs.</param>
public sealed record GivenTimes(PlacedChapters Chapters, PlacedCorrections Corrections)
{
    /// <summary>Reads a file of which the length is known before: a description or its chapter lines, FFmpeg metadata, Matroska XML.</summary>
    /// <param name="name">The name to show in messages.</param>
    /// <param name="lengthBytes">How long it is; where that is more than <see cref="FilmFile.LargestBytes"/>, it is refused and <paramref name="read"/> is not called.</param>
    /// <param name="read">Gives its bytes.</param>
    public static GivenTimes Read(string name, long lengthBytes, Func<ReadOnlyMemory<byte>> read)
    {
        ReadOnlyMemory<byte> bytes = default;
        PlacedChapters chapters = ChapterReader.Read(name, lengthBytes, () => bytes = read());
        return new GivenTimes(chapters, chapters.IsRefused ? new PlacedCorrections([], [], []) : CorrectionLines.Read(CaptionBytes.Decode(name, bytes.Span).Text));
    }
}
