using System.Globalization;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>What a video platform asks of the chapters in a description before it shows any of them.</summary>
/// <remarks>The figures are those of YouTube: 9to5google.com, 28 May 2020, and support.vevo.com, page "YouTube Chapters". A platform may change them.</remarks>
public static class ChapterLimits
{
    /// <summary>How many chapters there are at least: 3.</summary>
    /// <remarks>9to5google.com, 28 May 2020; support.vevo.com, "YouTube Chapters".</remarks>
    public const int Fewest = 3;

    /// <summary>How long a chapter is at least, in seconds: 10.</summary>
    /// <remarks>9to5google.com, 28 May 2020; support.vevo.com, "YouTube Chapters".</remarks>
    public const int ShortestSeconds = 10;

    /// <summary>How much of a title is seen when the viewer points at the bar below the picture, in characters: 49.</summary>
    /// <remarks>About so much; support.vevo.com, "YouTube Chapters".</remarks>
    public const int ShownOnBar = 49;

    /// <summary>How much of a title is seen in the list of chapters, in characters: 70.</summary>
    /// <remarks>About so much; support.vevo.com, "YouTube Chapters".</remarks>
    public const int ShownInList = 70;

    /// <summary>How many characters of a title a viewer counts: a letter with its accents is one, an emoji of several signs is one.</summary>
    /// <param name="title">The title.</param>
    public static int ShownCharacters(string title) => new StringInfo(title).LengthInTextElements;

    /// <summary>The title as it is seen where only so many characters have room: cut, with an ellipsis as the last of them.</summary>
    /// <param name="title">The title.</param>
    /// <param name="characters">How many have room, 2 or more.</param>
    public static string Clip(string title, int characters)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(characters, 2);
        var shown = new StringInfo(title);
        return shown.LengthInTextElements <= characters ? title : $"{shown.SubstringByTextElements(0, characters - 1).TrimEnd()}…";
    }
}
