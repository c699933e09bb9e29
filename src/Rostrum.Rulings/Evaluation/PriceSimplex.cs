using System.Collections.Immutable;

namespace Rostrum.Rulings.Evaluation;

/// <summary>The prices at which what sets are worth is shared out best among their elements, where parts of sets may be formed too.</summary>
/// <remarks>The revised simplex method (G. B. Dantzig, Linear Programming and Extensions, 1963) with one row for each sort of element. It works in floating
/// point and stops after a fixed number of rounds: who uses the prices must make sure that they hold.</remarks>
internal sealed class PriceSimplex
{
    private const int MostRounds = 400;
    private const double Tiny = 1e-9;

    private readonly double[] _amounts;
    private readonly double[] _worths;
    private readonly double[][] _inverse;

    private PriceSimplex(ImmutableArray<int> counts, double alone)
    {
        _amounts = [.. counts.Select(c => (double)c)];
        _worths = [.. counts.Select(_ => alone)];
        _inverse = [.. counts.Select((_, row) => counts.Select((_, at) => at == row ? 1.0 : 0.0).ToArray())];
    }

    /// <summary>The price of an element of each sort.</summary>
    /// <param name="counts">How many elements there are of each sort.</param>
    /// <param name="sets">The sets that may be formed.</param>
    /// <param name="alone">What an element is worth that is in none of them; far below zero where each must be in one.</param>
    public static double[] Prices(ImmutableArray<int> counts, ImmutableArray<WorthySet> sets, double alone)
    {
        var simplex = new PriceSimplex(counts, alone);
        double least = Tiny * (1 + sets.Select(s => Math.Abs((double)s.Worth)).DefaultIfEmpty(0).Max());
        double[] prices = simplex.Prices();
        for (int round = 0; round < MostRounds && Best(sets, prices, least) is { } best && simplex.Enter(best); round++)
        {
            prices = simplex.Prices();
        }

        return prices;
    }

    private static WorthySet? Best(ImmutableArray<WorthySet> sets, double[] prices, double least)
    {
        WorthySet? best = null;
        foreach (WorthySet set in sets)
        {
            double gain = set.Worth;
            foreach ((int sort, int count) in set.Parts)
            {
                gain -= count * prices[sort];
            }

            (best, least) = gain > least ? (set, gain) : (best, least);
        }

        return best;
    }

    private double[] Prices()
    {
        var prices = new double[_worths.Length];
        for (int row = 0; row < prices.Length; row++)
        {
            for (int at = 0; at < prices.Length; at++)
            {
                prices[at] += _worths[row] * _inverse[row][at];
            }
        }

        return prices;
    }

    // The set takes the place of what it uses up first; false where it uses up nothing.
    private bool Enter(WorthySet set)
    {
        double[] uses = [.. _inverse.Select(row => set.Parts.Sum(p => p.Count * row[p.Sort]))];
        int leaves = -1;
        for (int row = 0; row < uses.Length; row++)
        {
            if (uses[row] > Tiny && (leaves < 0 || _amounts[row] * uses[leaves] < _amounts[leaves] * uses[row]))
            {
                leaves = row;
            }
        }

        if (leaves >= 0)
        {
            Turn(leaves, uses);
            _worths[leaves] = set.Worth;
        }

        return leaves >= 0;
    }

    private void Turn(int leaves, double[] uses)
    {
        double by = uses[leaves];
        _amounts[leaves] /= by;
        _inverse[leaves] = [.. _inverse[leaves].Select(v => v / by)];
        for (int row = 0; row < uses.Length; row++)
        {
            double times = row == leaves ? 0 : uses[row];
            _amounts[row] -= times * _amounts[leaves];
            for (int at = 0; at < uses.Length && times != 0; at++)
            {
                _inverse[row][at] -= times * _inverse[leaves][at];
            }
        }
    }
}
