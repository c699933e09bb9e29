namespace Rostrum.Pictures;

/// <summary>How one piece looks and what it is called.</summary>
/// <param name="Outline">Its silhouette.</param>
/// <param name="Colour">Its colour.</param>
/// <param name="Emblem">The mark on it; null for none.</param>
/// <param name="Flaw">Its flaw; null for a sound piece.</param>
/// <param name="Says">The text alternative, such as <c>cracked copper jug</c>.</param>
public sealed record PieceLook(Outline Outline, PieceColour Colour, Emblem? Emblem, Flaw? Flaw, string Says)
{
    /// <summary>A look from the words of a sheet.</summary>
    /// <param name="outline">A name in <see cref="Outlines"/>.</param>
    /// <param name="colour">A name in <see cref="PieceColours"/>.</param>
    /// <param name="emblem">A name in <see cref="Emblems"/>, or null.</param>
    /// <param name="flaw">A name in <see cref="Flaws"/>, or null.</param>
    /// <param name="says">The text alternative.</param>
    /// <exception cref="ArgumentException">A list lacks the name; ask the list's <c>TryFind</c> first where an author wrote it.</exception>
    public static PieceLook Of(string outline, string colour, string? emblem, string? flaw, string says) => new(
        Outlines.Find(outline),
        PieceColours.Find(colour),
        emblem is null ? null : Emblems.Find(emblem),
        flaw is null ? null : Flaws.Find(flaw),
        says);
}
