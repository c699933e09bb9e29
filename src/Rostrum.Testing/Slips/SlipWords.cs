using System.Text.RegularExpressions;

namespace Rostrum.Testing.Slips;

/// <summary>The words of a text, as slips change them.</summary>
internal static partial class SlipWords
{
    /// <summary>Each word with its place: letters, and what may stand inside a name.</summary>
    [GeneratedRegex(@"\p{L}[\p{L}\p{Nd}']*(?:-\p{L}+)*")]
    public static partial Regex Word();

    /// <summary>Each number by itself.</summary>
    [GeneratedRegex(@"(?<![\p{L}\p{Nd}])\p{Nd}+(?![\p{L}\p{Nd}])")]
    public static partial Regex Number();

    /// <summary>The words alone.</summary>
    public static IEnumerable<string> In(string text) => Word().Matches(text).Select(m => m.Value);
}
