using System.Buffers;
using System.Text;
using Rostrum.Text;

namespace Rostrum.Lessons.Scripts;

/// <summary>Targets that hold a blank and stand outside of <c>&lt;</c> and <c>&gt;</c>: <c>[two](fact:sticks to start)</c>.</summary>
/// <remarks>CommonMark takes them for plain words, and the presenter would believe them checked. While the file is read, their blanks are
/// another character, one for one, so that they are links that can be told and every place stays what it is.</remarks>
internal static class BlankTargets
{
    private const char Blank = '\uE000';

    private const string Opening = "](";

    private const int LongestKind = 12;

    private static readonly SearchValues<char> Ends = SearchValues.Create("()<>\n");

    private static readonly string[] Kinds = ["tally", "rule", "value", "fact", "position", "unchecked", .. LessonMark.SpokenWords];

    /// <summary>The text with these targets made whole, those included whose first word is misspelt; of the same length.</summary>
    public static string Joined(string content)
    {
        var joined = new StringBuilder(content);
        for (int at = content.IndexOf(Opening, StringComparison.Ordinal); at >= 0; at = content.IndexOf(Opening, at + 1, StringComparison.Ordinal))
        {
            int start = at + Opening.Length;
            int colon = start;
            while (colon < content.Length && colon - start < LongestKind && (char.IsLetter(content[colon]) || (content[colon] == ' ' && colon > start)))
            {
                colon++;
            }

            int length = colon < content.Length && content[colon] == ':' ? content.AsSpan(colon).IndexOfAny(Ends) : -1;
            if (length > 0 && content[colon + length] == ')' && NearSpelling.Find(content[start..colon], Kinds) is not null)
            {
                joined.Replace(' ', Blank, start, colon - start + length).Replace('\t', Blank, colon, length);
            }
        }

        return joined.ToString();
    }

    /// <summary>The words with their blanks again.</summary>
    public static string Restored(string words) => words.Replace(Blank, ' ');

    /// <summary>True for a target whose blanks were replaced.</summary>
    public static bool IsOne(string target) => target.Contains(Blank, StringComparison.Ordinal);
}
