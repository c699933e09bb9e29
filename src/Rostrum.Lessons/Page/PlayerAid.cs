using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>The sheet's read-back as a one-page player aid.</summary>
/// <param name="Game">The game's name.</param>
/// <param name="Printing">Which printing of the rules it follows.</param>
/// <param name="CorrectAsOf">The day up to which the rules were checked, as readers see it.</param>
/// <param name="Sections">From the first thing a player needs to the last.</param>
/// <param name="UnofficialNote">Says that the aid is unofficial.</param>
public sealed record PlayerAid(
    string Game,
    string Printing,
    string CorrectAsOf,
    ImmutableArray<AidSection> Sections,
    string UnofficialNote)
{
    /// <summary>The tables of the sheet that hold numbers only, such as what runs score; may be empty.</summary>
    public ImmutableArray<AidTable> Tables { get; init; } = [];

    /// <summary>The language of all texts, as BCP 47 writes it.</summary>
    public string Language { get; init; } = "en";
}
