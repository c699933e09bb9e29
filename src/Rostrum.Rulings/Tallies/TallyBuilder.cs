using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tallies;

/// <summary>Puts a tally together: lines, total, readings, and what was missing.</summary>
/// <param name="position">What lies where.</param>
/// <param name="seat">The 0-based seat that is counted.</param>
/// <param name="only">The clauses that are counted; null for all. The total is then that of those.</param>
internal sealed class TallyBuilder(Position position, int seat, IReadOnlySet<string>? only = null)
{
    private readonly Naming _naming = new(position.Sheet, seat);
    private readonly Reckoner _first = new(position, seat, Setting.First);

    /// <summary>The tally.</summary>
    public Tally Build()
    {
        ImmutableArray<(ScoreClause Clause, Value.Number Points)> all = [.. position.Sheet.Score.Where(c => only is null || only.Contains(c.Name)).Select(c => (c, _first.Points(c)))];
        Blame blame = all.Aggregate(Blame.None, (sum, l) => sum + l.Points.Blame);
        Points total = Told(Total(_first, all));
        string[] without = [.. all.Where(l => Told(l.Points).IsUnknown).Select(l => l.Clause.Name)];
        return new Tally(
            seat,
            total,
            [.. all.Select(l => Line(l.Clause, l.Points))],
            [.. without],
            Readings(all),
            [.. blame.Gaps.Where(g => g.Kind != GapKind.NotGiven).Select(g => g.Listed).Distinct()],
            _naming.NotGiven(blame))
        {
            Rating = only is null ? TallyRating.Of(position.Sheet, total, without.Length == 0) : null,
        };
    }

    private static Value.Number Total(Reckoner reckoner, ImmutableArray<(ScoreClause Clause, Value.Number Points)> lines) =>
        reckoner.Total([.. lines.Where(l => !Told(l.Points).IsUnknown)]);

    private static Points Told(Value.Number number) => new(number.Low, number.High);

    private TallyLine Line(ScoreClause clause, Value.Number points)
    {
        var evaluator = new Evaluator(position, seat, Setting.First, new SortedSet<int>());
        ScoreBody body = ClausePoints.Body(evaluator, clause);
        string sentence = clause.Says ?? body.Idiom?.Sentence ?? body.Formula;
        return new TallyLine(clause.Name, sentence, clause.Cite, Told(points), () => new Explainer(evaluator, _naming).Explain(clause, points));
    }

    private ImmutableArray<TallyReading> Readings(ImmutableArray<(ScoreClause Clause, Value.Number Points)> first)
    {
        var readings = ImmutableArray.CreateBuilder<TallyReading>();
        foreach (Choice choice in position.Sheet.Choices.Where(c => c.IsOpen && c.Names.Length > 1))
        {
            ScoreClause[] touching = [.. first.Select(l => l.Clause).Where(c => _first.Touched(c).Contains(choice.Id))];
            if (touching.Length > 0)
            {
                readings.AddRange(Readings(choice, touching, first));
            }
        }

        return readings.ToImmutable();
    }

    // A choice that changes no points here is no reading worth telling.
    private IEnumerable<TallyReading> Readings(Choice choice, ScoreClause[] touching, ImmutableArray<(ScoreClause Clause, Value.Number Points)> first)
    {
        TallyReading[] all = [.. Enumerable.Range(0, choice.Names.Length).SelectMany(alternative =>
        {
            var reckoner = new Reckoner(position, seat, Setting.First.With(choice, alternative));
            ImmutableArray<(ScoreClause Clause, Value.Number Points)> lines =
                [.. first.Select(l => touching.Contains(l.Clause) ? (l.Clause, reckoner.Points(l.Clause)) : l)];
            Points total = Told(Total(reckoner, lines));
            return lines.Where(l => touching.Contains(l.Clause)).Select(l => new TallyReading(l.Clause.Name, choice.Names[alternative], Told(l.Points), total, choice));
        })];
        return all.GroupBy(r => r.Clause).Where(g => g.Select(r => r.Points).Distinct().Count() > 1).SelectMany(g => g);
    }
}
