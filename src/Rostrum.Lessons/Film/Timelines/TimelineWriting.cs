using System.Collections.Immutable;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>Turns a timeline into things of OpenTimelineIO, with the names and versions of its release 0.15 and later.</summary>
internal static class TimelineWriting
{
    private const string OnlyMedia = "DEFAULT_MEDIA";

    private static readonly OtioValue.List NoItems = new([]);

    public static OtioValue.Record Of(Timeline timeline) => Thing("Timeline.1", timeline.Name, timeline.Metadata)
        .With("global_start_time", new OtioValue.Nothing())
        .With("tracks", Thing("Stack.1", "tracks", OtioValue.Record.Empty)
            .With("source_range", new OtioValue.Nothing())
            .With("effects", NoItems)
            .With("markers", NoItems)
            .With("enabled", new OtioValue.Flag(true))
            .With("children", List(timeline.Tracks.Select(Of))));

    private static OtioValue.Record Of(Track track) => Thing("Track.1", track.Name, track.Metadata)
        .With("source_range", new OtioValue.Nothing())
        .With("effects", NoItems)
        .With("markers", List(track.Markers.Select(Of)))
        .With("enabled", new OtioValue.Flag(true))
        .With("children", List(track.Items.Select(Of)))
        .With("kind", track.Kind);

    private static OtioValue.Record Of(TrackItem item) => item switch
    {
        TrackItem.Clip clip => Item("Clip.2", clip.Name, clip.Range, clip.Markers, clip.Metadata)
            .With("media_references", OtioValue.Record.Empty.With(OnlyMedia, Media(clip)))
            .With("active_media_reference_key", OnlyMedia),
        TrackItem.Gap gap => Item("Gap.1", gap.Name, gap.Range, [], OtioValue.Record.Empty),
        TrackItem.Other other => other.Whole,
        _ => throw new NotSupportedException(item.GetType().Name),
    };

    private static OtioValue.Record Item(string schema, string name, TimeRange? range, ImmutableArray<Marker> markers, OtioValue.Record metadata) =>
        Thing(schema, name, metadata)
            .With("source_range", Of(range))
            .With("effects", NoItems)
            .With("markers", List(markers.Select(Of)))
            .With("enabled", new OtioValue.Flag(true));

    // A still picture is as long as its clip: programs ask how much there is.
    private static OtioValue.Record Media(TrackItem.Clip clip) => clip.Media is { } url
        ? Thing("ExternalReference.1", "", OtioValue.Record.Empty).With("available_range", Of(clip.Range)).With("target_url", url)
        : Thing("MissingReference.1", "", OtioValue.Record.Empty).With("available_range", new OtioValue.Nothing());

    // The version before the newest, which older programs read too. That it has a comment is from memory; readers that do not know it keep it as it is.
    private static OtioValue.Record Of(Marker marker) => Thing("Marker.2", marker.Name, marker.Metadata)
        .With("color", marker.Colour)
        .With("marked_range", Of(marker.Range))
        .With("comment", marker.Comment);

    private static OtioValue Of(TimeRange? range) => range is { } known
        ? Schema("TimeRange.1").With("duration", Of(known.Duration)).With("start_time", Of(known.Start))
        : new OtioValue.Nothing();

    private static OtioValue.Record Of(RationalTime time) =>
        Schema("RationalTime.1").With("rate", OtioValue.Number.Of(time.Rate)).With("value", OtioValue.Number.Of(time.Value));

    private static OtioValue.Record Thing(string schema, string name, OtioValue.Record metadata) => Schema(schema).With("metadata", metadata).With("name", name);

    private static OtioValue.Record Schema(string schema) => OtioValue.Record.Empty.With(OtioValue.Record.SchemaName, schema);

    private static OtioValue.List List(IEnumerable<OtioValue> items) => new([.. items]);
}
