using System.Text.RegularExpressions;
using Rostrum.Text;

namespace Rostrum.Lessons.Scripts;

/// <summary>Targets that hold a blank and stand outside of <c>&lt;</c> and <c>&gt;</c>: <c>[two](fact:sticks to start)</c>.</summary>
/// <remarks>CommonMark takes them for plain words, and the presenter would believe them checked. While the file is read, their blanks are
/// another character, one for one, so that they are links that can be told and every place stays what it is.</remarks>
internal static partial class BlankTargets
{
    private const char Blank = '\uE000';

    private static readonly string[] Kinds = ["tally", "rule", "value", "fact", "position", "unchecked"];

    /// <summary>The text with these targets made whole, those included whose first word is misspelt; of the same length.</summary>
    public static string Joined(string content) =>
        Target().Replace(content, m => NearSpelling.Find(m.Groups["kind"].Value, Kinds) is null ? m.Value : m.Value.Replace(' ', Blank).Replace('\t', Blank));

    /// <summary>The words with their blanks again.</summary>
    public static string Restored(string words) => words.Replace(Blank, ' ');

    /// <summary>True for a target whose blanks were replaced.</summary>
    public static bool IsOne(string target) => target.Contains(Blank, StringComparison.Ordinal);

    [GeneratedRegex(@"(?<=\]\()(?<kind>\p{L}{1,12}):(?>[^()<>\n]*)(?=\))", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Target();
}
