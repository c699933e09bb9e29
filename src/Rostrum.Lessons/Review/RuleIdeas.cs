using System.Collections.Frozen;
using System.Globalization;

namespace Rostrum.Lessons.Review;

/// <summary>The ideas of a word as far as they tell a rule: its stem, the number that it says, and the small words on which rules turn.</summary>
internal static class RuleIdeas
{
    private const double OfSmall = 0.35;
    private const double OfNumber = 0.7;

    private static readonly FrozenDictionary<string, string> Turning = new (string Idea, string Words)[]
    {
        ("~not", "no not never nothing none nobody neither can't cannot don't doesn't won't mustn't isn't aren't without nowhere nope"),
        ("~only", "only just exactly"),
        ("~must", "must have need needs forced has gotta"),
        ("~all", "all every each everybody everyone both any"),
        ("~same", "same equal alike identical matching matches"),
        ("~other", "other others another else"),
        ("~more", "more extra further additional"),
        ("~less", "fewer less least fewest lower lowest smaller"),
    }.SelectMany(row => row.Words.Split(' ').Select(w => (Word: w, row.Idea))).ToFrozenDictionary(p => p.Word, p => p.Idea, StringComparer.Ordinal);

    /// <summary>The ideas of a word; none for one that says nothing.</summary>
    public static IEnumerable<string> Of(SpokenToken token)
    {
        if (token.Size is { } number)
        {
            yield return "#" + number.ToString(CultureInfo.InvariantCulture);
            yield break;
        }

        if (Turning.TryGetValue(token.Text, out string? turning))
        {
            yield return turning;
        }

        if (token.Stem.Length > 0)
        {
            yield return token.Stem;
        }
    }

    /// <summary>True for an idea that is a number.</summary>
    public static bool IsNumber(string idea) => idea[0] == '#';

    /// <summary>How much an idea of this sort tells, 0 to 1.</summary>
    public static double Weight(string idea) => idea[0] switch { '~' => OfSmall, '#' => OfNumber, _ => 1 };
}
