using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Rostrum.Pictures;

/// <summary>The colours that a sheet can give to pieces, from light to dark.</summary>
public static class PieceColours
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<PieceColour> All { get; } =
    [
        Colour("chalk", "#fbf8f0"), Colour("ash", "#d5d0c4"), Colour("sand", "#e6cb92"), Colour("sun", "#f2bb2e"),
        Colour("sky", "#8fbbdb"), Colour("rose", "#dd8f9b"), Colour("copper", "#d9813c"), Colour("moss", "#7a8f3c"),
        Colour("sea", "#2c7f8a"), Colour("slate", "#64717b"), Colour("rust", "#a3432b"), Colour("pine", "#2c5a40"),
        Colour("plum", "#6a3a60"), Colour("iron", "#4b3330"), Colour("soot", "#262321"),
    ];

    /// <summary>Looks a colour up by its word; false where there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out PieceColour? colour) => Catalogue.TryFind(All, name, out colour);

    /// <summary>The colour of that word.</summary>
    /// <exception cref="ArgumentException">There is none; the message lists those there are.</exception>
    public static PieceColour Find(string name) => Catalogue.Find(All, name, "colour");

    private static PieceColour Colour(string name, string hex) => new(name, Rgb.Parse(hex));
}
