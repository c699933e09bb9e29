namespace Rostrum.Text;

/// <summary>Tells what could stand in place of a word that was not understood: a few words, the most alike first, never a whole vocabulary.</summary>
public static class KnownWords
{
    /// <summary>How many are told at most.</summary>
    public const int Most = 6;

    private const int Alike = 3;

    /// <summary>A list for a sentence: <c>'jug', 'bowl' and 4 others</c>; empty where nothing is known.</summary>
    /// <param name="found">What stands in the text.</param>
    /// <param name="known">What could stand there, in the order of the sheet; a plural right behind its singular is left out.</param>
    /// <param name="most">How many are told.</param>
    public static string Few(string found, IEnumerable<string> known, int most = Most)
    {
        string[] all = [.. WithoutPlurals(known.Distinct())];
        string[] told = [.. all.OrderByDescending(k => Shared(found, k)).Take(all.Length == most + 1 ? most + 1 : most).Select(k => $"'{k}'")];
        int left = all.Length - told.Length;
        return Prose.And(left > 0 ? told.Append($"{left} others") : told);
    }

    /// <summary>The same as a sentence: <c>Known are 'jug' and 'bowl'.</c></summary>
    /// <param name="found">What stands in the text.</param>
    /// <param name="known">What could stand there.</param>
    public static string Sentence(string found, IEnumerable<string> known) => Few(found, known) switch
    {
        "" => "The sheet names nothing that could stand here.",
        var few when few.Contains("' and ", StringComparison.Ordinal) || few.Contains(", ", StringComparison.Ordinal) => $"Known are {few}.",
        var one => $"Only {one} is known.",
    };

    private static IEnumerable<string> WithoutPlurals(IEnumerable<string> known)
    {
        string before = "\n";
        foreach (string word in known)
        {
            bool isPlural = word.Length > before.Length && word.EndsWith('s') && word.StartsWith(before, StringComparison.Ordinal) && word.Length - before.Length <= 2;
            if (!isPlural)
            {
                yield return word;
                before = word;
            }
        }
    }

    // How many letters both begin with; a letter or two is chance.
    private static int Shared(string found, string known)
    {
        int length = Math.Min(found.Length, known.Length);
        int shared = 0;
        while (shared < length && char.ToUpperInvariant(found[shared]) == char.ToUpperInvariant(known[shared]))
        {
            shared++;
        }

        return shared < Alike ? 0 : shared;
    }
}
