using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>What a page carries besides its words.</summary>
/// <param name="Fonts">Cuts of one typeface, embedded into the page; empty means that the reader's own typefaces serve.</param>
public sealed record PageAssets(ImmutableArray<PageFont> Fonts)
{
    /// <summary>A style sheet that gives drawings their colours in light and dark; empty for drawings that bring their own.</summary>
    public string PictureStyle { get; init; } = "";

    /// <summary>No fonts.</summary>
    public static PageAssets None { get; } = new([]);
}
