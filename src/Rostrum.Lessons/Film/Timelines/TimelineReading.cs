using System.Collections.Immutable;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>Takes what we understand from the things of an OpenTimelineIO file, whatever version of its names it uses.</summary>
internal static class TimelineReading
{
    public static Timeline Of(OtioValue.Record root) => new(
        Name(root),
        [.. (root.RecordOf("tracks")?.RecordsOf("children") ?? []).Where(t => t.Schema is "Track" or "Sequence").Select(Track)],
        Metadata(root));

    private static Track Track(OtioValue.Record track) =>
        new(Name(track), track.WordsOf("kind") ?? "Video", [.. track.RecordsOf("children").Select(Item)], Markers(track), Metadata(track));

    private static TrackItem Item(OtioValue.Record item) => item.Schema switch
    {
        "Clip" => new TrackItem.Clip(Name(item), Range(item.RecordOf("source_range")), Media(item)?.WordsOf("target_url"), Markers(item), Metadata(item)),
        "Gap" or "Filler" => new TrackItem.Gap(Name(item), Range(item.RecordOf("source_range"))),
        _ => new TrackItem.Other(item),
    };

    // Clip.1 has one reference, Clip.2 several by name.
    private static OtioValue.Record? Media(OtioValue.Record clip) =>
        clip.RecordOf("media_reference") ?? clip.RecordOf("media_references")?.RecordOf(clip.WordsOf("active_media_reference_key") ?? "");

    private static ImmutableArray<Marker> Markers(OtioValue.Record item) => [.. item.RecordsOf("markers").Select(Marker)];

    // Marker.2 names its colour, Marker.3 mixes it and gives the name beside.
    private static Marker Marker(OtioValue.Record marker) => new(
        Name(marker),
        Range(marker.RecordOf("marked_range")) ?? default,
        marker.WordsOf("color") ?? marker.RecordOf("color")?.WordsOf("name") ?? "",
        marker.WordsOf("comment") ?? "",
        Metadata(marker));

    private static TimeRange? Range(OtioValue.Record? range) =>
        range?.RecordOf("start_time") is { } start && range.RecordOf("duration") is { } duration ? new TimeRange(Time(start), Time(duration)) : null;

    private static RationalTime Time(OtioValue.Record time) => new(time.NumberOf("value") ?? 0, time.NumberOf("rate") is { } rate and > 0 ? rate : 1);

    private static string Name(OtioValue.Record thing) => thing.WordsOf("name") ?? "";

    private static OtioValue.Record Metadata(OtioValue.Record thing) => thing.RecordOf("metadata") ?? OtioValue.Record.Empty;
}
