using System.Collections.Frozen;

namespace Rostrum.Pictures;

/// <summary>Says which colour each tone is.</summary>
public sealed class Palette
{
    private readonly FrozenDictionary<Tone, Rgb> _colours;

    private Palette(string name, params IEnumerable<(Tone Tone, string Hex)> tones)
    {
        Name = name;
        _colours = tones.Select(entry => (entry.Tone, Colour: Rgb.Parse(entry.Hex)))
            .Concat(PieceColours.All.Select(colour => (Tone: colour.Body, Colour: colour.Rgb)))
            .ToFrozenDictionary(entry => entry.Tone, entry => entry.Colour);
    }

    /// <summary>For light pages and for print.</summary>
    public static Palette Light { get; } = new(
        "light",
        (Tones.Surround, "#f1ece2"), (Tones.Table, "#ddd2bf"), (Tones.TableEdge, "#b9aa91"),
        (Tones.Ink, "#2a231c"), (Tones.QuietInk, "#574b3e"),
        (Tones.Frame, "#7d5443"), (Tones.FrameEdge, "#452b20"), (Tones.Plank, "#a87a60"),
        (Tones.Back, "#efe4cd"), (Tones.BackInk, "#463a2e"),
        (Tones.FirstArea, "#d6dcbd"), (Tones.SecondArea, "#f0d3bf"), (Tones.ThirdArea, "#cfd8dc"), (Tones.Shade, "#cbb999"),
        (Tones.Paper, "#fffbf2"), (Tones.PaperEdge, "#b9ad98"), (Tones.PaperInk, "#2a231c"),
        (Tones.PieceEdge, "#241b15"), (Tones.Blank, "#fffbf2"), (Tones.DarkMark, "#241b15"), (Tones.LightMark, "#fff4e0"),
        (Tones.Flaw, "#a3122f"), (Tones.FlawInk, "#fff4e0"),
        (Tones.Asked, "#4b3f9e"), (Tones.Good, "#14663b"), (Tones.Bad, "#a3122f"), (Tones.TagInk, "#fffbf2"), (Tones.Arrow, "#4b3f9e"));

    /// <summary>For dark pages and for the screen behind a camera: the same table with the room lights down.</summary>
    public static Palette Dark { get; } = new(
        "dark",
        (Tones.Surround, "#1b1815"), (Tones.Table, "#322b25"), (Tones.TableEdge, "#4c4239"),
        (Tones.Ink, "#f0e7d8"), (Tones.QuietInk, "#c0b3a0"),
        (Tones.Frame, "#6d4838"), (Tones.FrameEdge, "#0f0c0a"), (Tones.Plank, "#96694f"),
        (Tones.Back, "#ddceb1"), (Tones.BackInk, "#3d3227"),
        (Tones.FirstArea, "#c3c9a4"), (Tones.SecondArea, "#dfbca4"), (Tones.ThirdArea, "#b9c4ca"), (Tones.Shade, "#b5a281"),
        (Tones.Paper, "#efe6d5"), (Tones.PaperEdge, "#a3957f"), (Tones.PaperInk, "#231c16"),
        (Tones.PieceEdge, "#1d1510"), (Tones.Blank, "#f6efe1"), (Tones.DarkMark, "#1d1510"), (Tones.LightMark, "#fff4e0"),
        (Tones.Flaw, "#8f0f29"), (Tones.FlawInk, "#fff4e0"),
        (Tones.Asked, "#43378f"), (Tones.Good, "#0f5832"), (Tones.Bad, "#8f0f29"), (Tones.TagInk, "#fffbf2"), (Tones.Arrow, "#43378f"));

    /// <summary>For a sheet of paper that is mostly words: black on white, boards in greys, so that it prints well without colour.</summary>
    public static Palette Print { get; } = new(
        "print",
        (Tones.Surround, "#ffffff"), (Tones.Table, "#ffffff"), (Tones.TableEdge, "#d8d8d8"),
        (Tones.Ink, "#000000"), (Tones.QuietInk, "#4d4d4d"),
        (Tones.Frame, "#5c5c5c"), (Tones.FrameEdge, "#000000"), (Tones.Plank, "#8a8a8a"),
        (Tones.Back, "#f7f7f7"), (Tones.BackInk, "#262626"),
        (Tones.FirstArea, "#e6e6e6"), (Tones.SecondArea, "#f2f2f2"), (Tones.ThirdArea, "#d8d8d8"), (Tones.Shade, "#c4c4c4"),
        (Tones.Paper, "#ffffff"), (Tones.PaperEdge, "#9a9a9a"), (Tones.PaperInk, "#000000"),
        (Tones.PieceEdge, "#000000"), (Tones.Blank, "#ffffff"), (Tones.DarkMark, "#241b15"), (Tones.LightMark, "#fff4e0"),
        (Tones.Flaw, "#000000"), (Tones.FlawInk, "#ffffff"),
        (Tones.Asked, "#333333"), (Tones.Good, "#1a1a1a"), (Tones.Bad, "#1a1a1a"), (Tones.TagInk, "#ffffff"), (Tones.Arrow, "#1a1a1a"));

    /// <summary>Lower case, such as <c>dark</c>.</summary>
    public string Name { get; }

    /// <summary>The colour of a tone.</summary>
    /// <exception cref="KeyNotFoundException">The tone is neither in <see cref="Tones"/> nor in <see cref="PieceColours"/>.</exception>
    public Rgb this[Tone tone] => _colours[tone];

    /// <summary>Every tone that the palette knows, in order of name.</summary>
    public IEnumerable<Tone> KnownTones => _colours.Keys.OrderBy(tone => tone.Name, StringComparer.Ordinal);
}
