namespace Rostrum.Rulings.Evaluation;

/// <summary>The most pairs of one and one other, none used twice.</summary>
/// <remarks>Augmenting paths: C. Berge, Two theorems in graph theory, PNAS 43 (1957).</remarks>
internal static class Matching
{
    /// <summary>How many pairs can be made.</summary>
    /// <param name="ones">How many there are on one side.</param>
    /// <param name="others">How many there are on the other side.</param>
    /// <param name="isPair">Whether a one and an other, both 0-based, may be a pair.</param>
    public static int Most(int ones, int others, Func<int, int, bool> isPair)
    {
        var partner = new int[others];
        Array.Fill(partner, -1);
        return Enumerable.Range(0, ones).Count(one => FindPartner(one, partner, new bool[others], isPair));
    }

    private static bool FindPartner(int one, int[] partner, bool[] tried, Func<int, int, bool> isPair)
    {
        for (int other = 0; other < partner.Length; other++)
        {
            if (tried[other] || !isPair(one, other))
            {
                continue;
            }

            tried[other] = true;
            if (partner[other] < 0 || FindPartner(partner[other], partner, tried, isPair))
            {
                partner[other] = one;
                return true;
            }
        }

        return false;
    }
}
