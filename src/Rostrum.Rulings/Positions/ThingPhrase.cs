using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Some words that name things: <c>4</c>, <c>2 ash bowls</c>, <c>cracked iron jug</c>, <c>Glazer face down</c>, <c>stone of seat 2</c>.</summary>
/// <param name="Count">How many.</param>
/// <param name="Draft">What each of them is; null where not even the kind is given.</param>
internal sealed record ThingPhrase(int Count, ThingDraft? Draft)
{
    /// <summary>A thing of which nothing is given.</summary>
    public static Thing Unknown { get; } = new(null, [], null, null, null);

    /// <summary>Reads a phrase; null (with a message) where it names nothing.</summary>
    public static ThingPhrase? Read(PositionReading reading, OutlineScalar text, ThingSpot spot)
    {
        ImmutableArray<PlacedWord> words = WordCutter.Cut(text);
        if (words.Length == 1 && NumberIn(words[0].Text) is { } bare)
        {
            return new ThingPhrase(bare, KindUnsaid(reading, words[0], spot));
        }

        var scan = new ThingPhraseScan(reading, words);
        int count = CountAt(reading, words) ?? 1;
        int start = CountAt(reading, words) is null ? 0 : 1;
        return scan.Read(start) ? Resolved(reading, scan, count, text, spot) : null;
    }

    /// <summary>The number that a word is, in digits or as a word to twelve; null for none.</summary>
    public static int? NumberIn(string word) =>
        int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : Prose.NumberOf(word);

    // A name that begins with a number, such as `7 of clubs`, is not seven of something.
    private static int? CountAt(PositionReading reading, ImmutableArray<PlacedWord> words)
    {
        bool isName = reading.Lexicon.Match([.. words.Select(w => w.Text)]).Length > 1;
        bool isArticle = words[0].Text is "a" or "an";
        return isName || words.Length < 2 ? null : isArticle ? 1 : NumberIn(words[0].Text);
    }

    private static ThingDraft? KindUnsaid(PositionReading reading, PlacedWord number, ThingSpot spot)
    {
        ImmutableArray<Kind> may = spot.Holds.IsEmpty ? [.. reading.Sheet.Kinds.Select(k => k.Kind)] : spot.Holds;
        if (may.Length == 1)
        {
            return new ThingDraft(reading.Sheet.KindOf(may[0]), [], null);
        }

        if (may.Length > 1 && number.Text != "0")
        {
            reading.Problems.Add(PositionProblems.KindNotSaid(number.Span, number.Text, spot.Told, may));
        }

        return null;
    }

    private static ThingPhrase? Resolved(PositionReading reading, ThingPhraseScan scan, int count, OutlineScalar text, ThingSpot spot)
    {
        if (scan.SaysThing && scan.Groups.Count == 0)
        {
            return new ThingPhrase(count, null);
        }

        ThingDraft? draft = ThingResolver.Resolve(reading, [.. scan.Groups], WordCutter.WordsOf(text), spot);
        return draft is null ? null : new ThingPhrase(count, scan.Complete(draft));
    }
}
