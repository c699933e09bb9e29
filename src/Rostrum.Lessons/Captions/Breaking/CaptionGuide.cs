namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>The figures of a guide to captions.</summary>
/// <param name="CharactersPerLine">The widest line, blanks and signs counted; 1 or more.</param>
/// <param name="Lines">The most lines of a caption; 1 to 3.</param>
/// <param name="CharactersPerSecond">The fastest reading, over the whole caption; null where the guide counts words.</param>
/// <param name="WordsPerMinute">The fastest reading in words; null where the guide counts characters.</param>
/// <param name="Shortest">How long a caption is seen at least.</param>
/// <param name="Longest">How long a caption is seen at most; longer than <paramref name="Shortest"/>.</param>
/// <param name="GapFrames">The least number of frames between two captions, so that one sees that they change.</param>
/// <param name="FramesPerSecond">Frames of the video.</param>
/// <remarks>Speech comes first: where it is faster than a guide, the words stay and the caption is told.</remarks>
public sealed record CaptionGuide(
    int CharactersPerLine,
    int Lines,
    double? CharactersPerSecond,
    double? WordsPerMinute,
    TimeSpan Shortest,
    TimeSpan Longest,
    int GapFrames,
    double FramesPerSecond)
{
    private const double CommonFramesPerSecond = 24;

    /// <summary>42 characters a line, 2 lines, 17 characters a second, 5/6 of a second to 7 seconds, 2 frames between.</summary>
    /// <remarks>Netflix, English Template Timed Text Style Guide, adult programmes (an older version of the page). 5/6 s is rounded up to a whole
    /// millisecond. 24 frames a second is our choice, and the slowest that is common, so that its gap is wide enough for all.</remarks>
    public static CaptionGuide EnglishTemplate { get; } =
        new(42, 2, 17, null, TimeSpan.FromMilliseconds(834), TimeSpan.FromSeconds(7), 2, CommonFramesPerSecond);

    /// <summary>2 lines, at most 180 words a minute.</summary>
    /// <remarks>BBC Subtitle Guidelines: 160 to 180 words a minute, two lines, text within 68 % of a picture of 16:9. The guide gives no number of
    /// letters for that width; 37 a line, 1 second, 7 seconds and 1 frame are from memory or our choice.</remarks>
    public static CaptionGuide Broadcast { get; } =
        new(37, 2, null, 180, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(7), 1, CommonFramesPerSecond);

    /// <summary>2 lines, at most 160 words a minute, at least 2 seconds.</summary>
    /// <remarks>DCMP Captioning Key, presentation rate: 150 to 160 words a minute for adults with a special interest, no caption under 2 seconds (older
    /// text). 32 characters a line, 6 seconds and 2 frames are from memory or our choice.</remarks>
    public static CaptionGuide Educational { get; } =
        new(32, 2, null, 160, TimeSpan.FromSeconds(2), TimeSpan.FromSeconds(6), 2, CommonFramesPerSecond);

    /// <summary>The gap in whole milliseconds, rounded up.</summary>
    internal long GapMilliseconds => (long)Math.Ceiling(GapFrames * 1000 / FramesPerSecond);

    /// <summary>How long a reader needs, in whole milliseconds, rounded up.</summary>
    internal long ReadingMilliseconds(int characters, int words)
    {
        double byCharacters = CharactersPerSecond is { } most ? characters * 1000 / most : 0;
        double byWords = WordsPerMinute is { } rate ? words * 60_000 / rate : 0;
        return (long)Math.Ceiling(Math.Max(byCharacters, byWords));
    }

    /// <summary>Refuses figures with which nothing can be broken.</summary>
    internal void Check()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(CharactersPerLine, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(Lines, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Lines, LineBreaks.Most);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(CharactersPerSecond ?? 1, 0);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(WordsPerMinute ?? 1, 0);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(Longest, Shortest);
        ArgumentOutOfRangeException.ThrowIfLessThan(Shortest, TimeSpan.FromMilliseconds(1));
        ArgumentOutOfRangeException.ThrowIfLessThan(GapFrames, 0);
        ArgumentOutOfRangeException.ThrowIfLessThan(FramesPerSecond, 1);
    }
}
