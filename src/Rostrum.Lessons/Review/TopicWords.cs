using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Review;

/// <summary>The words of a topic: how often each stem stands in it.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Counts">By stem, words of one meaning taken together; numbers are left out, for every topic has them.</param>
internal sealed record TopicWords(string Title, ImmutableSortedDictionary<string, double> Counts)
{
    // A heading tells more of a topic than a word of it; a caption is seen and seldom said.
    private const double OfHeading = 3;
    private const double OfCaption = 0.5;

    private static readonly ImmutableArray<(string Title, string[] Sections, string[] Course)> Parts =
    [
        ("What is on the table", ["Components", "Places", "Marks"], []),
        ("Set-up", [], ["set-up", "deal", "hand out"]),
        ("Your turn", ["Actions"], ["turn", "course", "next to play"]),
        ("What is allowed", ["Laws", "Powers"], []),
        ("The end of the game", ["End of the game"], ["closing"]),
        ("Scoring", ["Scoring", "Tables"], []),
    ];

    /// <summary>The topics of a lesson, in its order.</summary>
    public static ImmutableArray<TopicWords> Of(Lesson lesson) => [.. lesson.Topics.Select(t => Of(t.Title, [(t.Title, OfHeading), .. t.Blocks.SelectMany(Said)]))];

    /// <summary>The parts of the rules that a sheet states, then its variants.</summary>
    public static ImmutableArray<TopicWords> Of(Sheet sheet)
    {
        ImmutableArray<ReadClause> clauses = SheetReadBack.Of(sheet);
        IEnumerable<TopicWords> parts = Parts.Select(p => Of(p.Title, [(p.Title, OfHeading), .. clauses.Where(c => IsOf(p, c)).Select(c => ($"{c.Name} {c.Says}", 1.0))]));
        IEnumerable<TopicWords> variants = sheet.Variants.Select(v => Of(v.Name, [(v.Name, OfHeading), (v.Says ?? "", OfHeading)]));
        return [.. parts.Concat(variants).Where(t => !t.Counts.IsEmpty)];
    }

    /// <summary>The stem of a word as it was heard; null for one that tells nothing.</summary>
    public static string? StemOf(string word) => WordStems.Of(word) is [{ } stem, ..] && !char.IsDigit(stem[0]) ? TableTalk.Of(stem) : null;

    private static bool IsOf((string Title, string[] Sections, string[] Course) part, ReadClause clause) =>
        part.Sections.Contains(clause.Section) || (clause.Section == "Course" && part.Course.Contains(clause.Name));

    private static IEnumerable<(string Words, double Weight)> Said(LessonBlock block) => block switch
    {
        LessonBlock.Shot shot => [(shot.Caption, OfCaption)],
        LessonBlock.Subheading heading => [(heading.Words, OfHeading)],
        _ => block.Passages.Select(p => (string.Concat(p.Select(r => r.Words)), 1.0)),
    };

    private static TopicWords Of(string title, IEnumerable<(string Words, double Weight)> said) => new(
        title,
        said.SelectMany(s => WordStems.Of(s.Words).Where(w => !char.IsDigit(w[0])).Select(w => (Stem: TableTalk.Of(w), s.Weight)))
            .GroupBy(w => w.Stem, StringComparer.Ordinal)
            .ToImmutableSortedDictionary(g => g.Key, g => g.Sum(w => w.Weight), StringComparer.Ordinal));
}
