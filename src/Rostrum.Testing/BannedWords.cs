using System.Collections.Frozen;

namespace Rostrum.Testing;

/// <summary>Words that no message to an author may use: the jargon of people who write programs, and words that blame.</summary>
/// <remarks>Each stands with what to say instead. Whole words are compared, large and small letters alike, a plural <c>s</c> or <c>es</c> aside;
/// words in single quotes are the author's own and are never looked at.</remarks>
public static class BannedWords
{
    /// <summary>The words in lower case, each with what to write instead.</summary>
    public static FrozenDictionary<string, string> Instead { get; } = new Dictionary<string, string>
    {
        // Reading.
        ["token"] = "word or sign",
        ["lexer"] = "the reading",
        ["parse"] = "read",
        ["parsed"] = "read",
        ["parser"] = "the reading",
        ["parsing"] = "reading",
        ["syntax"] = "how it is written",
        ["grammar"] = "how it is written",
        ["yaml"] = "the file",
        ["node"] = "the thing itself: name, list, text",
        ["scalar"] = "text",
        ["mapping"] = "names with a colon",
        ["sequence"] = "list",
        ["anchor"] = "the sign itself: '&'",
        ["alias"] = "the sign itself: '*'",
        ["directive"] = "the line itself",
        ["delimiter"] = "the sign itself",
        ["eof"] = "the end of the file",
        ["newline"] = "line end",
        ["whitespace"] = "blank",
        ["indent level"] = "indentation",
        ["escape sequence"] = "the sign itself: '\\n'",
        ["illegal character"] = "the character itself",
        ["ast"] = "leave it out",
        ["schema"] = "what can stand here",
        ["dialect"] = "leave it out",
        ["deserialize"] = "read",
        ["deserialization"] = "reading",

        // Types.
        ["null"] = "nothing",
        ["undefined"] = "not known",
        ["nan"] = "no number",
        ["boolean"] = "yes or no",
        ["bool"] = "yes or no",
        ["integer"] = "whole number",
        ["int"] = "whole number",
        ["float"] = "number",
        ["string"] = "text",
        ["enum"] = "one of these words",
        ["array"] = "list",
        ["tuple"] = "list",
        ["dictionary"] = "names with a colon",
        ["object"] = "thing",
        ["instance"] = "thing",
        ["type"] = "the sort by its name: number, piece, space",
        ["type mismatch"] = "what was wanted and what stands there",
        ["operand"] = "what stands beside the sign",
        ["operator"] = "the sign or word itself",
        ["expression"] = "formula",
        ["predicate"] = "what is true or not",
        ["argument"] = "what stands in the brackets",
        ["parameter"] = "the gap by its name",
        ["identifier"] = "name",
        ["variable"] = "name",
        ["function"] = "word",
        ["method"] = "leave it out",
        ["scope"] = "where the name counts",
        ["lambda"] = "leave it out",
        ["recursion"] = "it comes back to itself",
        ["recursive"] = "it comes back to itself",
        ["iteration"] = "time",
        ["index"] = "number in the list",

        // Machinery.
        ["exception"] = "what went wrong, in words",
        ["stack trace"] = "leave it out",
        ["overflow"] = "too large",
        ["assertion"] = "what should be so",
        ["runtime"] = "leave it out",
        ["fatal"] = "what cannot go on",
        ["unhandled"] = "what went wrong, in words",
        ["internal error"] = "a fault of Rostrum",
        ["abort"] = "stop",
        ["aborted"] = "stopped",
        ["deprecated"] = "the new way",
        ["regex"] = "leave it out",
        ["invalid"] = "what is wrong with it",
        ["unexpected"] = "what should stand there",
        ["malformed"] = "what is wrong with it",
        ["unrecognized"] = "not known",
        ["unsupported"] = "what can be written instead",

        // Blame and bluster.
        ["illegal"] = "not allowed by which rule, or what is wrong with it",
        ["you forgot"] = "what is missing",
        ["you must"] = "what to write",
        ["you should"] = "what to write",
        ["your mistake"] = "what is wrong",
        ["mistake"] = "what is wrong",
        ["bad"] = "what is wrong with it",
        ["wrongly"] = "what is wrong with it",
        ["stupid"] = "leave it out",
        ["nonsense"] = "what cannot be read",
        ["garbage"] = "what cannot be read",
        ["failed"] = "what did not happen, and why",
        ["failure"] = "what did not happen, and why",
        ["obviously"] = "leave it out",
        ["simply"] = "leave it out",
        ["please"] = "leave it out",
        ["sorry"] = "leave it out",
        ["oops"] = "leave it out",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The banned words of a message, each with what to write instead: <c>scalar (write: text)</c>; empty where it has none.</summary>
    /// <param name="message">A message, hint, note or title of a fix.</param>
    public static IEnumerable<string> In(string message)
    {
        ArgumentNullException.ThrowIfNull(message);
        string[] words = OwnWords.WithoutQuotes(message).ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i < words.Length; i++)
        {
            string pair = i + 1 < words.Length ? $"{words[i]} {words[i + 1]}" : words[i];
            if ((Banned(words[i]) ?? Banned(pair)) is { } found)
            {
                yield return $"{found} (write: {Instead[found]})";
            }
        }
    }

    private static string? Banned(string words) =>
        new[] { words, words.TrimEnd('s'), words.EndsWith("es", StringComparison.Ordinal) ? words[..^2] : words }.FirstOrDefault(Instead.ContainsKey);
}
