using System.Collections.Immutable;
using Rostrum.Lessons.Captions.Reading;
using Rostrum.Lessons.Captions.Words;

namespace Rostrum.Lessons.Captions;

/// <summary>The text of a cue with its tags understood.</summary>
/// <param name="Parts">In the order of the text.</param>
public sealed record CueText(ImmutableArray<CuePart> Parts)
{
    /// <summary>How deep tags may lie in each other; tags beyond that are left out, their words stay.</summary>
    /// <remarks>The standard knows no limit; without one, a file of a stranger could exhaust the stack.</remarks>
    public const int MostDepth = 100;

    /// <summary>Reads the text of a cue.</summary>
    /// <param name="written">As it stands in the file.</param>
    /// <param name="format">WebVTT after the standard; SubRip leniently, with <c>&lt;b&gt; &lt;i&gt; &lt;u&gt; &lt;font&gt;</c> and <c>{\an8}</c>.</param>
    public static CueText Read(string written, CaptionFormat format)
    {
        ArgumentNullException.ThrowIfNull(written);
        return new(format == CaptionFormat.WebVtt ? WebVttText.Read(written) : SubRipText.Read(written));
    }

    /// <summary>The words that are seen, without tags and without what is said above them (ruby text); lines are parted by <c>\n</c>.</summary>
    public string Plain => string.Concat(SpokenPieces.Of(this).Select(p => p.Words));
}

/// <summary>A part of the text of a cue.</summary>
public abstract record CuePart
{
    private CuePart()
    {
    }

    /// <summary>Words.</summary>
    /// <param name="Text">With character references resolved; never empty.</param>
    public sealed record Words(string Text) : CuePart;

    /// <summary>The moment at which what follows is said.</summary>
    /// <param name="Time">From the beginning of the video.</param>
    public sealed record Timestamp(TimeSpan Time) : CuePart;

    /// <summary>Parts inside a tag.</summary>
    /// <param name="Tag">Which.</param>
    /// <param name="Classes">Behind full stops: <c>&lt;c.yellow.loud&gt;</c>; none empty.</param>
    /// <param name="Note">What stands behind a blank: the voice, the language, the attributes of a font; empty where nothing does.</param>
    /// <param name="Language">The language that holds inside, from this tag or one around it; empty where none is said.</param>
    /// <param name="Parts">In the order of the text; may be empty.</param>
    public sealed record Span(CueTag Tag, ImmutableArray<string> Classes, string Note, string Language, ImmutableArray<CuePart> Parts) : CuePart;
}

/// <summary>The tags of captions.</summary>
public enum CueTag
{
    /// <summary><c>&lt;c&gt;</c>: words with a class.</summary>
    Class,

    /// <summary><c>&lt;i&gt;</c>.</summary>
    Italic,

    /// <summary><c>&lt;b&gt;</c>.</summary>
    Bold,

    /// <summary><c>&lt;u&gt;</c>.</summary>
    Underline,

    /// <summary><c>&lt;ruby&gt;</c>: words with small words above them.</summary>
    Ruby,

    /// <summary><c>&lt;rt&gt;</c>: the small words, which say how the others are read.</summary>
    RubyText,

    /// <summary><c>&lt;v Anna&gt;</c>: who speaks.</summary>
    Voice,

    /// <summary><c>&lt;lang de&gt;</c>: words in another language.</summary>
    Language,

    /// <summary><c>&lt;font&gt;</c> of SubRip.</summary>
    Font,
}
