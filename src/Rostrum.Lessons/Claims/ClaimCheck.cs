using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Claims;

/// <summary>A statement of a lesson with what the sheet answers.</summary>
/// <param name="Claim">The statement.</param>
/// <param name="Status">How it came out.</param>
/// <param name="Answer">What the sheet answers; null where it could not be asked.</param>
/// <param name="Problem">What to tell the presenter; null where the statement is right.</param>
public sealed record CheckedClaim(LessonRun.Claim Claim, ClaimStatus Status, ClaimAnswer? Answer, Diagnostic? Problem);

/// <summary>Holds the statements of a lesson against the sheet.</summary>
/// <param name="game">The game.</param>
public sealed class ClaimCheck(Game game)
{
    private static readonly string[] Allowed = ["legal", "allowed", "may", "yes", "true", "met"];
    private static readonly string[] Forbidden = ["illegal", "not legal", "not allowed", "may not", "no", "forbidden", "false", "not met"];

    private readonly Dictionary<string, OpenedPosition?> _positions = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Position, int Seat), Tally> _tallies = [];

    /// <summary>The statement with its answer.</summary>
    public CheckedClaim Of(LessonRun.Claim claim)
    {
        ArgumentNullException.ThrowIfNull(claim);
        if (BlankTargets.IsOne(claim.Target))
        {
            return Unasked(claim, LessonProblems.BlankInTarget(claim.TargetAt, BlankTargets.Restored(claim.Target)));
        }

        return ClaimTarget.Read(claim.Target) switch
        {
            ClaimTarget.Tally tally => OfTally(claim, tally),
            ClaimTarget.Rule rule => OfRule(claim, rule),
            ClaimTarget.Value value => ValueClaims.Of(game.Sheet(), claim, value),
            ClaimTarget.Fact fact => OfFact(claim, fact),
            _ => Unasked(claim, LessonProblems.UnreadableTarget(claim.TargetAt, claim.Target)),
        };
    }

    /// <summary>A position by its name, read once; null where there is none or it cannot be answered from.</summary>
    public OpenedPosition? Position(string name)
    {
        if (!_positions.TryGetValue(name, out OpenedPosition? opened))
        {
            _positions[name] = opened = game.PositionText(name).Text is { } text ? game.Open(text) : null;
        }

        return opened?.Position is null ? null : opened;
    }

    /// <summary>Why there is no position of this name to ask.</summary>
    internal Diagnostic NoPosition(SourceSpan at, string name) => game.PositionNames.Contains(name)
        ? LessonProblems.UnsoundPosition(at, name)
        : LessonProblems.Unknown(at, "position", name, game.PositionNames);

    internal static CheckedClaim Unasked(LessonRun.Claim claim, Diagnostic problem) => new(claim, ClaimStatus.Unasked, null, problem);

    /// <summary>A number that was said against the one that the sheet gives.</summary>
    internal static CheckedClaim Numbers(LessonRun.Claim claim, long number, ClaimAnswer answer, string why)
    {
        if (SpokenNumber.Read(claim.Words) is not { } said)
        {
            return new CheckedClaim(claim, ClaimStatus.Wrong, answer, LessonProblems.NoNumber(claim.At, claim.Words, InWords(number)));
        }

        return said == number
            ? new CheckedClaim(claim, ClaimStatus.Right, answer, null)
            : new CheckedClaim(claim, ClaimStatus.Wrong, answer, LessonProblems.WrongClaim(claim.At, claim.Words, InWords(number), why));
    }

    private CheckedClaim OfTally(LessonRun.Claim claim, ClaimTarget.Tally target)
    {
        if (Position(target.Position) is not { } opened)
        {
            return UnknownPosition(claim, target.Position);
        }

        Position position = opened.Position!;
        if (target.Seat < 1 || target.Seat > position.Seats)
        {
            return Unasked(claim, LessonProblems.Unknown(claim.TargetAt, "seat", $"{target.Seat}", Enumerable.Range(1, position.Seats).Select(s => $"{s}")));
        }

        int seat = target.Seat - 1 ?? position.Me;
        Tally tally = TallyOf(position, seat);
        TallyLine? line = tally.Lines.FirstOrDefault(l => l.Clause == target.Clause);
        if (line is null && target.Clause != Expectation.Total)
        {
            return Unasked(claim, LessonProblems.Unknown(claim.TargetAt, "scoring clause", target.Clause, tally.Lines.Select(l => l.Clause)));
        }

        ImmutableArray<TallyReading> readings = [.. tally.Readings.Where(r => line is null || r.Clause == line.Clause)];
        if (target.Reading is { } wanted)
        {
            TallyReading? reading = readings.FirstOrDefault(r => r.Name == wanted);
            return reading is null
                ? Unasked(claim, LessonProblems.Unknown(claim.TargetAt, "open reading", wanted, readings.Select(r => r.Name)))
                : Points(claim, new ClaimAnswer.OfTally(tally, line, line is null ? reading.Total : reading.Points, true));
        }

        if (!readings.IsEmpty)
        {
            string open = Prose.And(readings.Select(r => $"{(line is null ? r.Total : r.Points).InWords} if {r.Name}"));
            var answer = new ClaimAnswer.OfTally(tally, line, line?.Points ?? tally.Total, false);
            return new CheckedClaim(claim, ClaimStatus.Unsettled, answer, LessonProblems.UnsettledClaim(claim.At, claim.Words, open));
        }

        return Points(claim, new ClaimAnswer.OfTally(tally, line, line?.Points ?? tally.Total, false));
    }

    /// <summary>A position counted, once for all that is said of it: a lesson counts one table line by line.</summary>
    internal Tally TallyOf(Position position, int seat)
    {
        if (!_tallies.TryGetValue((position.Name, seat), out Tally? tally))
        {
            _tallies[(position.Name, seat)] = tally = Tally.Of(position, seat);
        }

        return tally;
    }

    private static CheckedClaim Points(LessonRun.Claim claim, ClaimAnswer.OfTally answer)
    {
        if (answer.Points.Certain is not { } points || (answer.Line is null && !answer.Whole.Without.IsEmpty))
        {
            return new CheckedClaim(claim, ClaimStatus.Unsettled, answer, LessonProblems.UnsettledClaim(claim.At, claim.Words, answer.Points.InWords));
        }

        string why = answer.Line is null
            ? string.Join(", ", answer.Whole.Lines.Where(l => l.Points.Certain != 0).Select(l => $"{l.Clause} {l.Points.InWords}"))
            : string.Join("; ", answer.Line.Because.Select(b => b.Text));
        return Numbers(claim, points, answer, $"The sheet counts so: {why}.");
    }

    private CheckedClaim OfRule(LessonRun.Claim claim, ClaimTarget.Rule target)
    {
        if (Position(target.Position) is not { } opened)
        {
            return UnknownPosition(claim, target.Position);
        }

        RulingAnswer given = Ruling.On(opened.Position!, target.Words);
        if (given.Ruling is not { } ruling)
        {
            Diagnostic first = given.Problems[0];
            return Unasked(claim, first with { At = claim.TargetAt, Fix = null });
        }

        var answer = new ClaimAnswer.OfRuling(ruling);
        string said = OneLine(claim.Words);
        bool? saidYes = Forbidden.Contains(said) ? false : Allowed.Contains(said) ? true : null;
        bool? isYes = ruling.Verdict switch
        {
            "legal" or "yes" => true,
            "illegal" or "no" => false,
            _ => null,
        };
        if (isYes is null)
        {
            return new CheckedClaim(claim, ClaimStatus.Unsettled, answer, LessonProblems.UnsettledClaim(claim.At, claim.Words, "the sheet does not say"));
        }

        return saidYes == isYes
            ? new CheckedClaim(claim, ClaimStatus.Right, answer, null)
            : new CheckedClaim(claim, ClaimStatus.Wrong, answer, LessonProblems.WrongClaim(claim.At, claim.Words, $"'{ruling.Verdict}'", ruling.Reason(b => $"{b.Says.TrimEnd('.')}, {b.CiteInWords}: {b.Because}")));
    }

    private CheckedClaim OfFact(LessonRun.Claim claim, ClaimTarget.Fact target)
    {
        ImmutableArray<Fact> facts = game.Sheet().Sheet?.Facts ?? [];
        if (facts.FirstOrDefault(f => f.Name == target.Name) is not { } fact)
        {
            return Unasked(claim, LessonProblems.Unknown(claim.TargetAt, "fact", target.Name, facts.Select(f => f.Name)));
        }

        var answer = new ClaimAnswer.OfFact(fact);
        string page = $"It stands on {Citation.Tell(fact.Cite)}.";
        if (fact.Number is { } number)
        {
            return Numbers(claim, number, answer, page);
        }

        return string.Equals(OneLine(claim.Words), fact.Words, StringComparison.OrdinalIgnoreCase)
            ? new CheckedClaim(claim, ClaimStatus.Right, answer, null)
            : new CheckedClaim(claim, ClaimStatus.Wrong, answer, LessonProblems.WrongClaim(claim.At, claim.Words, $"'{fact.Words}'", page));
    }

    private CheckedClaim UnknownPosition(LessonRun.Claim claim, string name) => Unasked(claim, NoPosition(claim.TargetAt, name));

    private static string InWords(long number) => number < 0 ? $"minus {-number}" : $"{number}";

    private static string OneLine(string words) => Prose.Fold(words).TrimEnd('.', ',').ToLowerInvariant();
}
