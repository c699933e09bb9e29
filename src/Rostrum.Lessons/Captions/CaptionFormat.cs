namespace Rostrum.Lessons.Captions;

/// <summary>How a caption file is written.</summary>
public enum CaptionFormat
{
    /// <summary>WebVTT, a recommendation of the W3C: times with a full stop, settings, notes, styles, regions, tags.</summary>
    WebVtt,

    /// <summary>SubRip (<c>.srt</c>), which has no standard: numbered captions, times with a comma, a few tags.</summary>
    SubRip,
}
