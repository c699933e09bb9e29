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
    private const int MostBetween = 7;

    /// <summary>The best run for each table.</summary>
    public IEnumerable<HeardTable> All() => statements.Tables.Select(Best).OfType<HeardTable>();

    private HeardTable? Best((ReadClause Clause, ImmutableArray<(long Key, long Value)> Rows) table)
    {
        HeardTable? best = null;
        int most = 0;
        foreach (int[] run in Runs())
        {
            foreach (bool isPaired in new[] { true, false })
            {
                (HeardTable found, int right) = Held(table.Clause, table.Rows, run, isPaired);
                if (right > most)
                {
                    (best, most) = (found, right);
                }
            }
        }

        // Half of the rows must be there before anybody says that the table was spoken.
        return most * 2 > table.Rows.Length && most >= 2 ? best : null;
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

    // The longest row of right pairs in order, by dynamic programming: what stands between two right ones is wrong or passed over.
    private (HeardTable Found, int Right) Held(ReadClause clause, ImmutableArray<(long Key, long Value)> rows, int[] run, bool isPaired)
    {
        int step = isPaired ? 2 : 1;
        var length = new int[rows.Length + 1, run.Length + 1];
        for (int r = rows.Length - 1; r >= 0; r--)
        {
            for (int i = run.Length - 1; i >= 0; i--)
            {
                int taken = Fits(rows[r], run, i, isPaired) ? 1 + length[r + 1, Math.Min(run.Length, i + step)] : 0;
                length[r, i] = Math.Max(taken, Math.Max(length[r + 1, i], length[r, i + 1]));
            }
        }

        var right = new List<(int Row, int At)>();
        (int row, int at) = (0, 0);
        while (row < rows.Length && at < run.Length)
        {
            if (Fits(rows[row], run, at, isPaired) && length[row, at] == 1 + length[row + 1, Math.Min(run.Length, at + step)])
            {
                right.Add((row, at));
                (row, at) = (row + 1, at + step);
            }
            else if (length[row, at] == length[row + 1, at])
            {
                row++;
            }
            else
            {
                at++;
            }
        }

        return (Between(clause, rows, run, right, step), right.Count);
    }

    private bool Fits((long Key, long Value) row, int[] run, int at, bool isPaired) => isPaired
        ? at + 1 < run.Length && Says(run[at], row.Key) && Says(run[at + 1], row.Value)
        : Says(run[at], row.Value);

    private bool Says(int token, long number) => tokens[token].Amount == number || tokens[token].Homophone == number;

    private HeardTable Between(ReadClause clause, ImmutableArray<(long Key, long Value)> rows, int[] run, List<(int Row, int At)> right, int step)
    {
        var wrong = ImmutableArray.CreateBuilder<(int, long, long)>();
        var missing = ImmutableArray.CreateBuilder<long>();
        foreach (((int Row, int At) one, (int Row, int At) next) in right.Zip(right.Skip(1)))
        {
            int gap = next.Row - one.Row - 1;
            int extra = (next.At - one.At - step) / step;
            for (int k = 1; k <= gap; k++)
            {
                (long key, long value) = rows[one.Row + k];
                if (extra == gap)
                {
                    int said = run[one.At + (step * k) + (step - 1)];
                    if (step == 1 || Says(run[one.At + (step * k)], key))
                    {
                        wrong.Add((said, key, value));
                    }
                }
                else if (extra == 0)
                {
                    missing.Add(key);
                }
            }
        }

        return new HeardTable(clause, right.Count == 0 ? 0 : run[right[0].At], right.Count == 0 ? 0 : run[right[^1].At], wrong.ToImmutable(), missing.ToImmutable());
    }
}
