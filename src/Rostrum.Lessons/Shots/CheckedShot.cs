using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Positions;
using Rostrum.Text;

namespace Rostrum.Lessons.Shots;

/// <summary>A shot with the position that it shows.</summary>
/// <param name="Shot">As the lesson names it.</param>
/// <param name="PositionName">The name of the position; empty where the target says none.</param>
/// <param name="Clause">The scoring clause whose spaces are pointed out; null for none.</param>
/// <param name="Position">The position; null exactly where there is a problem: then there is nothing to draw.</param>
/// <param name="Problem">What to tell the presenter; null where the shot can be drawn.</param>
public sealed record CheckedShot(LessonBlock.Shot Shot, string PositionName, string? Clause, Position? Position, Diagnostic? Problem)
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

    public static CheckedShot Of(ClaimCheck check, LessonBlock.Shot shot)
    {
        string target = Uri.UnescapeDataString(BlankTargets.Restored(shot.Target));
        if (!target.StartsWith(Scheme, StringComparison.Ordinal))
        {
            return None(shot, "", LessonProblems.ShotTarget(shot.At, target, IsMisspelt(target)));
        }

        string rest = target[Scheme.Length..].Trim();
        int at = rest.IndexOf(Show, StringComparison.Ordinal);
        string name = at < 0 ? rest : rest[..at].Trim();
        string? clause = at < 0 ? null : rest[(at + Show.Length)..].Trim();
        if (BlankTargets.IsOne(shot.Target))
        {
            return None(shot, name, LessonProblems.BlankInTarget(shot.At, target));
        }

        return check.Position(name) is { } opened ? Found(shot, name, clause, opened.Position!) : None(shot, name, NoPosition(check, shot, name));
    }

    private static CheckedShot None(LessonBlock.Shot shot, string name, Diagnostic problem) => new(shot, name, null, null, problem);

    private static CheckedShot Found(LessonBlock.Shot shot, string name, string? shown, Position position)
    {
        int where = shown?.LastIndexOf(At, StringComparison.Ordinal) ?? -1;
        string? space = where < 0 ? null : shown![(where + At.Length)..].Trim();
        string? clause = where < 0 ? shown : shown![..where].Trim();
        string[] clauses = [.. position.Sheet.Score.Select(s => s.Name)];
        if (clause is not null && !clauses.Contains(clause))
        {
            return None(shot, name, LessonProblems.Unknown(shot.At, "scoring clause", clause, clauses));
        }

        string[] counted = space is null ? [] : [.. ShotPicture.Counted(position, clause!).SelectMany(part => part.Spaces).Distinct()];
        return space is null || counted.Contains(space)
            ? new CheckedShot(shot, name, clause, position, null) { Space = space }
            : None(shot, name, LessonProblems.Unknown(shot.At, $"space that {clause} count here,", space, counted));
    }

    // 'E1 shwo bowls' is no name: its first word is, and what stands behind it is told.
    private static Diagnostic NoPosition(ClaimCheck check, LessonBlock.Shot shot, string name)
    {
        int blank = name.IndexOf(' ', StringComparison.Ordinal);
        return blank > 0 && check.Position(name[..blank]) is not null
            ? LessonProblems.ShotOption(shot.At, name[..blank], name[(blank + 1)..].Trim())
            : check.NoPosition(shot.At, name);
    }

    // 'pictures/box.jpg' is a picture that no page shows; 'positon:E1' was meant for a shot.
    private static bool IsMisspelt(string target) => target.Split(':') is [var scheme, _, ..] && NearSpelling.Find(scheme, [Scheme[..^1]]) is not null;
}
