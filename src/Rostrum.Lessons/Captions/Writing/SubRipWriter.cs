using System.Globalization;
using System.Text;
using Rostrum.Lessons.Captions.Reading;

namespace Rostrum.Lessons.Captions.Writing;

/// <summary>Writes SubRip: numbers from 1, times with a comma, a blank line behind each caption.</summary>
internal static class SubRipWriter
{
    /// <summary>The text of a file; anything but cues is left out.</summary>
    public static string Write(CaptionFile file)
    {
        var written = new StringBuilder();
        int number = 0;
        foreach (Cue cue in file.Cues)
        {
            number++;
            written.Append(number == 1 ? "" : "\n").Append(CultureInfo.InvariantCulture, $"{number}\n");
            written.Append(CueTime.Write(cue.Start, ',')).Append(" --> ").Append(CueTime.Write(cue.End, ','));
            written.Append(Rectangle(cue.Settings.Rectangle)).Append('\n');
            written.Append(Text(cue.Text));
        }

        return written.ToString();
    }

    private static string Rectangle(CueRectangle? r) => r is null ? "" : string.Create(CultureInfo.InvariantCulture, $" X1:{r.X1} X2:{r.X2} Y1:{r.Y1} Y2:{r.Y2}");

    private static string Text(string text) => string.Concat(SafeLines.Of(text).Split('\n').Where(l => !string.IsNullOrWhiteSpace(l)).Select(l => $"{Safe(l)}\n"));

    // SubRip knows no escape: words that look like a line of times get another arrow, lest they begin a caption.
    private static string Safe(string line) => SubRipTime.ReadLine(line) is null ? line : line.Replace("-->", "→", StringComparison.Ordinal).Replace("->", "→", StringComparison.Ordinal);
}
