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

/// <summary>Finds tables that are spoken as a run of numbers: <c>1, 3, 6, 10</c>, or <c>one is one, two are three, three are six</c>.</summary>
internal sealed class TableReview(Statements statements, ImmutableArray<SpokenToken> tokens)
{
    // A run goes on over so many words between two numbers.
    private const int MostBetween = 9;
    private const int MostInRow = 6;
    private const double OfWrong = 0.5;
    private const int FewestRight = 2;
    private const double LeastPaired = 0.4;
    private const double LeastListed = 0.6;
    private const double Tiny = 1e-9;

    /// <summary>The best run for each table.</summary>
    public IEnumerable<HeardTable> All() => statements.Tables.Select(Best).OfType<HeardTable>();

    private HeardTable? Best((ReadClause Clause, ImmutableArray<(long Key, long Value)> Rows) table)
    {
        HeardTable? best = null;
        double most = 0;
        foreach (int[] run in Runs())
        {
            foreach (bool isPaired in new[] { true, false })
            {
                ImmutableArray<(int Row, int At, bool IsRight)> chain = Chain(table.Rows, run, isPaired);
                double worth = chain.Sum(c => c.IsRight ? 1 : OfWrong);
                // Enough of the rows must be there before anybody says that the table was spoken.
                if (worth > most && chain.Count(c => c.IsRight) >= FewestRight && worth >= table.Rows.Length * (isPaired ? LeastPaired : LeastListed))
                {
                    (best, most) = (Told(table.Clause, table.Rows, run, chain, isPaired), worth);
                }
            }
        }

        return best;
    }

    // Numbers one after the other without much between them.
    private List<int[]> Runs()
    {
        var runs = new List<int[]>();
        var run = new List<int>();
        for (int i = 0; i < tokens.Length; i++)
        {
            if ((tokens[i].Amount ?? tokens[i].Homophone) is null)
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

    // The best row of rows in order, by dynamic programming: a right one counts whole, one with its key and another value a part. Without keys every one is right.
    private ImmutableArray<(int Row, int At, bool IsRight)> Chain(ImmutableArray<(long Key, long Value)> rows, int[] run, bool isPaired)
    {
        int step = isPaired ? 2 : 1;
        double[,] worth = new double[rows.Length + 1, run.Length + 1];
        for (int r = rows.Length - 1; r >= 0; r--)
        {
            for (int i = run.Length - 1; i >= 0; i--)
            {
                double taken = Worth(rows[r], run, i, isPaired) is > 0 and { } here ? here + worth[r + 1, Math.Min(run.Length, i + step)] : 0;
                worth[r, i] = Math.Max(taken, Math.Max(worth[r + 1, i], worth[r, i + 1]));
            }
        }

        var chain = ImmutableArray.CreateBuilder<(int, int, bool)>();
        (int row, int at) = (0, 0);
        while (row < rows.Length && at < run.Length && worth[row, at] > 0)
        {
            double here = Worth(rows[row], run, at, isPaired);
            if (here > 0 && worth[row, at] <= here + worth[row + 1, Math.Min(run.Length, at + step)] + Tiny)
            {
                chain.Add((row, at, here >= 1));
                (row, at) = (row + 1, at + step);
            }
            else if (worth[row, at] <= worth[row + 1, at] + Tiny)
            {
                row++;
            }
            else
            {
                at++;
            }
        }

        return chain.ToImmutable();
    }

    private double Worth((long Key, long Value) row, int[] run, int at, bool isPaired)
    {
        if (!isPaired)
        {
            return Says(run[at], row.Value) ? 1 : 0;
        }

        return at + 1 >= run.Length || !Says(run[at], row.Key) ? 0 : Says(run[at + 1], row.Value) ? 1 : tokens[run[at + 1]].Amount is not null && run[at + 1] - run[at] <= MostInRow ? OfWrong : 0;
    }

    private bool Says(int token, long number) => tokens[token].Amount == number || tokens[token].Homophone == number;

    private static HeardTable Told(ReadClause clause, ImmutableArray<(long Key, long Value)> rows, int[] run, ImmutableArray<(int Row, int At, bool IsRight)> chain, bool isPaired)
    {
        var wrong = chain.Where(c => !c.IsRight).Select(c => (run[c.At + 1], rows[c.Row].Key, rows[c.Row].Value)).ToList();
        var missing = new List<long>();
        int step = isPaired ? 2 : 1;
        foreach (((int Row, int At, bool) one, (int Row, int At, bool) next) in chain.Zip(chain.Skip(1)))
        {
            int gap = next.Row - one.Row - 1;
            int extra = next.At - one.At - step;
            if (gap > 0 && extra == 0)
            {
                missing.AddRange(Enumerable.Range(one.Row + 1, gap).Select(r => rows[r].Key));
            }
            else if (gap > 0 && !isPaired && extra == gap)
            {
                // So many numbers stand in the place of the rows: they are said wrongly.
                wrong.AddRange(Enumerable.Range(1, gap).Select(k => (run[one.At + k], rows[one.Row + k].Key, rows[one.Row + k].Value)));
            }
        }

        return new HeardTable(clause, run[chain[0].At], run[chain[^1].At], [.. wrong], [.. missing]);
    }
}
