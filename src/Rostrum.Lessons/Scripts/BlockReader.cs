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
        ListBlock list => [new LessonBlock.List(list.IsOrdered, [.. Items(source, list)]), .. Shots(source, list)],
        QuoteBlock quote => [new LessonBlock.Quote([.. quote.Descendants<ParagraphBlock>().SelectMany(p => RunReader.Read(source, p.Inline))]), .. Shots(source, quote)],
        Markdig.Extensions.Yaml.YamlFrontMatterBlock => [],
        HtmlBlock html => Note(source, html),
        CodeBlock code => [new LessonBlock.Paragraph([new LessonRun.Code(BlankTargets.Restored(code.Lines.ToString()))])],
        _ => [],
    };

    // Other notes are for the presenter alone.
    private static IEnumerable<LessonBlock> Note(SourceText source, HtmlBlock html)
    {
        const string Open = "<!--";
        const string Shut = "-->";
        SourceSpan at = source.Span(html.Span.Start, html.Span.Length);
        string text = at.Text.Trim();
        if (text.StartsWith(Open, StringComparison.Ordinal) && text.EndsWith(Shut, StringComparison.Ordinal) && text.Length >= Open.Length + Shut.Length
            && LessonMark.ReadNote(text[Open.Length..^Shut.Length]) is { } mark)
        {
            yield return new LessonBlock.Note(mark.Kind, mark.Names, at);
        }
    }

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
            yield return Shot(source, image);
        }

        if (said.Any(r => !string.IsNullOrWhiteSpace(r.Words)))
        {
            yield return new LessonBlock.Paragraph(said.ToImmutable());
        }
    }

    private static LessonBlock.Shot Shot(SourceText source, LinkInline image) =>
        new(RunReader.Words(source, image), image.Url ?? "", RunReader.TargetOf(source, image));

    // A shot inside a list or a quote stands behind it.
    private static IEnumerable<LessonBlock.Shot> Shots(SourceText source, MarkdownObject block) =>
        block.Descendants<LinkInline>().Where(l => l.IsImage).Select(l => Shot(source, l));

    // The items of a list inside an item follow that item.
    private static IEnumerable<ImmutableArray<LessonRun>> Items(SourceText source, ListBlock list) => list.OfType<ListItemBlock>().SelectMany(
        i => i.OfType<ListBlock>().SelectMany(l => Items(source, l)).Prepend([.. i.OfType<ParagraphBlock>().SelectMany(p => RunReader.Read(source, p.Inline))]));
}
