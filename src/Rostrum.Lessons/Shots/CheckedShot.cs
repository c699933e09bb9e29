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
public sealed record CheckedShot(LessonBlock.Shot Shot, string PositionName, string? Clause, Position? Position);

/// <summary>Finds the positions of shots: <c>position:E1</c>, <c>position:E1 show bowls</c>.</summary>
internal static class ShotCheck
{
    private const string Scheme = "position:";
    private const string Show = " show ";

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

        string[] clauses = [.. opened.Position!.Sheet.Score.Select(s => s.Name)];
        if (clause is not null && !clauses.Contains(clause))
        {
            problems.Add(LessonProblems.Unknown(shot.At, "scoring clause", clause, clauses));
            clause = null;
        }

        return new CheckedShot(shot, name, clause, opened.Position);
    }
}
