using System.Text;
using Rostrum.Text;

namespace Rostrum.Lessons.Film;

/// <summary>Makes words fit for every file of the film: one line that each of them can hold.</summary>
internal static class OneLine
{
    /// <summary>The words with every run of blanks, line ends and control characters as one blank, none at the ends.</summary>
    /// <remarks>What XML cannot hold (halves of characters, U+FFFE, U+FFFF) becomes U+FFFD. Signs that no one sees but that letters need stay:
    /// marks of direction, the joiners of emoji.</remarks>
    public static string Of(string words)
    {
        var line = new StringBuilder(words.Length);
        foreach (Rune rune in words.EnumerateRunes())
        {
            line.Append(rune switch
            {
                _ when Rune.IsControl(rune) => " ",
                { Value: 0xFFFE or 0xFFFF } => "\uFFFD",
                _ => rune.ToString(),
            });
        }

        return Prose.Fold(line.ToString());
    }
}
