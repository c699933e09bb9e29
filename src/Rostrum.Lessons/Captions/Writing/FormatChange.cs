namespace Rostrum.Lessons.Captions.Writing;

/// <summary>The same captions in the other format.</summary>
internal static class FormatChange
{
    /// <summary>Cues with the same times and words; header, notes, styles, regions and settings belong to WebVTT alone.</summary>
    public static CaptionFile Of(CaptionFile file, CaptionFormat format) => file.Format == format
        ? file
        : new CaptionFile(format, "", [.. file.Cues.Select((c, i) => Of(c, i, file.Format, format))]);

    private static CaptionBlock Of(Cue cue, int index, CaptionFormat from, CaptionFormat to) => cue with
    {
        Id = to == CaptionFormat.SubRip ? (index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) : cue.Id,
        Settings = CueSettings.None,
        Text = CueTextWriter.Write(CueText.Read(cue.Text, from), to),
        Line = 0,
    };
}
