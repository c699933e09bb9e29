using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Shots;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Film;

/// <summary>Lists the call-outs and pick-ups of a checked lesson.</summary>
public static class CallOutList
{
    /// <summary>One for each checked value that is right, one pick-up for each other and for each shot that shows no position, in the order of the film.</summary>
    /// <param name="report">The checked lesson.</param>
    /// <param name="clock">Its times.</param>
    public static ImmutableArray<CallOut> Of(LessonReport report, LessonClock clock)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(clock);
        IEnumerable<CallOut> values = report.Claims.Zip(clock.Claims, OfClaim);
        IEnumerable<CallOut> shots = report.Shots.Zip(clock.Shots).Where(s => s.First.Problem is not null).Select(s => OfShot(s.First, s.Second));
        return [.. values.Concat(shots).OrderBy(c => c.Start)];
    }

    private static CallOut OfClaim(CheckedClaim claim, Stretch<LessonRun.Claim> said)
    {
        int line = claim.Claim.At.StartPosition.Line;
        string words = OneLine.Of(claim.Claim.Words);
        return claim.Problem is { } problem
            ? new CallOut.PickUp(said.Start, said.End, line, words, Why(problem))
            : new CallOut.Value(said.Start, said.End, line, words, PageOf(claim.Answer)?.InWords ?? "", SpacesOf(claim.Answer));
    }

    private static CallOut.PickUp OfShot(CheckedShot shot, Stretch<LessonBlock.Shot> shown) =>
        new(shown.Start, shown.End, shot.Shot.At.StartPosition.Line, OneLine.Of(shot.Shot.Caption), Why(shot.Problem!));

    private static string Why(Diagnostic problem) => OneLine.Of($"{problem.Message} {problem.Hint}");

    private static Citation? PageOf(ClaimAnswer? answer) => answer switch
    {
        ClaimAnswer.OfTally tally => tally.Line?.Cite,
        ClaimAnswer.OfRuling { Ruling: Ruling.Illegal illegal } => illegal.Breaches[0].Cite,
        ClaimAnswer.OfFact fact => fact.Fact.Cite,
        ClaimAnswer.OfValue value => value.Cite,
        _ => null,
    };

    private static ImmutableArray<string> SpacesOf(ClaimAnswer? answer) => answer switch
    {
        ClaimAnswer.OfTally { Line: { } line } => [.. line.Because.Where(b => b.Points.Certain is not 0).SelectMany(b => b.Spaces).Distinct()],
        ClaimAnswer.OfRuling { Ruling: Ruling.Illegal illegal } => [.. illegal.Breaches.SelectMany(b => b.Spaces).Distinct()],
        ClaimAnswer.OfRuling { Ruling: Ruling.Yes yes } => yes.Spaces,
        ClaimAnswer.OfRuling { Ruling: Ruling.No no } => no.Spaces,
        _ => [],
    };
}
