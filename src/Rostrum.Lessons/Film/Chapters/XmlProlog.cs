namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Looks at what stands before the first element of an XML file.</summary>
internal static class XmlProlog
{
    private const string Declared = "<!DOCTYPE";

    private static readonly (string Open, string Close)[] Skipped = [("<!--", "-->"), ("<?", "?>")];

    /// <summary>How many blanks, line ends and byte order signs a file begins with: more than XML allows, and harmless.</summary>
    public static int Blanks(ReadOnlySpan<char> content) => content.Length - content.TrimStart("\uFEFF \t\r\n").Length;

    /// <summary>The 0-based offset of a document type; null where there is none. One in a comment is none.</summary>
    public static int? DocumentType(string content)
    {
        for (int at = Blanks(content); at < content.Length; at += Blanks(content.AsSpan(at)))
        {
            ReadOnlySpan<char> rest = content.AsSpan(at);
            if (rest.StartsWith(Declared, StringComparison.Ordinal))
            {
                return at;
            }

            if (Behind(rest) is not { } length)
            {
                return null;
            }

            at += length;
        }

        return null;
    }

    private static int? Behind(ReadOnlySpan<char> rest)
    {
        foreach ((string open, string close) in Skipped)
        {
            if (rest.StartsWith(open, StringComparison.Ordinal) && rest[open.Length..].IndexOf(close, StringComparison.Ordinal) is var end and >= 0)
            {
                return open.Length + end + close.Length;
            }
        }

        return null;
    }
}
