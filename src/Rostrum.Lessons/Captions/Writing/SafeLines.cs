namespace Rostrum.Lessons.Captions.Writing;

/// <summary>Makes several lines safe to stand in a block: no blank line, which would end it.</summary>
internal static class SafeLines
{
    /// <summary>The lines with <c>\n</c> between them; empty ones are left out. What was read stays as it is.</summary>
    public static string Of(string text) =>
        string.Join('\n', text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Replace('\0', '\uFFFD').Split('\n', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The same, and no arrow, with which a new cue would begin.</summary>
    public static string WithoutArrow(string text) => Of(text).Replace("-->", "--&gt;", StringComparison.Ordinal);
}
