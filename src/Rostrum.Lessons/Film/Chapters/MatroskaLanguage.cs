namespace Rostrum.Lessons.Film.Chapters;

/// <summary>The language of chapter titles, in both ways in which Matroska names it.</summary>
/// <param name="ThreeLetters">ISO 639-2, such as <c>eng</c>: what older players know.</param>
/// <param name="Tag">BCP 47, such as <c>en-GB</c>.</param>
public sealed record MatroskaLanguage(string ThreeLetters, string Tag)
{
    /// <summary>English.</summary>
    public static MatroskaLanguage English { get; } = new("eng", "en");

    /// <summary>Nobody said which.</summary>
    public static MatroskaLanguage Undetermined { get; } = new("und", "und");
}
