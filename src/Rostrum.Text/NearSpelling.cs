using F23.StringSimilarity;

namespace Rostrum.Text;

/// <summary>Finds the word that an author most likely meant.</summary>
/// <remarks>Distance: optimal string alignment (one insertion, deletion, change or swap of neighbours counts 1), case ignored.
/// Cut-off: at most 2, and at most a third of the written word's length, but 1 for words of three to five letters
/// and 0 for fewer or for more than 200.</remarks>
public static class NearSpelling
{
    // The cost grows with the product of both lengths; nobody misspells a name of this length by one letter.
    private const int LongestWord = 200;

    private static readonly OptimalStringAlignment Distance = new();

    /// <summary>The nearest of the candidates, or null where none is near enough.</summary>
    /// <param name="written">What stands in the text.</param>
    /// <param name="candidates">What could stand there; the first of equally near ones wins.</param>
    public static string? Find(string written, IEnumerable<string> candidates)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(candidates);
        string wanted = written.ToLowerInvariant();
        int cutOff = CutOff(wanted.Length);
        if (cutOff == 0)
        {
            return candidates.FirstOrDefault(c => c.Equals(written, StringComparison.OrdinalIgnoreCase));
        }

        string? best = null;
        double bestDistance = cutOff + 0.5;
        foreach (string candidate in candidates)
        {
            if (Math.Abs(candidate.Length - wanted.Length) > bestDistance)
            {
                continue;
            }

            double distance = Distance.Distance(wanted, candidate.ToLowerInvariant());
            if (distance < bestDistance)
            {
                (best, bestDistance) = (candidate, distance);
            }
        }

        return best;
    }

    /// <summary>True where one insertion, deletion, change or swap of neighbours makes one text of the other, case ignored.</summary>
    public static bool IsOneOff(string one, string other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return Math.Max(one.Length, other.Length) <= LongestWord && Distance.Distance(one.ToLowerInvariant(), other.ToLowerInvariant()) <= 1;
    }

    private static int CutOff(int length) => length switch
    {
        < 3 => 0,
        < 6 => 1,
        <= LongestWord => 2,
        _ => 0,
    };
}
