using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>Words for the lines that put a published video right.</summary>
internal static class CorrectionWords
{
    /// <summary>What held then of a rule, as a sentence: of a word that only its formula tells, the reading that was followed.</summary>
    /// <param name="then">As the video says it.</param>
    /// <param name="now">As it is; null where there is none any more.</param>
    public static string Then(PublishedRule then, RuleState? now) =>
        now is { IsFormula: true } && RuleChange.FollowedIn(then.Status) is { } followed ? $"'{Prose.Sentence(now.CalledAs)}' was decided: {followed}." : then.Says;

    /// <summary>What holds now of a rule, as a sentence.</summary>
    /// <param name="then">As the video says it.</param>
    /// <param name="now">As it is; null where there is none any more.</param>
    /// <param name="kind">What became of it.</param>
    public static string Now(PublishedRule then, RuleState? now, ChangeKind kind) => (kind, now) switch
    {
        (_, null) => $"No longer so: {then.Says}",
        (ChangeKind.Decided, { Choice: { Followed: { } followed } choice }) => Decided(now, choice, followed),
        (ChangeKind.Decided, _) => now.Says,
        (ChangeKind.Opened, { Choice: { } choice }) => $"Not settled any more, '{Prose.Or(choice.Names)}': {now.Says}",
        _ when now.IsFormula => $"What '{now.CalledAs}' means is changed: {now.Says}",
        _ when IsFormula(then, now, kind) => $"{Prose.Ended(now.Says)} That is now: {now.Reads}",
        _ => now.Says,
    };

    /// <summary>True where the sentence of the rule alone says nothing new, so that its meaning is told beside it.</summary>
    public static bool IsFormula(PublishedRule then, RuleState? now, ChangeKind kind) =>
        kind is ChangeKind.Value or ChangeKind.Rule && now is { Reads: not null } && now.Says == then.Says;

    /// <summary>A correction with what it takes the place of, and where it stands.</summary>
    /// <param name="now">What holds now, as a sentence.</param>
    /// <param name="insteadOf">What was said; empty where the sentence says enough.</param>
    /// <param name="cite">Where the rules say so, in words; empty where nobody knows.</param>
    public static string Line(string now, string insteadOf, string cite)
    {
        string[] parts = [.. new[] { insteadOf.Length == 0 ? "" : $"instead of {insteadOf}", cite }.Where(p => p.Length > 0)];
        string sentence = Film.OneLine.Of(now);
        (string words, string stop) = sentence.Length > 0 && sentence[^1] is '.' or '!' or '?' ? (sentence[..^1], sentence[^1..]) : (sentence, ".");
        return parts.Length == 0 ? words + stop : stop == "?" ? $"{sentence} ({string.Join("; ", parts)})" : $"{words} ({string.Join("; ", parts)}){stop}";
    }

    /// <summary>The one number that another took the place of; empty where there is none or several.</summary>
    public static string InsteadOf(string then, string now)
    {
        ImmutableArray<long> before = RuleChange.NumbersIn(then);
        ImmutableArray<long> after = RuleChange.NumbersIn(now);
        long[] gone = [.. before.Except(after)];
        return gone is [var only] && after.Except(before).Count() == 1 ? InWords(only) : "";
    }

    /// <summary>A number as it is said.</summary>
    public static string InWords(long number) => number < 0 ? $"minus {-number}" : $"{number}";

    private static string Decided(RuleState now, Choice choice, int followed) =>
        choice.Says[followed] is { Length: > 0 } says ? Prose.Sentence(Prose.Ended(says))
        : now.Reads is null && now.IsFormula ? $"'{Prose.Sentence(now.CalledAs)}' is decided: {choice.Names[followed]}."
        : $"Decided is '{choice.Names[followed]}': {now.Says}";
}
