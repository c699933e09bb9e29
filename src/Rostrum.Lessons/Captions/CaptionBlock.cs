namespace Rostrum.Lessons.Captions;

/// <summary>A passage of a caption file, up to a blank line.</summary>
public abstract record CaptionBlock
{
    // Closed: a cue, a note, a style, a region, or what could not be read.
    private protected CaptionBlock()
    {
    }

    /// <summary>The 1-based line where it begins, for a <see cref="Cue"/> the line with its times; 0 for one that was never read.</summary>
    public int Line { get; init; }
}

/// <summary>Words on the picture for a while.</summary>
/// <param name="Id">The name or number before the times, as written; empty where there is none.</param>
/// <param name="Start">When it appears, in whole milliseconds from the beginning of the video.</param>
/// <param name="End">When it goes; a file may say a time before <paramref name="Start"/>, which is told and kept.</param>
/// <param name="Settings">Where it stands on the picture.</param>
/// <param name="Text">As written, with tags and character references; lines are parted by <c>\n</c>; may be empty.</param>
public sealed record Cue(string Id, TimeSpan Start, TimeSpan End, CueSettings Settings, string Text) : CaptionBlock
{
    /// <summary>How long it is seen; negative where it ends before it begins.</summary>
    public TimeSpan Duration => End - Start;
}

/// <summary>A note of the author of the file, which no viewer sees.</summary>
/// <param name="Text">As written, with the word <c>NOTE</c>; lines are parted by <c>\n</c>.</param>
public sealed record CaptionNote(string Text) : CaptionBlock;

/// <summary>A style sheet of a WebVTT file.</summary>
/// <param name="Css">What stands below the word <c>STYLE</c>; lines are parted by <c>\n</c>.</param>
public sealed record CaptionStyle(string Css) : CaptionBlock;

/// <summary>Lines that are none of the others. They are told, and kept so that nothing is lost.</summary>
/// <param name="Text">As written; lines are parted by <c>\n</c>.</param>
public sealed record UnreadBlock(string Text) : CaptionBlock;
