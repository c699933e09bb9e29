using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>A piece of a topic that begins on a line of its own.</summary>
public abstract record PageBlock
{
    private PageBlock() { }

    /// <summary>A paragraph.</summary>
    /// <param name="Runs">Its words from left to right.</param>
    public sealed record Paragraph(ImmutableArray<PageRun> Runs) : PageBlock;

    /// <summary>A heading inside a topic; level 3.</summary>
    /// <param name="Words">The heading.</param>
    public sealed record Subheading(string Words) : PageBlock;

    /// <summary>A list of one level.</summary>
    /// <param name="IsNumbered">True if the order matters, so that the items are counted from 1.</param>
    /// <param name="Items">The words of each item.</param>
    public sealed record List(bool IsNumbered, ImmutableArray<ImmutableArray<PageRun>> Items) : PageBlock;

    /// <summary>Words of somebody else.</summary>
    /// <param name="Runs">The words quoted.</param>
    /// <param name="Cite">Where they stand, such as <c>book 5</c>; empty if nobody said.</param>
    public sealed record Quote(ImmutableArray<PageRun> Runs, string Cite) : PageBlock;

    /// <summary>A drawing of the table.</summary>
    /// <param name="Svg">
    /// One <c>svg</c> element as text. It may hold shapes, text, gradients and patterns with presentation attributes;
    /// scripts, style sheets, images, animation and links are refused.
    /// </param>
    /// <param name="Caption">What the drawing shows, in a few words; its name for a screen reader. Not empty.</param>
    /// <param name="TextAlternative">The same position in words, such as one line for each tier; empty if the caption says it all.</param>
    /// <param name="File">Where the drawing lies as a file of its own, relative to the page; null for none.</param>
    public sealed record Figure(string Svg, string Caption, string TextAlternative, string? File) : PageBlock;
}
