namespace Rostrum.Lessons.Captions.Reading;

/// <summary>The blanks of WebVTT, which are those of HTML: space, tab, line feed, form feed, carriage return.</summary>
internal static class Blanks
{
    private static readonly char[] All = [' ', '\t', '\n', '\f', '\r'];

    /// <summary>True for one of the five.</summary>
    public static bool IsBlank(char c) => c is ' ' or '\t' or '\n' or '\f' or '\r';

    /// <summary>The words between blanks.</summary>
    public static string[] Split(string text) => text.Split(All, StringSplitOptions.RemoveEmptyEntries);
}
