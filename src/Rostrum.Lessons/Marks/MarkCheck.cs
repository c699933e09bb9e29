using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Findings;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Lessons.Terms;
using Rostrum.Text;

namespace Rostrum.Lessons.Marks;

/// <summary>Holds what a script announces, promises and simplifies against what comes behind.</summary>
internal sealed partial class MarkCheck(ScriptSpeech speech, MarkedNames marks, MarkNames names, ImmutableArray<ClauseCover> covers, ImmutableArray<TermUse> terms)
{
    private readonly Dictionary<LessonClause, ClauseCover> _covers = covers.ToDictionary(c => c.Clause, ReferenceEqualityComparer.Instance as IEqualityComparer<LessonClause>);

    /// <summary>What is wrong with the marks themselves.</summary>
    public IEnumerable<Diagnostic> Problems() => marks.Uses.SelectMany(ProblemsOf);

    /// <summary>What is announced or promised and does not come.</summary>
    public IEnumerable<ScriptFinding> Findings() => marks.Uses.SelectMany(u => u.Kind switch
    {
        MarkKind.Count => Count(u),
        MarkKind.Later => u.Names.Where(n => IsKnown(u, n) && !IsKept(u, n)).Select(n => Of(ScriptProblems.NotKept(u.At, Said(u), n), n)),
        MarkKind.Simplified => u.Names.Where(n => IsKnown(u, n) && !IsPutRight(u, n)).Select(n => Of(ScriptProblems.NeverPutRight(u.At, Said(u), n), n)),
        _ => [],
    });

    private IEnumerable<Diagnostic> ProblemsOf(MarkUse use)
    {
        foreach ((string name, string? near) in names.Unknown(use))
        {
            yield return ScriptProblems.UnknownName(use.TargetAt, LessonMark.WordOf(use.Kind), name, near);
        }

        if (use.Kind == MarkKind.Count)
        {
            if (LessonMark.Announced(use.Names) is not { } announced)
            {
                yield return ScriptProblems.NoCount(use.TargetAt, string.Join(' ', use.Names));
            }
            else if (use.Names.Length > 1 && use.Names.Length - 1 != announced)
            {
                yield return ScriptProblems.NamesAreNotSoMany(use.TargetAt, announced, use.Names.Length - 1);
            }
        }
    }

    private static string Said(MarkUse use) => use.Words.Length > 0 ? use.Words : string.Join(", ", use.Names);

    private static ScriptFinding Of(Diagnostic problem, string concerns) => new(problem, concerns);

    private bool IsKnown(MarkUse use, string name) => names.Unknown(use).All(u => u.Name != name);

    private IEnumerable<ScriptFinding> Count(MarkUse use)
    {
        if (LessonMark.Announced(use.Names) is not { } announced)
        {
            return [];
        }

        if (NumberIn(use.Words) is { } number && number != announced)
        {
            return [Of(ScriptProblems.AnnouncesOther(use.At, use.Words, number, announced), use.Words)];
        }

        string[] missing = [.. use.Names.Skip(1).Where(n => !IsSaidBehind(use, n))];
        int delivered = use.Names.Length > 1 ? use.Names.Length - 1 - missing.Length : Listed(use);
        return delivered == announced || (missing.Length == 0 && use.Names.Length > 1) ? [] : [Of(ScriptProblems.NotDelivered(use.At, Said(use), announced, delivered, missing), Said(use))];
    }

    private static long? NumberIn(string words)
    {
        long[] numbers = [.. Prose.WordsOf(words).Select(w => SpokenNumber.Read(w.Trim('.', ',', ':', ';', '!', '?'))).OfType<long>().Where(n => n > 0)];
        return numbers.Length == 1 ? numbers[0] : null;
    }

    // The items of the next list of the topic; without a list, the headings in it that follow.
    private int Listed(MarkUse use)
    {
        int first = speech.Lesson.Topics.Take(use.Topic).Sum(t => t.Blocks.Length);
        LessonBlock[] behind = [.. speech.Lesson.Topics[use.Topic].Blocks.Skip(use.Block - first + 1)];
        return behind.OfType<LessonBlock.List>().FirstOrDefault()?.Items.Length ?? behind.OfType<LessonBlock.Subheading>().Count();
    }

    private bool IsSaidBehind(MarkUse use, string name)
    {
        string[] stems = [.. WordStems.Of(name)];
        return names.Clauses(name).Any(c => IsCoveredBehind(use, c)) || names.Topics(name).Any(t => t > use.Topic)
            || (stems.Length > 0 && speech.With(stems[0]).Select(i => speech.Sentences[i]).Any(s => !s.IsCaption && IsBehind(use, s) && stems.All(w => s.Stems.Any(t => t.Stem == w))));
    }

    private static bool IsBehind(MarkUse use, SpokenSentence sentence) => sentence.Block > use.Block || (sentence.Block == use.Block && sentence.At.Start >= use.At.End);

    private bool IsCoveredBehind(MarkUse use, LessonClause clause) =>
        _covers.GetValueOrDefault(clause) is { Status: CoverStatus.Said or CoverStatus.InPart } cover
        && (cover.Topics.Any(t => t > use.Topic) || (cover.Sentence >= 0 && IsBehind(use, speech.Sentences[cover.Sentence])));

    private bool IsKept(MarkUse use, string name) =>
        names.Topics(name).Any(t => t > use.Topic) || names.Clauses(name).Any(c => IsCoveredBehind(use, c))
        || (names.Term(name) is { } term && terms.Any(t => t.Term == term && speech.Sentences[t.Sentence].Block > use.Block));

    private bool IsPutRight(MarkUse use, string name) =>
        marks.Uses.Any(u => u.Kind == MarkKind.PutRight && u.Block >= use.Block && u.Names.Contains(name, StringComparer.OrdinalIgnoreCase))
        || speech.Sentences.Any(s => s.Block == use.Block && Disclaims().IsMatch(s.Words));

    [GeneratedRegex(@"\b(?:for\sthe\scamera|simplif|simpler\sthan|for\snow|in\sa\sreal\sgame|in\syour\sgame|at\syour\s(?:own\s)?table|in\stru(?:th|e)|strictly|properly|not\squite|do\snot\sdo\sthis|a\slittle\s(?:earl|simpl)|out\sof\sorder)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Disclaims();
}
