using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Text;

namespace Rostrum.Rulings.Games;

/// <summary>Holds what the author of a position expects against what the sheet gives.</summary>
public static class ExpectationCheck
{
    /// <summary>Every expectation that is not met, and every one that names something unknown; empty where all hold.</summary>
    /// <param name="position">The position.</param>
    /// <param name="expectations">What its author expects.</param>
    public static ImmutableArray<Diagnostic> Of(Position position, ImmutableArray<Expectation> expectations)
    {
        ArgumentNullException.ThrowIfNull(position);
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        Dictionary<int, Tally> tallies = expectations.OfType<Expectation.Tally>().GroupBy(t => t.Seat ?? position.Me, t => t.Clause).ToDictionary(s => s.Key, s => Counted(position, s.Key, [.. s]));
        foreach (Expectation expectation in expectations)
        {
            Diagnostic? problem = expectation switch
            {
                Expectation.Tally points => Points(position, tallies[points.Seat ?? position.Me], points),
                Expectation.Rule rule => Verdict(position, rule),
                _ => null,
            };
            if (problem is not null)
            {
                found.Add(problem);
            }
        }

        return found.ToImmutable();
    }

    // What nobody asks need not be worked out.
    private static Tally Counted(Position position, int seat, HashSet<string> asked) => Tally.Of(position, seat, asked.Contains(Expectation.Total) ? null : asked);

    private static Diagnostic? Points(Position position, Tally tally, Expectation.Tally expected)
    {
        bool isTotal = expected.Clause == Expectation.Total;
        TallyLine? line = tally.Lines.FirstOrDefault(l => l.Clause == expected.Clause);
        if (!isTotal && line is null)
        {
            return GameProblems.UnknownClause(expected.ClauseAt, expected.Clause, position.Sheet.Score.Select(s => s.Name));
        }

        Points given = isTotal ? tally.Total : line!.Points;
        ImmutableArray<TallyReading> readings = [.. tally.Readings.Where(r => isTotal || r.Clause == expected.Clause)];
        bool isMet = expected.Points switch
        {
            ExpectedPoints.Exactly exact => given.Certain == exact.Points && readings.All(r => Of(r, isTotal).Certain == exact.Points) && (!isTotal || tally.Without.IsEmpty),
            ExpectedPoints.ByReading by => by.Readings.All(e => readings.Any(r => r.Name == e.Reading && Of(r, isTotal).Certain == e.Points)),
            ExpectedPoints.AtLeast least => given.Low == least.Points && !given.IsCertain,
            _ => !given.IsCertain,
        };
        return isMet ? null : GameProblems.OtherPoints(expected.PointsAt, expected.Clause, InWords(given, readings, isTotal), line is null ? [] : [.. line.Because.Select(b => b.Text)]);
    }

    private static Points Of(TallyReading reading, bool isTotal) => isTotal ? reading.Total : reading.Points;

    private static string InWords(Points points, ImmutableArray<TallyReading> readings, bool isTotal) =>
        readings.IsEmpty ? points.InWords : Prose.And(readings.Select(r => $"{Of(r, isTotal).InWords} if {r.Name}"));

    private static Diagnostic? Verdict(Position position, Expectation.Rule expected)
    {
        RulingAnswer answer = WordsRuling.On(position, expected.Phrase, isTold: false);
        if (answer.Ruling is not { } ruling)
        {
            Diagnostic first = answer.Problems[0];
            return GameProblems.NotUnderstood(expected.PhraseAt, expected.Phrase, first);
        }

        string wanted = expected.Verdict.ToString().ToLowerInvariant();
        if (ruling.Verdict != wanted)
        {
            return GameProblems.OtherVerdict(expected.VerdictAt, expected.Phrase, wanted, ruling.Verdict, Reason(Ruling.On(position, expected.Phrase).Ruling!));
        }

        string[] laws = [.. expected.Breaches.Select(b => b.Name).Order(StringComparer.Ordinal)];
        string[] broken = ruling is Ruling.Illegal illegal ? [.. illegal.Breaches.Select(b => b.Clause).Order(StringComparer.Ordinal)] : [];
        return laws.Length == 0 || laws.SequenceEqual(broken)
            ? null
            : GameProblems.OtherLaws(expected.VerdictAt, expected.Phrase, broken, Reason(ruling));
    }

    private static string Reason(Ruling ruling) => ruling.Reason(b => $"{b.Clause}: {b.Because}");
}
