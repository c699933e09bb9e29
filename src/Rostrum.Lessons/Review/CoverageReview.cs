using System.Collections.Immutable;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Review;

/// <summary>Whether a rule was said.</summary>
/// <param name="Statement">The rule.</param>
/// <param name="Said">How much of it was said at its best place, 0 to 1.</param>
/// <param name="At">The token at which that place begins; -1 where nothing of it was said.</param>
internal sealed record HeardRule(Statement Statement, double Said, int At);

/// <summary>Looks for each rule of the sheet in what was said: the place where most of its telling words stand together.</summary>
internal sealed class CoverageReview(Statements statements, ImmutableArray<SpokenToken> tokens)
{
    // Rules are spread over so many words when they are explained freely.
    private const int Window = 45;

    private static readonly string[] Rules = ["Laws", "Scoring", "End of the game"];

    // Things of the game tell more of a rule than the words that join them.
    private const double OfThings = 1.6;

    /// <summary>Every rule with how much of it was said.</summary>
    public IEnumerable<HeardRule> All() => statements.All.Where(s => s.Variant is null && Rules.Contains(s.Clause.Section) && s.Slots.All(n => n.Key is null) && IsSentence(s.Clause)).Select(Best);

    // What reads back as a formula is no sentence that anybody says.
    private static bool IsSentence(ReadClause clause) => clause.Meaning is not null || clause.Name == "ties";

    private HeardRule Best(Statement rule)
    {
        ImmutableDictionary<string, double> words = rule.Words.ToImmutableDictionary(w => w.Key, w => w.Value * (statements.Units.Is(w.Key) ? OfThings : 1));
        double all = words.Values.Sum();
        var last = new Dictionary<string, int>(StringComparer.Ordinal);
        double met = 0;
        double best = 0;
        int at = -1;
        for (int i = 0; i < tokens.Length; i++)
        {
            int gone = i - Window;
            if (gone >= 0 && words.TryGetValue(tokens[gone].Stem, out double lost) && last[tokens[gone].Stem] == gone)
            {
                met -= lost;
                last.Remove(tokens[gone].Stem);
            }

            if (words.TryGetValue(tokens[i].Stem, out double weight))
            {
                met += last.ContainsKey(tokens[i].Stem) ? 0 : weight;
                last[tokens[i].Stem] = i;
                if (met > best)
                {
                    (best, at) = (met, last.Values.Min());
                }
            }
        }

        return new HeardRule(rule, all == 0 ? 1 : best / all, at);
    }
}
