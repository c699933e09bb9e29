using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Lessons.Published;

/// <summary>Adds a video to the file without touching anything that stands in it.</summary>
public static class PublishedWriter
{
    private const string Head = """
        # What the published videos of this game said, and by which rules. 'rostrum publish' adds to it, 'rostrum check --published' holds it
        # against the sheet as it is now. Remarks of your own may stand anywhere.
        format: 1
        videos:

        """;

    private const int UsualIndent = 2;

    /// <summary>The file with one more video in it.</summary>
    /// <param name="file">The file as it is; null where there is none yet.</param>
    /// <param name="video">The video.</param>
    /// <returns>The new content; null where the file has errors, or is written so that nothing can be added behind its last video.</returns>
    public static string? With(SourceText? file, PublishedVideo video)
    {
        ArgumentNullException.ThrowIfNull(video);
        string content = file is null ? Head.ReplaceLineEndings("\n") + Entry(video, UsualIndent) : Added(file, video);
        PublishedFile before = file is null ? new PublishedFile([], []) : PublishedFile.Read(file);
        PublishedFile after = PublishedFile.Read(new SourceText(PublishedFile.FileName, content));
        return before.HasErrors || after.HasErrors || after.Videos.Length != before.Videos.Length + 1 || after.Videos[^1].InWords != video.InWords ? null : content;
    }

    /// <summary>Words as the file can hold them: one line, without signs that nobody sees; those that join letters stay.</summary>
    internal static string Plain(string words) => Film.OneLine.Of(string.Concat(words.EnumerateRunes().Where(r => r.Value is 0x200C or 0x200D || Rune.GetUnicodeCategory(r) != UnicodeCategory.Format)));

    private static string Added(SourceText file, PublishedVideo video)
    {
        OutlineMapping root = OutlineReader.Read(file, PublishedKeys.Dialect, new DiagnosticBag());
        OutlineEntry? videos = root.Find(PublishedKeys.Videos);
        string content = file.Content;
        string lineEnd = content.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        // Remarks behind the last video stay there, unless another key stands behind them.
        int at = root.Entries.IsEmpty || root.Entries[^1] == videos ? content.Length : LineBehind(content, videos?.Value.Span.End ?? 0);
        string before = at > 0 && content[at - 1] is not '\n' ? lineEnd : "";
        string head = videos is null ? $"{PublishedKeys.Videos}:\n" : "";
        return string.Concat(content.AsSpan(0, at), before, (head + Entry(video, Indent(videos))).ReplaceLineEndings(lineEnd), content.AsSpan(at));
    }

    private static int LineBehind(string content, int at) => content.IndexOf('\n', at) is >= 0 and var end ? end + 1 : content.Length;

    private static int Indent(OutlineEntry? videos) =>
        videos?.Value is OutlineSequence { Items: [OutlineMapping { Entries: [var first, ..] }, ..] } ? Math.Max(0, first.Key.Span.StartPosition.Column - 1 - "- ".Length) : UsualIndent;

    private static string Entry(PublishedVideo video, int indent)
    {
        var lines = new Lines(indent);
        lines.Item(0, PublishedKeys.Title, video.Title);
        lines.Add(0, PublishedKeys.Date, video.Date);
        lines.Add(0, PublishedKeys.Address, video.Address);
        lines.Add(0, PublishedKeys.Length, video.Length?.InWords ?? "");
        lines.Pairs(PublishedKeys.Sources, video.Sources);
        lines.Add(0, PublishedKeys.Printing, video.PrintingAt?.InWords ?? "");
        lines.List(PublishedKeys.Rules, video.Rules, Rule);
        lines.List(PublishedKeys.Sentences, video.Sentences, Sentence);
        lines.Pairs(PublishedKeys.Positions, video.Positions);
        lines.Several(PublishedKeys.NotSaid, video.NotSaid);
        return lines.ToString();
    }

    private static void Rule(Lines lines, PublishedRule rule)
    {
        lines.Item(1, PublishedKeys.Clause, rule.Clause);
        lines.Add(1, PublishedKeys.At, string.Join(", ", rule.Times.Select(t => t.InWords)));
        lines.Add(1, PublishedKeys.Says, rule.Says);
        lines.Add(1, PublishedKeys.Means, rule.Means);
        lines.Add(1, PublishedKeys.Status, rule.Status);
        lines.Add(1, PublishedKeys.Cite, rule.Cite);
    }

    private static void Sentence(Lines lines, PublishedSentence sentence)
    {
        lines.Item(1, PublishedKeys.At, sentence.Time.InWords);
        lines.Add(1, PublishedKeys.Says, sentence.Said);
    }

    /// <summary>Lines of an entry, four blanks deeper for what stands in a list of it.</summary>
    private sealed class Lines(int indent)
    {
        private const int Deeper = 4;

        private readonly StringBuilder _lines = new();

        public void Item(int depth, string key, string words) => Line(indent + (depth * Deeper), $"- {key}: {Raw(words)}");

        public void Add(int depth, string key, string words)
        {
            if (words.Length > 0)
            {
                Line(indent + (depth * Deeper) + "- ".Length, $"{key}: {Raw(words)}");
            }
        }

        public void List<T>(string key, ImmutableArray<T> items, Action<Lines, T> write)
        {
            if (!items.IsEmpty)
            {
                Line(indent + "- ".Length, $"{key}:");
                items.ToList().ForEach(i => write(this, i));
            }
        }

        public void Pairs(string key, ImmutableArray<(string Name, string Words)> pairs)
        {
            if (!pairs.IsEmpty)
            {
                Line(indent + "- ".Length, $"{key}:");
            }

            foreach ((string name, string words) in pairs)
            {
                Line(indent + Deeper, $"{Name(name)}: {OutlineQuotes.Quote(Plain(words))}");
            }
        }

        public void Several(string key, ImmutableArray<string> names)
        {
            if (!names.IsEmpty)
            {
                Line(indent + "- ".Length, $"{key}:");
                string blanks = new(' ', indent + Deeper);
                _lines.AppendJoin($"{VideoReader.Between}\n", names.Select(n => blanks + Plain(n))).Append('\n');
            }
        }

        public override string ToString() => _lines.ToString();

        private void Line(int blanks, string words) => _lines.Append(' ', blanks).Append(words).Append('\n');

        private static string Name(string name) => name.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_') ? name : OutlineQuotes.Quote(Plain(name));

        // A sentence is written as it is, unless its first sign would make something else of it.
        private static string Raw(string words) => Plain(words) is var plain && plain.Length > 0 && plain[0] is '"' or '\'' or '|' or '>' or '{' or '[' or '#' ? OutlineQuotes.Quote(plain) : plain;
    }
}
