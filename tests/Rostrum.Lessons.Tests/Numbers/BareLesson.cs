using System.Text;
using System.Text.RegularExpressions;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Numbers;

/// <summary>A lesson whose checks were taken out, so that only the spoken words are left.</summary>
/// <param name="Text">The lesson.</param>
/// <param name="Numbers">Where its checked numbers stand now, with what they had to equal.</param>
internal sealed record BareLesson(SourceText Text, IReadOnlyDictionary<int, string> Numbers)
{
    /// <summary>Takes the checks out of a lesson; shots stay.</summary>
    public static BareLesson Of(string lesson)
    {
        var text = new StringBuilder();
        var numbers = new Dictionary<int, string>();
        int done = 0;
        foreach (Match claim in Regex.Matches(lesson, @"(?<!!)\[(?<said>[^\]]*)\]\(<?(?<target>[^)>]*)>?\)"))
        {
            text.Append(lesson, done, claim.Index - done);
            numbers[text.Length] = claim.Groups["target"].Value;
            text.Append(claim.Groups["said"].Value);
            done = claim.Index + claim.Length;
        }

        text.Append(lesson, done, lesson.Length - done);
        var others = numbers.Where(n => !(n.Value.StartsWith("tally:", StringComparison.Ordinal) || n.Value.StartsWith("value:", StringComparison.Ordinal) || n.Value.StartsWith("fact:", StringComparison.Ordinal))).Select(n => n.Key).ToHashSet();
        return new BareLesson(new SourceText("lesson.md", text.ToString()), numbers.Where(n => !others.Contains(n.Key)).ToDictionary());
    }
}
