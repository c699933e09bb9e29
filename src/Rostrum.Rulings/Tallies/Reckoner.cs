using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tallies;

/// <summary>Works out the points of scoring clauses for one seat under one setting of the choices.</summary>
internal sealed class Reckoner(Position position, int seat, Setting setting)
{
    private readonly Dictionary<ScoreClause, SortedSet<int>> _touched = [];

    /// <summary>The open choices that a clause depended on, by id.</summary>
    public IReadOnlySet<int> Touched(ScoreClause clause) => _touched.TryGetValue(clause, out SortedSet<int>? ids) ? ids : new SortedSet<int>();

    /// <summary>The points of a clause over all completions of the position.</summary>
    public Value.Number Points(ScoreClause clause) => new Splitter().Bound(position, p => On(p, clause));

    /// <summary>The points of several clauses together over all completions: narrower than the sum of their bounds where they hang on the same facts.</summary>
    /// <param name="lines">The clauses with their points.</param>
    public Value.Number Total(ImmutableArray<(ScoreClause Clause, Value.Number Points)> lines)
    {
        Value.Number known = Sum(lines.Where(l => l.Points.IsKnown).Select(l => l.Points));
        ImmutableArray<ScoreClause> open = [.. lines.Where(l => !l.Points.IsKnown).Select(l => l.Clause)];
        Blame blame = lines.Aggregate(Blame.None, (sum, l) => sum + l.Points.Blame);
        if (open.Length <= 1 || !Splitter.IsWorthwhile(position, blame))
        {
            return Sum(lines.Select(l => l.Points));
        }

        var range = new Splitter.Range();
        Widen(new Splitter(), position, known, open, range);
        return Value.Between(range.Low, range.High, blame);
    }

    // Clauses that have become certain are not asked again below.
    private void Widen(Splitter splitter, Position at, Value.Number known, ImmutableArray<ScoreClause> open, Splitter.Range range)
    {
        (ScoreClause Clause, Value.Number Points)[] asked = [.. open.Select(c => (c, On(at, c)))];
        Value.Number sum = Bounds.Plus(known, Sum(asked.Select(a => a.Points)));
        if (range.Holds(sum))
        {
            return;
        }

        if (sum.IsKnown || splitter.FirstFilling(at, sum.Blame) is not { } fillings)
        {
            range.Add(sum);
            return;
        }

        Value.Number settled = Bounds.Plus(known, Sum(asked.Where(a => a.Points.IsKnown).Select(a => a.Points)));
        ImmutableArray<ScoreClause> left = [.. asked.Where(a => !a.Points.IsKnown).Select(a => a.Clause)];
        foreach (Position filling in fillings)
        {
            Widen(splitter, filling, settled, left, range);
        }
    }

    private static Value.Number Sum(IEnumerable<Value.Number> numbers) => numbers.Aggregate(Value.Of(0), Bounds.Plus);

    private Value.Number On(Position at, ScoreClause clause)
    {
        if (!_touched.TryGetValue(clause, out SortedSet<int>? touched))
        {
            _touched[clause] = touched = [];
        }

        return ClausePoints.Of(new Evaluator(at, seat, setting, touched), clause);
    }
}
