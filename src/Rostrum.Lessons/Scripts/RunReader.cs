using Markdig.Syntax.Inlines;
using Rostrum.Lessons.Claims;
using Rostrum.Text;

namespace Rostrum.Lessons.Scripts;

/// <summary>Turns the words of a Markdown block into runs.</summary>
internal static class RunReader
{
    public static IEnumerable<LessonRun> Read(SourceText source, ContainerInline? inline) =>
        (inline ?? Enumerable.Empty<Inline>()).SelectMany(i => Read(source, i));

    public static IEnumerable<LessonRun> Read(SourceText source, Inline inline) => inline switch
    {
        LiteralInline literal => [new LessonRun.Plain(literal.Content.ToString())],
        LineBreakInline => [new LessonRun.Plain(" ")],
        CodeInline code => [new LessonRun.Code(code.Content)],
        EmphasisInline emphasis => [new LessonRun.Stressed(Words(source, emphasis), emphasis.DelimiterCount > 1)],
        LinkInline { IsImage: false } link => [Link(source, link)],
        AutolinkInline auto => [new LessonRun.Link(auto.Url, auto.Url)],
        HtmlEntityInline entity => [new LessonRun.Plain(entity.Transcoded.ToString())],
        ContainerInline container => Read(source, container),
        _ => [],
    };

    /// <summary>All words of a container, marks of emphasis left out.</summary>
    public static string Words(SourceText source, ContainerInline? inline) => string.Concat(Read(source, inline).Select(r => r.Words)).Trim();

    /// <summary>Where the target of a link or shot stands.</summary>
    public static SourceSpan TargetOf(SourceText source, LinkInline link) =>
        link.UrlSpan.IsEmpty ? source.Span(link.Span.Start, link.Span.Length) : source.Span(link.UrlSpan.Start, link.UrlSpan.Length);

    private static LessonRun Link(SourceText source, LinkInline link)
    {
        string words = Words(source, link);
        string target = link.Url ?? "";
        if (!ClaimTarget.Looks(target))
        {
            return new LessonRun.Link(words, target);
        }

        SourceSpan at = link.FirstChild is { } first && link.LastChild is { } last
            ? source.Span(first.Span.Start, last.Span.End - first.Span.Start + 1)
            : source.Span(link.Span.Start, link.Span.Length);
        return new LessonRun.Claim(words, target, at, TargetOf(source, link));
    }
}
