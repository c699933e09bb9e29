using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Captions.Writing;
using Rostrum.Text;

namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>One caption that the breaker made.</summary>
/// <param name="Start">When it appears, which is when its first word begins.</param>
/// <param name="End">When it goes.</param>
/// <param name="Lines">Its lines, from the top; words are parted by single blanks.</param>
/// <param name="FirstWord">The 0-based place of its first word.</param>
/// <param name="WordCount">How many words it has, 1 or more.</param>
/// <param name="Characters">How many characters are read, blanks counted, line breaks not.</param>
public sealed record BrokenCue(TimeSpan Start, TimeSpan End, ImmutableArray<string> Lines, int FirstWord, int WordCount, int Characters)
{
    /// <summary>How long it is seen.</summary>
    public TimeSpan Duration => End - Start;

    /// <summary>How fast it must be read.</summary>
    public double CharactersPerSecond => Characters / Duration.TotalSeconds;
}

/// <summary>Captions as the breaker made them.</summary>
/// <param name="Cues">In the order of their times; none touches another.</param>
/// <param name="Guide">The figures that they keep.</param>
/// <param name="Cost">What they cost together; no other way to break the words costs less.</param>
public sealed record BrokenCaptions(ImmutableArray<BrokenCue> Cues, CaptionGuide Guide, long Cost)
{
    /// <summary>The captions that must be read faster than the guide allows, because they are spoken faster.</summary>
    public IEnumerable<BrokenCue> TooFast => Cues.Where(c => c.Duration.TotalMilliseconds < Guide.ReadingMilliseconds(c.Characters, c.WordCount));

    /// <summary>The captions that are seen shorter than the guide asks, because the next words come at once.</summary>
    public IEnumerable<BrokenCue> TooShort => Cues.Where(c => c.Duration < Guide.Shortest);

    /// <summary>What the guide asks and the speech does not allow, a sentence each; empty where all is kept.</summary>
    public ImmutableArray<string> Remarks =>
    [
        .. Remark(TooFast, "must be read faster than the guide allows, because the words are spoken faster"),
        .. Remark(TooShort, "are seen shorter than the guide asks, because the next words come at once"),
    ];

    /// <summary>The captions as a file that can be written.</summary>
    public CaptionFile ToFile(CaptionFormat format) => CaptionFile.Of(format, Cues.Select((c, i) => new Cue(
        format == CaptionFormat.SubRip ? (i + 1).ToString(CultureInfo.InvariantCulture) : "",
        c.Start,
        c.End,
        CueSettings.None,
        string.Join('\n', c.Lines.Select(l => CueTextWriter.Escape(l, format))))));

    private IEnumerable<string> Remark(IEnumerable<BrokenCue> cues, string what) => cues.Take(1).Select(first =>
        $"{cues.Count()} of {Prose.Count(Cues.Length, "caption", "captions")} {what}; the first at {first.Start.ToString(@"h\:mm\:ss", CultureInfo.InvariantCulture)}.");
}
