using System.Collections.Immutable;

namespace Rostrum.Lessons.Film;

/// <summary>What the editor puts onto the picture, or has to film again, at some words of the lesson. Closed: the two below and no more.</summary>
/// <param name="Start">From the beginning of the film.</param>
/// <param name="End">Not before <paramref name="Start"/>.</param>
/// <param name="Line">The 1-based line of the lesson.</param>
public abstract record CallOut(TimeSpan Start, TimeSpan End, int Line)
{
    /// <summary>A checked value is said: the number, the page where it stands, arrows to what gives it.</summary>
    /// <param name="Start">When its first word is said.</param>
    /// <param name="End">When its last word has been said.</param>
    /// <param name="Line">The 1-based line of the lesson.</param>
    /// <param name="Said">The number or verdict as it is said, such as <c>35</c> or <c>not allowed</c>.</param>
    /// <param name="Page">Where the rules say so, such as <c>Rulebook, page 8</c>; empty where the sheet names none.</param>
    /// <param name="Spaces">The spaces to which arrows lead; may be empty.</param>
    public sealed record Value(TimeSpan Start, TimeSpan End, int Line, string Said, string Page, ImmutableArray<string> Spaces) : CallOut(Start, End, Line);

    /// <summary>A pick-up: something is wrong there, so it is said or shown again.</summary>
    /// <param name="Start">When its first word is said, or the shot begins.</param>
    /// <param name="End">When its last word has been said, or the shot ends.</param>
    /// <param name="Line">The 1-based line of the lesson.</param>
    /// <param name="Said">The words, or the caption of the shot.</param>
    /// <param name="Why">What is wrong and what to do, in sentences.</param>
    public sealed record PickUp(TimeSpan Start, TimeSpan End, int Line, string Said, string Why) : CallOut(Start, End, Line);
}
