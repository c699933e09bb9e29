using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Published;

/// <summary>What became of something that a video says.</summary>
public enum ChangeKind
{
    /// <summary>It is as it was, perhaps in other words.</summary>
    None,

    /// <summary>A number is another.</summary>
    Value,

    /// <summary>The rule is another.</summary>
    Rule,

    /// <summary>There is no such rule any more.</summary>
    Gone,

    /// <summary>It was open, and is decided.</summary>
    Decided,

    /// <summary>It was certain, and is open.</summary>
    Opened,

    /// <summary>The sheet says the same and writes it otherwise: worth a look, and nothing that is wrong.</summary>
    WrittenOtherwise,

    /// <summary>The same stands on another page or in another source.</summary>
    Moved,
}

/// <summary>Tells whether a rule means what it meant.</summary>
/// <remarks>Where its author writes the meaning out, that counts: other words for the same meaning are no change. Where only a sentence says it, the
/// words that carry meaning and the numbers of the sentence count. The number one is left out of sentences: people say it in too many ways.</remarks>
internal static partial class RuleChange
{
    /// <summary>With this the status of a rule begins that nobody decided.</summary>
    public const string Open = "open: ";

    private const string Idiom = "idiom = ";
    private const string Rows = "rows = ";
    private const string Decided = "decided: ";

    /// <summary>What became of a rule.</summary>
    /// <param name="then">As the video says it.</param>
    /// <param name="now">As it is now; null where there is none.</param>
    public static ChangeKind Of(PublishedRule then, RuleState? now)
    {
        if (now is null)
        {
            return ChangeKind.Gone;
        }

        bool wasOpen = then.Status.StartsWith(Open, StringComparison.Ordinal);
        bool isOpen = now.Status.StartsWith(Open, StringComparison.Ordinal);
        ChangeKind kind = (wasOpen, isOpen) switch
        {
            (true, false) => ChangeKind.Decided,
            (false, true) => ChangeKind.Opened,
            _ when FollowedIn(then.Status) is { } before && FollowedIn(now.Status) is { } after && before != after => ChangeKind.Decided,
            _ => ByMeaning(then, now),
        };
        return kind == ChangeKind.None && then.Cite != Sheets.Model.Citation.Tell(now.Cite) ? ChangeKind.Moved : kind;
    }

    /// <summary>The numbers of a text, sorted; one is left out.</summary>
    public static ImmutableArray<long> NumbersIn(string words) =>
        [.. Number().Matches(words).Where(m => m.Value is not ("no" or "No")).Select(m => SpokenNumber.Read(m.Value)).OfType<long>().Where(n => n is not (0 or 1)).Order()];

    /// <summary>What is followed by a status such as <c>decided: left and right (An example on page 11 shows it)</c>; null where nothing is.</summary>
    public static string? FollowedIn(string status) => status.StartsWith(Decided, StringComparison.Ordinal) ? status[Decided.Length..].Split(" (")[0] : null;

    private static ChangeKind ByMeaning(PublishedRule then, RuleState now)
    {
        (ImmutableArray<long> before, ImmutableArray<long> after) = (NumbersIn(then.Says), NumbersIn(now.Says));
        if (then.Means.Length > 0 && then.Means == now.Means)
        {
            // The sentence of its author may be mended alone; one number more or fewer is a way of speaking.
            return before.Except(after).Any() && after.Except(before).Any() ? ChangeKind.Value : ChangeKind.None;
        }

        bool isSaidAlike = Stems(then.Says).SequenceEqual(Stems(now.Says));
        if (then.Means.Length == 0 || now.Means.Length == 0)
        {
            return isSaidAlike ? ChangeKind.None : before.SequenceEqual(after) ? ChangeKind.Rule : ChangeKind.Value;
        }

        if (!before.SequenceEqual(after))
        {
            return ChangeKind.Value;
        }

        return isSaidAlike ? Written(then, now, before) : DigitsIn(then.Means).SequenceEqual(DigitsIn(now.Means)) ? ChangeKind.Rule : ChangeKind.Value;
    }

    // A formula can be written in many ways, so that the numbers in it count only where the sentence has none; idioms and tables say what they say.
    private static ChangeKind Written(PublishedRule then, RuleState now, ImmutableArray<long> said)
    {
        bool isPlain = IsPlain(then.Means) && IsPlain(now.Means);
        return !DigitsIn(then.Means).SequenceEqual(DigitsIn(now.Means)) && (isPlain || said.IsEmpty) ? ChangeKind.Value : ChangeKind.WrittenOtherwise;
    }

    private static bool IsPlain(string means) => means.Contains(Idiom, StringComparison.Ordinal) || means.Contains(Rows, StringComparison.Ordinal);

    private static IEnumerable<string> DigitsIn(string means) => Digits().Matches(means).Select(m => m.Value);

    private static IEnumerable<string> Stems(string says) => WordStems.Of(says).Where(s => s != "1").Distinct().Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\b(?:minus )?(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)-\w+|\p{L}+|\d+)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Number();

    [GeneratedRegex(@"(?:minus |-)?\d+", RegexOptions.CultureInvariant)]
    private static partial Regex Digits();
}
