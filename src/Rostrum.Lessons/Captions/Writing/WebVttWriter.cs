using System.Text;

namespace Rostrum.Lessons.Captions.Writing;

/// <summary>Writes WebVTT.</summary>
internal static class WebVttWriter
{
    /// <summary>The text of a file.</summary>
    public static string Write(CaptionFile file)
    {
        var written = new StringBuilder("WEBVTT").Append(Header(file.Header)).Append('\n');
        foreach (string block in InOrder(file).Select(Block).Where(b => b.Length > 0))
        {
            written.Append('\n').Append(block).Append('\n');
        }

        return written.ToString();
    }

    // The first line may hold anything; below it stands no blank line and no arrow.
    private static string Header(string header)
    {
        string[] lines = header.Split('\n', 2);
        string first = lines[0].Length == 0 || lines[0][0] is ' ' or '\t' ? lines[0] : $" {lines[0]}";
        string below = lines.Length == 1 ? "" : SafeLines.WithoutArrow(lines[1]);
        return below.Length == 0 ? first : $"{first}\n{below}";
    }

    // Styles and regions count only before the first cue.
    private static IEnumerable<CaptionBlock> InOrder(CaptionFile file) =>
        file.Blocks.SkipWhile(b => b is not Cue).Any(b => b is CaptionStyle or CaptionRegion) ? file.Blocks.OrderBy(b => b is CaptionStyle or CaptionRegion ? 0 : 1) : file.Blocks;

    private static string Block(CaptionBlock block) => block switch
    {
        Cue cue => CueBlock(cue),
        CaptionNote note => Note(SafeLines.WithoutArrow(note.Text)),
        CaptionStyle style when SafeLines.WithoutArrow(style.Css) is { Length: > 0 } css => $"STYLE\n{css}",
        CaptionRegion region when SafeLines.WithoutArrow(region.Written) is { Length: > 0 } settings => $"REGION\n{settings}",
        UnreadBlock unread => Note($"NOTE\n{SafeLines.WithoutArrow(unread.Text)}"),
        _ => "",
    };

    private static string Note(string text) => text.StartsWith("NOTE", StringComparison.Ordinal) && (text.Length == 4 || text[4] is ' ' or '\t' or '\n') ? text : $"NOTE {text}";

    private static string CueBlock(Cue cue)
    {
        var lines = new StringBuilder();
        string id = SafeLines.WithoutArrow(cue.Id).Replace('\n', ' ');
        lines.Append(id).Append(id.Length == 0 ? "" : "\n");
        lines.Append(CueTime.Write(cue.Start, '.')).Append(" --> ").Append(CueTime.Write(cue.End, '.')).Append(WebVttSettingsWriter.Write(cue.Settings));
        string text = SafeLines.WithoutArrow(cue.Text);
        return lines.Append(text.Length == 0 ? "" : "\n").Append(text).ToString();
    }
}
