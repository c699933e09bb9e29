using System.Collections.Immutable;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>A time or a length in frames.</summary>
/// <param name="Value">So many frames; a fraction where a file says so.</param>
/// <param name="Rate">Frames a second, above 0.</param>
public readonly record struct RationalTime(double Value, double Rate)
{
    /// <summary>In seconds.</summary>
    public double Seconds => Value / Rate;

    /// <summary>The frame that is nearest to a time.</summary>
    /// <param name="time">From the beginning.</param>
    /// <param name="rate">Frames a second, above 0.</param>
    public static RationalTime Of(TimeSpan time, double rate) => new(Math.Round(time.TotalSeconds * rate, MidpointRounding.AwayFromZero), rate);
}

/// <summary>A stretch of time.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="Duration">How long it is; may be zero.</param>
public readonly record struct TimeRange(RationalTime Start, RationalTime Duration);

/// <summary>A sign at a stretch of a timeline, for who cuts the film.</summary>
/// <param name="Name">What the editor reads on it.</param>
/// <param name="Range">In the times of what it stands on.</param>
/// <param name="Colour">A name in capitals, such as <c>GREEN</c>; empty where the file says none.</param>
/// <param name="Comment">More words; may be empty.</param>
/// <param name="Metadata">What only we know, under our own name.</param>
public sealed record Marker(string Name, TimeRange Range, string Colour, string Comment, OtioValue.Record Metadata);

/// <summary>Something that lies on a track. Closed: the three below and no more.</summary>
public abstract record TrackItem
{
    private TrackItem()
    {
    }

    /// <summary>A piece of film or a picture.</summary>
    /// <param name="Name">What the editor reads on it.</param>
    /// <param name="Range">Which part of its film; null for all of it.</param>
    /// <param name="Media">Where the film or picture lies; null where there is none yet.</param>
    /// <param name="Markers">In the times of its film.</param>
    /// <param name="Metadata">What only we know, under our own name.</param>
    public sealed record Clip(string Name, TimeRange? Range, string? Media, ImmutableArray<Marker> Markers, OtioValue.Record Metadata) : TrackItem;

    /// <summary>Time without a clip.</summary>
    /// <param name="Name">What happens there.</param>
    /// <param name="Range">How long it is; null where the file does not say.</param>
    public sealed record Gap(string Name, TimeRange? Range) : TrackItem;

    /// <summary>Something that we do not write, such as a transition.</summary>
    /// <param name="Whole">As it stands in the file.</param>
    public sealed record Other(OtioValue.Record Whole) : TrackItem;
}

/// <summary>A row of a timeline.</summary>
/// <param name="Name">What the editor reads on it.</param>
/// <param name="Kind"><c>Video</c> or <c>Audio</c>.</param>
/// <param name="Items">One behind the other, from the beginning.</param>
/// <param name="Markers">In the times of the track.</param>
/// <param name="Metadata">What only we know, under our own name.</param>
public sealed record Track(string Name, string Kind, ImmutableArray<TrackItem> Items, ImmutableArray<Marker> Markers, OtioValue.Record Metadata);

/// <summary>What an editor opens: tracks one above the other.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Tracks">From the lowest to the highest.</param>
/// <param name="Metadata">What only we know, under our own name.</param>
/// <remarks>This is what we write, and what we understand of files of others. A file that goes back to its owner is written from its
/// <see cref="OtioFile.Root"/>, which holds everything.</remarks>
public sealed record Timeline(string Name, ImmutableArray<Track> Tracks, OtioValue.Record Metadata)
{
    /// <summary>As things of OpenTimelineIO.</summary>
    public OtioValue.Record ToOtio() => TimelineWriting.Of(this);

    /// <summary>The text of an <c>.otio</c> file.</summary>
    public string Write() => OtioWriter.Write(ToOtio());
}
