namespace Rostrum.Lessons.Page;

/// <summary>Which addresses a page may lead to.</summary>
internal static class LinkFilter
{
    private static readonly string[] Schemes = ["http", "https", "mailto"];

    /// <summary>True for http, https, mailto, a fragment or a relative address without anything a browser would read otherwise.</summary>
    /// <remarks>
    /// Browsers skip control characters and take a backslash for a slash, so any of them refuses the whole address;
    /// so does <c>//host</c>, which looks relative and is not.
    /// </remarks>
    public static bool Allows(string target)
    {
        bool isOdd = target.Length == 0
            || target.Any(letter => char.IsControl(letter) || char.IsWhiteSpace(letter) || letter == '\\')
            || target.StartsWith("//", StringComparison.Ordinal);
        return !isOdd && (SchemeOf(target) is not { } scheme || Schemes.Contains(scheme, StringComparer.OrdinalIgnoreCase));
    }

    /// <summary>What stands before the first colon, unless a slash, question mark or hash comes earlier.</summary>
    private static string? SchemeOf(string target)
    {
        int end = target.AsSpan().IndexOfAny(":/?#");
        return end >= 0 && target[end] == ':' ? target[..end] : null;
    }
}
