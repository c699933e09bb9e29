using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Text;

namespace Rostrum.Lessons.Shots;

/// <summary>A shot with the position that it shows.</summary>
/// <param name="Shot">As the lesson names it.</param>
/// <param name="PositionName">The name of the position; empty where the target says none.</param>
/// <param name="Clause">The scoring clause whose spaces are pointed out; null for none.</param>
/// <param name="Position">The position; null where it could not be read.</param>
public sealed record CheckedShot(LessonBlock.Shot Shot, string PositionName, string? Clause, Position? Position)
{
    /// <summary>Of the clause only what counts this space, such as the one run that it belongs to; null for all.</summary>
    public string? Space { get; init; }
}

/// <summary>Finds the positions of shots: <c>position:E1</c>, <c>position:E1 show bowls</c>, <c>position:E1 show bowls at A2</c>.</summary>
internal static class ShotCheck
{
    private const string Scheme = "position:";
    private const string Show = " show ";
    private const string At = " at ";

    public static CheckedShot Of(Game game, ClaimCheck check, LessonBlock.Shot shot, DiagnosticBag problems)
    {
        string target = Uri.UnescapeDataString(shot.Target);
        if (!target.StartsWith(Scheme, StringComparison.Ordinal))
        {
            problems.Add(LessonProblems.ShotTarget(shot.At, shot.Target));
            return new CheckedShot(shot, "", null, null);
        }

        string rest = target[Scheme.Length..].Trim();
        int at = rest.IndexOf(Show, StringComparison.Ordinal);
        string name = at < 0 ? rest : rest[..at].Trim();
        string? clause = at < 0 ? null : rest[(at + Show.Length)..].Trim();
        if (check.Position(name) is not { } opened)
        {
            problems.Add(LessonProblems.Unknown(shot.At, "sound position", name, game.PositionNames));
            return new CheckedShot(shot, name, clause, null);
        }

        int where = clause?.LastIndexOf(At, StringComparison.Ordinal) ?? -1;
        string? space = where < 0 ? null : clause![(where + At.Length)..].Trim();
        clause = where < 0 ? clause : clause![..where].Trim();
        string[] clauses = [.. opened.Position!.Sheet.Score.Select(s => s.Name)];
        if (clause is not null && !clauses.Contains(clause))
        {
            problems.Add(LessonProblems.Unknown(shot.At, "scoring clause", clause, clauses));
            clause = null;
        }

        return new CheckedShot(shot, name, clause, opened.Position) { Space = clause is null ? null : Space(shot, opened.Position, clause, space, problems) };
    }

    private static string? Space(LessonBlock.Shot shot, Position position, string clause, string? space, DiagnosticBag problems)
    {
        string[] counted = [.. ShotPicture.Counted(position, clause).SelectMany(part => part.Spaces).Distinct()];
        if (space is null || counted.Contains(space))
        {
            return space;
        }

        problems.Add(LessonProblems.Unknown(shot.At, $"space that {clause} count here,", space, counted));
        return null;
    }
}
