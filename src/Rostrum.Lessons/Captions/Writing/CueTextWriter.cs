using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Lessons.Captions.Writing;

/// <summary>Writes the text of a cue in one format or the other.</summary>
internal static class CueTextWriter
{
    /// <summary>The text; tags that the format does not know are left out, their words stay.</summary>
    public static string Write(CueText text, CaptionFormat format)
    {
        var written = new StringBuilder();
        Write(written, text.Parts, format);
        return SafeLines.Of(written.ToString());
    }

    /// <summary>Plain words as they are written in a format.</summary>
    public static string Escape(string words, CaptionFormat format) => format == CaptionFormat.WebVtt
        ? words.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal)
        : words;

    private static void Write(StringBuilder written, ImmutableArray<CuePart> parts, CaptionFormat format)
    {
        foreach (CuePart part in parts)
        {
            switch (part)
            {
                case CuePart.Words words:
                    written.Append(Escape(words.Text, format));
                    break;
                case CuePart.Timestamp mark when format == CaptionFormat.WebVtt:
                    written.Append('<').Append(CueTime.Write(mark.Time, '.')).Append('>');
                    break;
                case CuePart.Span span:
                    Write(written, span, format);
                    break;
            }
        }
    }

    private static void Write(StringBuilder written, CuePart.Span span, CaptionFormat format)
    {
        // SubRip has no small words above others: without their tag they would be read as said.
        if (span.Tag == CueTag.RubyText && format == CaptionFormat.SubRip)
        {
            return;
        }

        string? name = NameOf(span.Tag, format);
        written.Append(name is null ? "" : Start(name, span, format));
        Write(written, span.Parts, format);
        written.Append(name is null ? "" : $"</{name}>");
    }

    private static string Start(string name, CuePart.Span span, CaptionFormat format)
    {
        string classes = format == CaptionFormat.WebVtt ? string.Concat(span.Classes.Select(c => $".{c}")) : "";
        return $"<{name}{classes}{(span.Note.Length > 0 ? " " : "")}{Escape(span.Note, format)}>";
    }

    private static string? NameOf(CueTag tag, CaptionFormat format) => (tag, format) switch
    {
        (CueTag.Italic, _) => "i",
        (CueTag.Bold, _) => "b",
        (CueTag.Underline, _) => "u",
        (CueTag.Font, CaptionFormat.SubRip) => "font",
        (_, CaptionFormat.SubRip) or (CueTag.Font, _) => null,
        (CueTag.Class, _) => "c",
        (CueTag.Ruby, _) => "ruby",
        (CueTag.RubyText, _) => "rt",
        (CueTag.Voice, _) => "v",
        _ => "lang",
    };
}
