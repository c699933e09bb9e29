using System.Collections.Immutable;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Review;

/// <summary>A table that was spoken row by row, with what differs.</summary>
/// <param name="Clause">The table.</param>
/// <param name="From">The first number of it that was heard.</param>
/// <param name="To">The last one.</param>
/// <param name="Wrong">Values that are not the table's: which token, the row's key, what it should be.</param>
/// <param name="Missing">Keys of rows that were passed over.</param>
internal sealed record HeardTable(ReadClause Clause, int From, int To, ImmutableArray<(int At, long Key, long Value)> Wrong, ImmutableArray<long> Missing);

/// <summary>Finds tables that are spoken as a run of numbers: <c>1, 3, 6, 10</c>, <c>one is one, two are three, three are six</c>, or <c>one for one, three for two, six for three</c>.</summary>
internal sealed class TableReview(Statements statements, ImmutableArray<SpokenToken> tokens)
{
    // A run goes on over so many words between two numbers.
    private const int MostBetween = 9;
    private const int MostInRow = 6;
    private const int MostBeforeKey = 3;
    private const double OfWrong = 0.5;
    private const double OfPassedOver = 0.25;

    // They may be the keys.
    private const double OfPassedOverInList = 0.5;
    private const int FewestRight = 2;
    private const double LeastPaired = 0.4;
    private const double LeastListed = 0.6;
    private const int MostPassedOver = 6;
    private const int MostRowsPassedOver = 8;

    // Beyond it nobody recites a table.
    private const long MostCells = 1_000_000;

    // How the rows of a table follow each other: 'two are three', 'three for two', or the values alone.
    private enum Shape
    {
        KeyFirst,
        ValueFirst,
        Listed,
    }

    /// <summary>The best run for each table.</summary>
    public IEnumerable<HeardTable> All()
    {
        (Shape Shape, List<int[]> Runs)[] runs = [.. Enum.GetValues<Shape>().Select(s => (s, Runs(s)))];
        return statements.Tables.Select(t => Best(t, runs)).OfType<HeardTable>();
    }

    private HeardTable? Best((ReadClause Clause, ImmutableArray<(long Key, long Value)> Rows) table, (Shape Shape, List<int[]> Runs)[] spoken)
    {
        HeardTable? best = null;
        double most = 0;
        foreach ((Shape shape, List<int[]> runs) in spoken)
        {
            foreach (int[] run in runs)
            {
                (ImmutableArray<(int Row, int At, bool IsRight)> chain, double worth) = Best(table.Rows, run, shape);
                // Enough of the rows must be there before anybody says that the table was spoken.
                if (worth > most && chain.Count(c => c.IsRight) >= FewestRight && worth >= table.Rows.Length * (shape == Shape.Listed ? LeastListed : LeastPaired))
                {
                    (best, most) = (Told(table.Clause, table.Rows, run, chain, shape), worth);
                }
            }
        }

        return best;
    }

    // Numbers one after the other without much between them. In 'three for two' the word is what it seems.
    private List<int[]> Runs(Shape shape)
    {
        var runs = new List<int[]>();
        var run = new List<int>();
        for (int i = 0; i < tokens.Length; i++)
        {
            if ((tokens[i].Amount ?? (shape == Shape.ValueFirst ? null : tokens[i].Homophone)) is null)
            {
                continue;
            }

            if (run.Count > 0 && i - run[^1] > MostBetween)
            {
                runs.Add([.. run]);
                run = [];
            }

            run.Add(i);
        }

        runs.Add([.. run]);
        return [.. runs.Where(r => r.Length >= 3)];
    }

    // The best row of rows in order, by dynamic programming: a right one counts whole, one with its key and another value a part, a number between them that belongs to no row costs a little.
    private (ImmutableArray<(int Row, int At, bool IsRight)> Chain, double Worth) Best(ImmutableArray<(long Key, long Value)> rows, int[] run, Shape shape)
    {
        int step = StepOf(shape);
        if ((long)rows.Length * run.Length > MostCells)
        {
            return ([], 0);
        }

        var from = new (double Worth, int Row, int At)[rows.Length, run.Length];
        (double Worth, int Row, int At) best = (0, -1, -1);
        for (int r = rows.Length - 1; r >= 0; r--)
        {
            for (int i = run.Length - 1; i >= 0; i--)
            {
                double here = Worth(rows[r], run, i, shape);
                if (here == 0)
                {
                    continue;
                }

                from[r, i] = (here, -1, -1);
                for (int next = r + 1; next < Math.Min(rows.Length, r + 1 + MostRowsPassedOver); next++)
                {
                    double passed = 0;
                    for (int at = i + step; at < Math.Min(run.Length, i + step + MostPassedOver + 1); at++)
                    {
                        double worth = here + from[next, at].Worth - passed;
                        from[r, i] = from[next, at].Worth > 0 && worth > from[r, i].Worth ? (worth, next, at) : from[r, i];
                        passed += tokens[run[at]].Amount is null ? 0 : shape == Shape.Listed ? OfPassedOverInList : OfPassedOver;
                    }
                }

                best = from[r, i].Worth > best.Worth ? (from[r, i].Worth, r, i) : best;
            }
        }

        var chain = ImmutableArray.CreateBuilder<(int, int, bool)>();
        for ((int row, int at) = (best.Row, best.At); row >= 0; (row, at) = (from[row, at].Row, from[row, at].At))
        {
            chain.Add((row, at, Worth(rows[row], run, at, shape) >= 1));
        }

        return (chain.ToImmutable(), best.Worth);
    }

    private double Worth((long Key, long Value) row, int[] run, int at, Shape shape)
    {
        if (shape == Shape.Listed)
        {
            return Says(run[at], row.Value) ? 1 : 0;
        }

        if (at + 1 >= run.Length)
        {
            return 0;
        }

        (int key, int value) = shape == Shape.KeyFirst ? (run[at], run[at + 1]) : (run[at + 1], run[at]);
        return !Says(key, row.Key) ? 0 : Says(value, row.Value) ? 1 : tokens[value] is { Amount: not null, Text: not "one" } && run[at + 1] - run[at] <= (shape == Shape.KeyFirst ? MostInRow : MostBeforeKey) ? OfWrong : 0;
    }

    private static int StepOf(Shape shape) => shape == Shape.Listed ? 1 : 2;

    private bool Says(int token, long number) => tokens[token].Amount == number || tokens[token].Homophone == number;

    private static HeardTable Told(ReadClause clause, ImmutableArray<(long Key, long Value)> rows, int[] run, ImmutableArray<(int Row, int At, bool IsRight)> chain, Shape shape)
    {
        // At its end a run may begin by chance: 'in one set, not in two. One alone …'.
        bool IsInRun(int i) => (i > 0 && chain[i].At == chain[i - 1].At + StepOf(shape)) || (i + 1 < chain.Length && chain[i + 1].At == chain[i].At + StepOf(shape));
        var wrong = chain.Where((c, i) => !c.IsRight && IsInRun(i)).Select(c => (run[c.At + (shape == Shape.KeyFirst ? 1 : 0)], rows[c.Row].Key, rows[c.Row].Value)).ToList();
        var missing = new List<long>();
        int step = StepOf(shape);
        foreach (((int Row, int At, bool) one, (int Row, int At, bool) next) in chain.Zip(chain.Skip(1)))
        {
            int gap = next.Row - one.Row - 1;
            int extra = next.At - one.At - step;
            if (gap > 0 && extra == 0)
            {
                missing.AddRange(Enumerable.Range(one.Row + 1, gap).Select(r => rows[r].Key));
            }
            else if (gap > 0 && shape == Shape.Listed && extra == gap)
            {
                // So many numbers stand in the place of the rows: they are said wrongly.
                wrong.AddRange(Enumerable.Range(1, gap).Select(k => (run[one.At + k], rows[one.Row + k].Key, rows[one.Row + k].Value)));
            }
        }

        return new HeardTable(clause, run[chain[0].At], run[chain[^1].At], [.. wrong], [.. missing]);
    }
}
