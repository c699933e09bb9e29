using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Reads the text of a SubRip cue: the four tags that players know and <c>{\an8}</c>; every other sign is meant as it stands.</summary>
internal static partial class SubRipText
{
    /// <summary>The parts of a text.</summary>
    public static ImmutableArray<CuePart> Read(string text)
    {
        var parts = new CuePartBuilder();
        int done = 0;
        foreach (Match mark in Marks().Matches(text))
        {
            AddWords(parts, text[done..mark.Index]);
            done = mark.Index + mark.Length;
            Take(parts, mark);
        }

        AddWords(parts, text[done..]);
        return parts.Finish();
    }

    private static void Take(CuePartBuilder parts, Match mark)
    {
        CueTag? tag = mark.Groups["name"].Value.ToLowerInvariant() switch
        {
            "i" => CueTag.Italic,
            "b" => CueTag.Bold,
            "u" => CueTag.Underline,
            "font" => CueTag.Font,
            _ => null,
        };
        if (tag is { } opened && mark.Groups["close"].Length == 0)
        {
            parts.Open(opened, [], mark.Groups["note"].Value.Trim());
        }
        else if (tag is not null && parts.Current == tag)
        {
            parts.Close();
        }
    }

    private static void AddWords(CuePartBuilder parts, string words)
    {
        if (words.Length > 0)
        {
            parts.Add(new CuePart.Words(words));
        }
    }

    // Curly brackets of the kind '{\an8}' or '{\i1}' come from another format and are seen by nobody.
    [GeneratedRegex(@"<(?<close>/)?(?<name>i|b|u|font)(?<note>(?<=font)\s[^<>]*)?\s*>|\{\\[^{}\n]*\}", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 20_000)]
    private static partial Regex Marks();
}
