namespace Rostrum.Lessons.Captions;

/// <summary>Where a cue stands on the picture. What is not said has the value that WebVTT gives it.</summary>
public sealed record CueSettings
{
    /// <summary>Nothing said.</summary>
    public static CueSettings None { get; } = new();

    /// <summary>How the lines run.</summary>
    public CueVertical Vertical { get; init; }

    /// <summary>The line of text, or percent of the picture where <see cref="SnapsToLines"/> is false; null for automatic.</summary>
    public double? Line { get; init; }

    /// <summary>True where <see cref="Line"/> counts lines of text (negative from the bottom), false where it is a percentage.</summary>
    public bool SnapsToLines { get; init; } = true;

    /// <summary>Which edge of the cue stands on <see cref="Line"/>.</summary>
    public CueLineAlign LineAlign { get; init; }

    /// <summary>Percent of the picture along the line, 0 to 100; null for automatic.</summary>
    public double? Position { get; init; }

    /// <summary>Which edge of the cue stands at <see cref="Position"/>.</summary>
    public CuePositionAlign PositionAlign { get; init; }

    /// <summary>Width in percent of the picture, 0 to 100.</summary>
    public double SizePercent { get; init; } = 100;

    /// <summary>How the text lies in its box.</summary>
    public CueAlign Align { get; init; }

    /// <summary>The <see cref="CaptionRegion.Id"/> in which it scrolls; null for none. The last region of that name counts.</summary>
    public string? Region { get; init; }

    /// <summary>The rectangle of a SubRip cue, in the pixels of some picture; null where none is given.</summary>
    public CueRectangle? Rectangle { get; init; }
}

/// <summary>How the lines of a cue run.</summary>
public enum CueVertical
{
    /// <summary>From left to right or right to left, each below the one before.</summary>
    Horizontal,

    /// <summary>Downwards, each left of the one before: <c>vertical:rl</c>.</summary>
    GrowingLeft,

    /// <summary>Downwards, each right of the one before: <c>vertical:lr</c>.</summary>
    GrowingRight,
}

/// <summary>Which edge of a cue stands on its line.</summary>
public enum CueLineAlign
{
    /// <summary>The first edge, which is the upper one of lines that run across.</summary>
    Start,

    /// <summary>The middle.</summary>
    Center,

    /// <summary>The last edge.</summary>
    End,
}

/// <summary>Which edge of a cue stands at its position.</summary>
public enum CuePositionAlign
{
    /// <summary>As the text is aligned.</summary>
    Auto,

    /// <summary>The left or upper edge.</summary>
    LineLeft,

    /// <summary>The middle.</summary>
    Center,

    /// <summary>The right or lower edge.</summary>
    LineRight,
}

/// <summary>How the text of a cue lies in its box.</summary>
public enum CueAlign
{
    /// <summary>In the middle.</summary>
    Center,

    /// <summary>Where the script begins.</summary>
    Start,

    /// <summary>Where the script ends.</summary>
    End,

    /// <summary>On the left.</summary>
    Left,

    /// <summary>On the right.</summary>
    Right,
}

/// <summary>The rectangle behind the times of a SubRip cue: <c>X1:40 X2:600 Y1:20 Y2:50</c>.</summary>
/// <param name="X1">Left edge.</param>
/// <param name="X2">Right edge.</param>
/// <param name="Y1">Upper edge.</param>
/// <param name="Y2">Lower edge.</param>
public sealed record CueRectangle(int X1, int X2, int Y1, int Y2);
