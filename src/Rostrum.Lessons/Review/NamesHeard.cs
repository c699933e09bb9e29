using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Speech;
using Rostrum.Lessons.Terms;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Review;

/// <summary>How many of a game's own names were heard: who teaches the game says most of them, who teaches another says hardly any.</summary>
/// <param name="Heard">How many.</param>
/// <param name="Of">How many there are, words of any table left out.</param>
internal readonly record struct NamesHeard(int Heard, int Of)
{
    // On nine talks 0.6 at the least of the game itself.
    private const double Least = 0.5;

    // Hardly any of many: whatever else is said.
    private const double Hardly = 0.2;
    private const int Many = 8;

    // Fewer tell nothing.
    private const int Fewest = 3;

    /// <summary>True where the game has so many names that its talk cannot do without them.</summary>
    public bool AreMany => Of >= Many;

    /// <summary>True where all were heard.</summary>
    public bool AreAllHeard => Of > 0 && Heard == Of;

    /// <summary>True where another game is taught, whatever words it shares: of 150 talks each says one of its game's names at the least.</summary>
    public bool IsCertainlyOfAnother => (AreMany && Heard < Hardly * Of) || (Of >= Fewest && Heard == 0);

    /// <summary>True where so few were heard that another game is taught, unless the talk is short.</summary>
    public bool IsOfAnother => Of >= Fewest && Heard < Least * Of;

    /// <summary>Counts them.</summary>
    /// <param name="sheet">The game.</param>
    /// <param name="words">What was heard.</param>
    public static NamesHeard In(Sheet sheet, ImmutableArray<TimedWord> words)
    {
        HashSet<string> stems = [.. words.SelectMany(w => WordStems.Of(w.Text))];
        ImmutableArray<SheetTerm> terms = TermList.Of(sheet);
        return new NamesHeard(terms.Count(t => t.Phrases.Any(p => p.All(stems.Contains))), terms.Length);
    }
}
