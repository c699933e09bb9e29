using Markdig.Syntax.Inlines;
using Rostrum.Lessons.Claims;
using Rostrum.Text;

namespace Rostrum.Lessons.Scripts;

/// <summary>Turns the words of a Markdown block into runs; pictures among them are left out.</summary>
internal static class RunReader
{
    public static IEnumerable<LessonRun> Read(SourceText source, ContainerInline? inline) =>
        (inline ?? Enumerable.Empty<Inline>()).SelectMany(i => Read(source, i));

    public static IEnumerable<LessonRun> Read(SourceText source, Inline inline) => inline switch
    {
        LiteralInline literal => [new LessonRun.Plain(BlankTargets.Restored(literal.Content.ToString()), At(source, literal))],
        LineBreakInline => [new LessonRun.Plain(" ", At(source, inline))],
        CodeInline code => [new LessonRun.Code(BlankTargets.Restored(code.Content))],
        EmphasisInline emphasis => Read(source, (ContainerInline)emphasis).Select(r => Stressed(r, emphasis.DelimiterCount > 1)),
        LinkInline { IsImage: true } => [],
        LinkInline link => [Link(source, link)],
        AutolinkInline auto => [new LessonRun.Link(auto.Url, auto.Url, At(source, auto))],
        HtmlEntityInline entity => [new LessonRun.Plain(entity.Transcoded.ToString(), At(source, entity))],
        ContainerInline container => Read(source, container),
        _ => [],
    };

    /// <summary>All words of a container, marks of emphasis left out.</summary>
    public static string Words(SourceText source, ContainerInline? inline) => string.Concat(Read(source, inline).Select(r => r.Words)).Trim();

    /// <summary>Where the target of a link or shot stands.</summary>
    public static SourceSpan TargetOf(SourceText source, LinkInline link) =>
        link.UrlSpan.IsEmpty ? At(source, link) : source.Span(link.UrlSpan.Start, link.UrlSpan.Length);

    private static SourceSpan At(SourceText source, Inline inline) => source.Span(inline.Span.Start, inline.Span.Length);

    // A statement stays one where the voice leans on it.
    private static LessonRun Stressed(LessonRun run, bool isStrong) =>
        run is LessonRun.Plain plain ? new LessonRun.Stressed(plain.Words, isStrong, plain.At) : run;

    private static LessonRun Link(SourceText source, LinkInline link)
    {
        string words = Words(source, link);
        string target = link.Url ?? "";
        SourceSpan at = link.FirstChild is { } first && link.LastChild is { } last
            ? source.Span(first.Span.Start, last.Span.End - first.Span.Start + 1)
            : At(source, link);
        return target switch
        {
            _ when target.Split(':')[0].Equals(LessonRun.Unchecked.Target, StringComparison.OrdinalIgnoreCase) => new LessonRun.Unchecked(words, at),
            _ when LessonMark.Read(BlankTargets.Restored(target)) is { } mark => new LessonRun.Marked(words, mark.Kind, mark.Names, at, TargetOf(source, link)) { HoldsBlank = BlankTargets.IsOne(target) },
            _ when ClaimTarget.Looks(target) || LessonMark.Looks(target) => new LessonRun.Claim(words, target, at, TargetOf(source, link)),
            _ => new LessonRun.Link(words, target, at),
        };
    }
}
