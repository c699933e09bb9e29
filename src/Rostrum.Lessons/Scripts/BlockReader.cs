using System.Collections.Immutable;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Rostrum.Text;
using SourceSpan = Rostrum.Text.SourceSpan;

namespace Rostrum.Lessons.Scripts;

/// <summary>Turns the blocks of a Markdown document into those of a lesson; tags and comments are left out.</summary>
internal static class BlockReader
{
    public static IEnumerable<LessonBlock> Read(SourceText source, Block block) => block switch
    {
        HeadingBlock heading => [new LessonBlock.Subheading(RunReader.Words(source, heading.Inline))],
        ParagraphBlock paragraph => Paragraph(source, paragraph.Inline),
        ListBlock list => [new LessonBlock.List(list.IsOrdered, [.. list.OfType<ListItemBlock>().Select(i => Item(source, i))])],
        QuoteBlock quote => [new LessonBlock.Quote([.. quote.OfType<ParagraphBlock>().SelectMany(p => RunReader.Read(source, p.Inline))])],
        Markdig.Extensions.Yaml.YamlFrontMatterBlock => [],
        CodeBlock code => [new LessonBlock.Paragraph([new LessonRun.Code(code.Lines.ToString())])],
        _ => [],
    };

    // A paragraph may hold shots among its words: each stands for itself.
    private static IEnumerable<LessonBlock> Paragraph(SourceText source, ContainerInline? inline)
    {
        var said = ImmutableArray.CreateBuilder<LessonRun>();
        foreach (Inline piece in inline ?? Enumerable.Empty<Inline>())
        {
            if (piece is not LinkInline { IsImage: true } image)
            {
                said.AddRange(RunReader.Read(source, piece));
                continue;
            }

            if (said.Any(r => !string.IsNullOrWhiteSpace(r.Words)))
            {
                yield return new LessonBlock.Paragraph(said.ToImmutable());
            }

            said.Clear();
            yield return new LessonBlock.Shot(RunReader.Words(source, image), image.Url ?? "", RunReader.TargetOf(source, image));
        }

        if (said.Any(r => !string.IsNullOrWhiteSpace(r.Words)))
        {
            yield return new LessonBlock.Paragraph(said.ToImmutable());
        }
    }

    private static ImmutableArray<LessonRun> Item(SourceText source, ListItemBlock item) =>
        [.. item.OfType<ParagraphBlock>().SelectMany(p => RunReader.Read(source, p.Inline))];
}
