using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Shots;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Numbers;

/// <summary>Lists the numbers that a lesson says without a check, with what each would have to equal where that is plain.</summary>
internal sealed class UncheckedNumbers
{
    /// <summary>How many are listed: a file that is no lesson at all would otherwise take minutes.</summary>
    public const int Most = 1000;

    // Half an hour without drawing breath. Words of a sheet are sought in it, and that must not take longer than the search may.
    private const int LongestPassage = 50_000;

    private readonly NumberFinder _finder;
    private readonly TargetProposal _proposal;

    private UncheckedNumbers(Sheet sheet, ClaimCheck check) =>
        (_finder, _proposal) = (new NumberFinder(new GameWords(sheet)), new TargetProposal(sheet.Facts, check));

    /// <summary>The first <see cref="Most"/> of them, in the order of the file.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="shots">Its shots: a number speaks of the last one before it.</param>
    /// <param name="check">Counts the positions of the shots.</param>
    public static ImmutableArray<UncheckedNumber> Of(Sheet sheet, Lesson lesson, ImmutableArray<CheckedShot> shots, ClaimCheck check)
    {
        var numbers = new UncheckedNumbers(sheet, check);
        var found = ImmutableArray.CreateBuilder<UncheckedNumber>();
        var shotOf = shots.ToDictionary<CheckedShot, LessonBlock>(s => s.Shot, ReferenceEqualityComparer.Instance);
        CheckedShot? seen = null;
        foreach (LessonBlock block in lesson.Topics.SelectMany(t => t.Blocks))
        {
            seen = shotOf.GetValueOrDefault(block) ?? seen;
            found.AddRange(block.Passages.SelectMany(p => numbers.In(p, seen)).Take(Most - found.Count));
        }

        return found.ToImmutable();
    }

    private IEnumerable<UncheckedNumber> In(ImmutableArray<LessonRun> passage, CheckedShot? seen)
    {
        var text = new SpokenText(passage);
        return from number in _finder.In(text.Words[..Math.Min(text.Words.Length, LongestPassage)])
               let at = text.PlaceOf(number.Start, number.Said.Length)
               where at is not null
               select new UncheckedNumber(at.Value, number.Said, _proposal.For(text.Words, number.Start, number.Said, seen));
    }
}
