using Rostrum.Text;

namespace Rostrum.Lessons.Captions;

/// <summary>Messages about caption files: ROS065x and ROS066x. Each is told once for a file.</summary>
internal static class CaptionProblems
{
    public static Diagnostic TooLarge(SourceSpan at, long lengthBytes) => new(
        "ROS0651", Severity.Error, at, $"This file is {Math.Max(1, lengthBytes / (1024 * 1024))} MB long, and no captions are longer than {CaptionReader.LargestFileBytes / (1024 * 1024)} MB.",
        "Give the caption file ('.vtt' or '.srt'), not the video or a file with everything in it.");

    public static Diagnostic NoCaptions(SourceSpan at) => new(
        "ROS0652", Severity.Error, at, "This is no caption file: it has no line such as '00:01:02,500 --> 00:01:04,000'.",
        "Export the captions as WebVTT ('.vtt') or SubRip ('.srt').");

    public static Diagnostic MisspeltSignature(SourceSpan at, string found) => new(
        "ROS0652", Severity.Error, at, $"A WebVTT file begins with 'WEBVTT' and then a blank or the end of the line; this one begins with '{Prose.Clip(found)}'.",
        "Write 'WEBVTT' alone into the first line, in capitals and without a blank before it.");

    public static Diagnostic NoCues(SourceSpan at) => new(
        "ROS0653", Severity.Error, at, "This caption file holds no caption.",
        "A caption is a line such as '00:01:02.500 --> 00:01:04.000' and its words below, after a blank line.");

    public static Diagnostic WesternLetters(SourceSpan at) => new(
        "ROS0654", Severity.Warning, at, "This file is not written in UTF-8, so its letters were taken for those of Western European Windows.",
        "Where letters look wrong from here on, save the file as UTF-8 and read it again.");

    public static Diagnostic DamagedLetters(SourceSpan at) => new(
        "ROS0654", Severity.Warning, at, "Some letters of this file are damaged and cannot be read.", "Export the captions again, as UTF-8.");

    public static Diagnostic Unread(SourceSpan at, int count, bool hasArrow) => new(
        "ROS0655", Severity.Warning, at, count <= 1 ? "These lines are no caption and are left out." : $"{count} passages of this file are no captions and are left out; this is the first.",
        hasArrow
            ? "Write the times as '00:01:02.500 --> 00:01:04.000', with two digits for minutes and seconds and three behind the full stop."
            : "Take the lines away, or begin them with 'NOTE'; 'STYLE' and 'REGION' stand before the first caption.");

    public static Diagnostic EndsTooEarly(SourceSpan at, int count) => new(
        "ROS0656", Severity.Warning, at, $"{Captions(count, "ends", "end")} no later than {(count <= 1 ? "it begins" : "they begin")}{First(count)}.",
        "Write the later time behind the arrow.");

    public static Diagnostic OutOfOrder(SourceSpan at, int count) => new(
        "ROS0657", Severity.Warning, at, $"{Captions(count, "begins", "begin")} earlier than the one written before{First(count)}.",
        "Put the captions into the order of their times, or mend the time; they are read in the order of their times.");

    public static Diagnostic Overlapping(SourceSpan at, int count) => new(
        "ROS0658", Severity.Warning, at, $"{Captions(count, "begins", "begin")} while an earlier one is still to be seen{First(count)}.",
        "Where only one is meant to be seen, let the earlier one end when the next begins.");

    public static Diagnostic Late(SourceSpan at, int count) => new(
        "ROS0659", Severity.Warning, at, $"{Captions(count, "stands", "stand")} more than six hours into the video{First(count)}.",
        "Look whether minutes were written as hours: hours come first, as in '00:01:02.500'.");

    public static Diagnostic Empty(SourceSpan at, int count) => new(
        "ROS0660", Severity.Warning, at, $"{Captions(count, "has", "have")} no words{First(count)}.", "Take it away, or write what is said.");

    private static string Captions(int count, string one, string many) => count <= 1 ? $"This caption {one}" : $"{count} captions {many}";

    private static string First(int count) => count <= 1 ? "" : "; this is the first";
}
