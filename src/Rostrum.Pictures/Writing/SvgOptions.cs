namespace Rostrum.Pictures;

/// <summary>Where an SVG gets its letters from.</summary>
public enum SvgFont
{
    /// <summary>The shipped family by name, else the reader's own sans-serif; each line is held to its measured width.</summary>
    Named,

    /// <summary>The shipped fonts that the texts need inside the file (70 kB a weight for Latin text), so that it looks the same everywhere.</summary>
    Embedded,
}

/// <summary>How an SVG is written.</summary>
public sealed record SvgOptions
{
    /// <summary>The colours of a file that stands alone, and the fallback of one that lives in a page. Default: light.</summary>
    public Palette Palette { get; init; } = Palette.Light;

    /// <summary>Whether colours are custom properties (see <see cref="PaletteCss"/>), so that the picture follows the page. Default: no.</summary>
    public bool FollowsPage { get; init; }

    /// <summary>Where the letters come from. Default: by name.</summary>
    public SvgFont Font { get; init; } = SvgFont.Named;

    /// <summary>Stands before every id, so that several pictures fit in one page; a letter first, then letters, digits, hyphens. Default: <c>picture</c>.</summary>
    public string IdPrefix { get; init; } = "picture";

    /// <summary>A file of its own in fixed colours, with the font inside.</summary>
    public static SvgOptions StandAlone(Palette palette) => new() { Palette = palette, Font = SvgFont.Embedded };

    /// <summary>A piece of an HTML page that follows the page's light or dark.</summary>
    public static SvgOptions InPage(string idPrefix) => new() { FollowsPage = true, IdPrefix = idPrefix };
}
