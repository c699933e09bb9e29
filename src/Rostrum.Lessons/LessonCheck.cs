using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Findings;
using Rostrum.Lessons.Numbers;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Shots;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Lessons;

/// <summary>A lesson with everything that was held against the sheet.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Claims">Every statement with its answer, in the order of the file.</param>
/// <param name="Shots">Every shot with its position, in the order of the file.</param>
/// <param name="Unchecked">The numbers that are said without a check, in the order of the file.</param>
/// <param name="Problems">What is wrong, by place.</param>
public sealed record LessonReport(
    Lesson Lesson, ImmutableArray<CheckedClaim> Claims, ImmutableArray<CheckedShot> Shots, ImmutableArray<UncheckedNumber> Unchecked, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>The script as a whole: what it leaves unsaid, its order, its words; empty where the sheet cannot be read.</summary>
    public ScriptReport Script { get; init; } = new();
}

/// <summary>Checks a lesson before it is filmed: its numbers, its rulings, its shots.</summary>
public static class LessonCheck
{
    /// <summary>The name of the lesson in a game's folder.</summary>
    public const string FileName = "lesson.md";

    /// <summary>Reads and checks the lesson of a game; null where it has none.</summary>
    /// <param name="game">The game.</param>
    public static LessonReport? Of(Game game)
    {
        ArgumentNullException.ThrowIfNull(game);
        return game.Folder.Read(FileName).Text is { } text ? Of(game, text) : null;
    }

    /// <summary>Checks the text of a lesson.</summary>
    public static LessonReport Of(Game game, SourceText text)
    {
        var problems = new DiagnosticBag();
        Lesson lesson = LessonReader.Read(text, problems);
        var check = new ClaimCheck(game);
        ImmutableArray<CheckedClaim> claims = [.. lesson.Claims.Select(check.Of)];
        ImmutableArray<CheckedShot> shots = [.. lesson.Shots.Select(s => ShotCheck.Of(check, s))];
        problems.AddRange(lesson.Marks.Where(m => m.HoldsBlank).Select(m => LessonProblems.BlankInTarget(m.TargetAt, BlankTargets.Restored(m.TargetAt.Text))));
        problems.AddRange(claims.Select(c => c.Problem).Concat(shots.Select(s => s.Problem)).OfType<Diagnostic>());
        ImmutableArray<UncheckedNumber> numbers = game.Sheet().Sheet is { } sheet ? UncheckedNumbers.Of(sheet, lesson, shots, check) : [];
        if (!numbers.IsEmpty)
        {
            problems.Add(LessonProblems.UncheckedNumbers(numbers[0].At, [.. numbers.Select(n => $"'{Prose.Clip(n.Said)}' in line {text.LineIndexOf(n.At.Start) + 1}")], numbers[0].Said, numbers[0].Write));
        }

        ScriptReport script = game.Sheet() is { IsSound: true, Sheet: { } sound } ? ScriptCheck.Of(game, sound, lesson, claims, problems) : new ScriptReport();
        return new LessonReport(lesson, claims, shots, numbers, problems.InOrder()) { Script = script };
    }
}
