using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>The tones of the table and what lies on it; those of pieces are in <see cref="PieceColours"/>.</summary>
public static class Tones
{
    /// <summary>What lies behind everything, quiet.</summary>
    public static Tone Surround { get; } = new("surround");

    /// <summary>The table top, where the light falls.</summary>
    public static Tone Table { get; } = new("table");

    /// <summary>The far edge of the table top, and grooves in it.</summary>
    public static Tone TableEdge { get; } = new("table-edge");

    /// <summary>Text on surround and table.</summary>
    public static Tone Ink { get; } = new("ink");

    /// <summary>Less important text on surround and table.</summary>
    public static Tone QuietInk { get; } = new("quiet-ink");

    /// <summary>The body of a board: frame, posts, planks.</summary>
    public static Tone Frame { get; } = new("frame");

    /// <summary>The outer line of a board.</summary>
    public static Tone FrameEdge { get; } = new("frame-edge");

    /// <summary>The lit upper edge of a plank.</summary>
    public static Tone Plank { get; } = new("plank");

    /// <summary>The lit wall behind the pieces, or the ground under them.</summary>
    public static Tone Back { get; } = new("back");

    /// <summary>Text on the lit wall.</summary>
    public static Tone BackInk { get; } = new("back-ink");

    /// <summary>The ground of spaces in the first, fourth … area of a board.</summary>
    public static Tone FirstArea { get; } = new("first-area");

    /// <summary>The ground of spaces in the second area.</summary>
    public static Tone SecondArea { get; } = new("second-area");

    /// <summary>The ground of spaces in the third area.</summary>
    public static Tone ThirdArea { get; } = new("third-area");

    /// <summary>What pieces and boards darken where they touch the ground.</summary>
    public static Tone Shade { get; } = new("shade");

    /// <summary>A slip of paper.</summary>
    public static Tone Paper { get; } = new("paper");

    /// <summary>The edge of a slip and the lines on it.</summary>
    public static Tone PaperEdge { get; } = new("paper-edge");

    /// <summary>Text on a slip.</summary>
    public static Tone PaperInk { get; } = new("paper-ink");

    /// <summary>The outline of every piece.</summary>
    public static Tone PieceEdge { get; } = new("piece-edge");

    /// <summary>A piece of which only the outline is said, as on a pattern card.</summary>
    public static Tone Blank { get; } = new("blank");

    /// <summary>Emblems on light pieces.</summary>
    public static Tone DarkMark { get; } = new("dark-mark");

    /// <summary>Emblems on dark pieces.</summary>
    public static Tone LightMark { get; } = new("light-mark");

    /// <summary>The badge of a flaw.</summary>
    public static Tone Flaw { get; } = new("flaw");

    /// <summary>The sign on the badge of a flaw.</summary>
    public static Tone FlawInk { get; } = new("flaw-ink");

    /// <summary>A space that a question is about.</summary>
    public static Tone Asked { get; } = new("asked");

    /// <summary>A space that counts or is allowed.</summary>
    public static Tone Good { get; } = new("good");

    /// <summary>A space that breaks a rule or does not count.</summary>
    public static Tone Bad { get; } = new("bad");

    /// <summary>Text and signs on the tags of marked spaces.</summary>
    public static Tone TagInk { get; } = new("tag-ink");

    /// <summary>Arrows from space to space.</summary>
    public static Tone Arrow { get; } = new("arrow");

    /// <summary>All of them, in the order above.</summary>
    public static ImmutableArray<Tone> All { get; } =
    [
        Surround, Table, TableEdge, Ink, QuietInk, Frame, FrameEdge, Plank, Back, BackInk, FirstArea, SecondArea, ThirdArea, Shade, Paper, PaperEdge, PaperInk,
        PieceEdge, Blank, DarkMark, LightMark, Flaw, FlawInk, Asked, Good, Bad, TagInk, Arrow,
    ];

    private static ImmutableArray<Tone> Grounds { get; } = [FirstArea, SecondArea, ThirdArea, Paper];

    /// <summary>Every pairing of text and ground that the painters use; each palette keeps all of them at <see cref="Contrast.TextMinimum"/>.</summary>
    public static ImmutableArray<(Tone Text, Tone Ground)> TextPairs { get; } =
    [
        (Ink, Surround), (Ink, Table), (QuietInk, Surround), (QuietInk, Table), (BackInk, Back), (PaperInk, Paper),
        (FlawInk, Flaw), (TagInk, Asked), (TagInk, Good), (TagInk, Bad), (TagInk, Frame),
        .. Grounds.Select(ground => (BackInk, ground)),
    ];

    /// <summary>Every pairing of a shape that carries meaning and its ground; each palette keeps all of them at <see cref="Contrast.ShapeMinimum"/>.</summary>
    public static ImmutableArray<(Tone Shape, Tone Ground)> ShapePairs { get; } =
    [
        (PieceEdge, Back), (PieceEdge, Paper), (PieceEdge, Blank), (Asked, Back), (Good, Back), (Bad, Back), (Flaw, Back), (Arrow, Paper), (Frame, Back),
        .. Grounds.SelectMany(ground => new[] { (PieceEdge, ground), (Asked, ground), (Good, ground), (Bad, ground), (Flaw, ground), (Frame, ground) }),
    ];
}
