using System.Text;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Parts a metadata file of FFmpeg into lines, where an escaped line end does not end one.</summary>
internal static class FfMetadataLines
{
    /// <summary>Every line that says something, with its escapes; empty ones and those that begin with <c>;</c> or <c>#</c> left out.</summary>
    public static IEnumerable<SourceSpan> Of(SourceText source)
    {
        string content = source.Content;
        for (int at = 0; at < content.Length;)
        {
            int end = EndOf(content, at);
            if (end > at && content[at] is not (';' or '#'))
            {
                yield return source.Span(at, end - at);
            }

            at = end + 1;
        }
    }

    /// <summary>The tag of a line; null where it has no <c>=</c> that is not escaped.</summary>
    public static FfTag? Tag(string line)
    {
        for (int i = 0; i < line.Length; i++)
        {
            if (line[i] == '=')
            {
                return new FfTag(Unescaped(line[..i]), Unescaped(line[(i + 1)..]));
            }

            i += line[i] == '\\' ? 1 : 0;
        }

        return null;
    }

    private static int EndOf(string content, int from)
    {
        int at = from;
        while (at < content.Length && content[at] is not ('\n' or '\r'))
        {
            // '\' before CR LF escapes both.
            at += content[at] != '\\' ? 1 : content.AsSpan(at + 1).StartsWith("\r\n", StringComparison.Ordinal) ? 3 : 2;
        }

        return Math.Min(at, content.Length);
    }

    private static string Unescaped(string written)
    {
        var plain = new StringBuilder(written.Length);
        for (int i = 0; i < written.Length; i++)
        {
            i += written[i] == '\\' && i + 1 < written.Length ? 1 : 0;
            plain.Append(written[i]);
        }

        return plain.ToString();
    }
}
