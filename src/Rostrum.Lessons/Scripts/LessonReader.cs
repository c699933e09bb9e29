using System.Collections.Immutable;
using Markdig;
using Markdig.Extensions.Yaml;
using Markdig.Syntax;
using Rostrum.Text;
using SourceSpan = Rostrum.Text.SourceSpan;

namespace Rostrum.Lessons.Scripts;

/// <summary>Reads a lesson from Markdown (CommonMark), with front matter between two lines of <c>---</c>.</summary>
public static class LessonReader
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UseYamlFrontMatter().Build();

    /// <summary>The lesson; what lies before the first level 2 heading belongs to a topic named after the lesson.</summary>
    /// <param name="source">The file.</param>
    /// <param name="problems">Receives ROS0606 for a front matter line that cannot be read, ROS0610 for quotes or lists too deep in each other,
    /// ROS0687 for a pace that is none.</param>
    public static Lesson Read(SourceText source, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(source);
        MarkdownDocument document = Parsed(source, problems);
        Dictionary<string, string> front = FrontMatter(source, document.OfType<YamlFrontMatterBlock>().FirstOrDefault(), problems);
        string title = front.GetValueOrDefault("title") ?? FirstHeading(source, document) ?? source.Name;
        var topics = ImmutableArray.CreateBuilder<LessonTopic>();
        var blocks = ImmutableArray.CreateBuilder<LessonBlock>();
        (string Title, SourceSpan At) topic = (title, source.Span(0, 0));
        foreach (Markdig.Syntax.Block block in document)
        {
            if (block is HeadingBlock { Level: <= 2 } heading)
            {
                Close(topics, topic, blocks);
                topic = (RunReader.Words(source, heading.Inline), source.Span(heading.Span.Start, heading.Span.Length));
            }
            else
            {
                blocks.AddRange(BlockReader.Read(source, block));
            }
        }

        Close(topics, topic, blocks);
        return new Lesson(
            source, title, front.GetValueOrDefault("presenter", ""), front.GetValueOrDefault("correct as of", ""), front.GetValueOrDefault("printing", ""), topics.ToImmutable())
        {
            Disclosure = front.GetValueOrDefault("disclosure", ""),
            WordsAMinute = front.TryGetValue("pace", out string? pace) ? Pace.Of(pace, HeadLine(source, "pace"), problems) : Pace.Usual,
        };
    }

    private static MarkdownDocument Parsed(SourceText source, DiagnosticBag problems)
    {
        try
        {
            return Markdown.Parse(BlankTargets.Joined(source.Content), Pipeline);
        }
        catch (ArgumentException)
        {
            // The only text that the parser refuses; it keeps its own stack from running over.
            problems.Add(LessonProblems.TooDeep(source.Span(0, 0)));
            return [];
        }
    }

    // The last line of the head with this name, which is the one that counts.
    private static SourceSpan HeadLine(SourceText source, string name)
    {
        int line = Enumerable.Range(1, source.LineCount - 1).TakeWhile(l => source.Line(l).Trim() is not ("---" or "...")).LastOrDefault(l => source.Line(l).Split(": ")[0].Trim() == name);
        return source.Span(source.LineStart(line), source.LineEnd(line) - source.LineStart(line));
    }

    private static string? FirstHeading(SourceText source, MarkdownDocument document) =>
        document.OfType<HeadingBlock>().FirstOrDefault(h => h.Level == 1) is { } heading ? RunReader.Words(source, heading.Inline) : null;

    private static void Close(ImmutableArray<LessonTopic>.Builder topics, (string Title, SourceSpan At) topic, ImmutableArray<LessonBlock>.Builder blocks)
    {
        if (blocks.Count > 0)
        {
            topics.Add(new LessonTopic(topic.Title, topic.At, blocks.ToImmutable()));
            blocks.Clear();
        }
    }

    private static Dictionary<string, string> FrontMatter(SourceText source, YamlFrontMatterBlock? block, DiagnosticBag problems)
    {
        var front = new Dictionary<string, string>(StringComparer.Ordinal);
        if (block is null)
        {
            return front;
        }

        int first = source.LineIndexOf(block.Span.Start);
        int last = source.LineIndexOf(Math.Max(block.Span.Start, block.Span.End));
        for (int line = first; line <= last; line++)
        {
            string text = source.Line(line);
            int colon = text.IndexOf(": ", StringComparison.Ordinal);
            if (colon > 0)
            {
                front[text[..colon].Trim()] = text[(colon + 2)..].Trim();
            }
            else if (text.Trim() is not ("---" or "...") && text.Trim().Length > 0)
            {
                problems.Add(LessonProblems.FrontMatterLine(source.Span(source.LineStart(line), text.Length), text));
            }
        }

        return front;
    }
}
