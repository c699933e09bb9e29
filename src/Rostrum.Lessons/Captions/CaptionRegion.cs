namespace Rostrum.Lessons.Captions;

/// <summary>A part of the picture in which captions of a WebVTT file scroll.</summary>
/// <param name="Written">What stands below the word <c>REGION</c>, kept for writing; lines are parted by <c>\n</c>.</param>
public sealed record CaptionRegion(string Written) : CaptionBlock
{
    /// <summary>The name by which a cue asks for it; empty where none is given.</summary>
    public string Id { get; init; } = "";

    /// <summary>Width in percent of the picture, 0 to 100.</summary>
    public double WidthPercent { get; init; } = 100;

    /// <summary>How many lines it holds.</summary>
    public int Lines { get; init; } = 3;

    /// <summary>The point of the region that is pinned to the picture, in percent of the region.</summary>
    public PercentPoint Pin { get; init; } = new(0, 100);

    /// <summary>The point of the picture to which it is pinned, in percent of the picture.</summary>
    public PercentPoint PinnedTo { get; init; } = new(0, 100);

    /// <summary>True where new lines push the older ones up.</summary>
    public bool ScrollsUp { get; init; }
}

/// <summary>A point of a rectangle.</summary>
/// <param name="X">Percent of the width from the left, 0 to 100.</param>
/// <param name="Y">Percent of the height from the top, 0 to 100.</param>
public readonly record struct PercentPoint(double X, double Y);
