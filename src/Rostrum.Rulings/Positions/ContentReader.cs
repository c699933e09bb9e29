using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads what lies in one heap, in one slot or on one space, written in words.</summary>
internal static class ContentReader
{
    /// <summary>The word for a content that is not given.</summary>
    public const string NotGiven = "?";

    /// <summary>The word for an empty place.</summary>
    public const string Nothing = "nothing";

    private static readonly string[] ForNothing = ["none", "empty", "nil", "no", "-", "–", ".", "~", "null"];

    /// <summary>The content; not given (with a message) where it cannot be read.</summary>
    public static Stack Read(PositionReading reading, OutlineNode node, ThingSpot spot)
    {
        switch (node)
        {
            case OutlineSequence list:
                return List(reading, list, spot);
            case OutlineScalar { Style: not (OutlineStyle.Lines or OutlineStyle.Prose) } text when Prose.Fold(text.Text) is { Length: > 0 } words:
                return words == NotGiven || words == "not given" ? Stack.NotGiven : Of(Things(reading, text, spot));
            default:
                reading.Problems.Add(PositionProblems.WantedContent(node.Span, spot.Told));
                return Stack.NotGiven;
        }
    }

    // What one item fails to say makes the whole content not given, but every item is looked at.
    private static Stack List(PositionReading reading, OutlineSequence list, ThingSpot spot)
    {
        var things = new List<Thing>();
        bool fine = true;
        foreach (OutlineNode item in list.Items)
        {
            IReadOnlyCollection<Thing>? found = null;
            if (item is OutlineScalar { Style: not (OutlineStyle.Lines or OutlineStyle.Prose) } text && Prose.Fold(text.Text) is not ("" or NotGiven))
            {
                found = Things(reading, text, spot);
            }
            else
            {
                reading.Problems.Add(PositionProblems.WantedContent(item.Span, spot.Told));
            }

            fine &= found is not null;
            things.AddRange(found ?? []);
        }

        return fine ? new Stack([.. things]) : Stack.NotGiven;
    }

    private static Stack Of(IReadOnlyCollection<Thing>? things) => things is null ? Stack.NotGiven : new Stack([.. things]);

    private static Thing[]? Things(PositionReading reading, OutlineScalar text, ThingSpot spot)
    {
        if (Prose.Fold(text.Text) == Nothing)
        {
            return [];
        }

        if (ForNothing.Contains(Prose.Fold(text.Text), StringComparer.OrdinalIgnoreCase))
        {
            reading.Problems.Add(PositionProblems.WordForNothing(WordCutter.WordsOf(text)));
            return null;
        }

        if (ThingPhrase.Read(reading, text, spot) is not { } phrase)
        {
            return null;
        }

        SourceSpan at = WordCutter.WordsOf(text);
        if (phrase.Draft is { } draft && !spot.Holds.IsEmpty && !spot.Holds.Contains(draft.Kind.Kind))
        {
            reading.Problems.Add(PositionProblems.NotHeldHere(at, draft.Kind.Kind.Name, spot.Told, spot.Holds));
        }

        return reading.Write(phrase.Draft?.At(spot) ?? ThingPhrase.Unknown, phrase.Count, at);
    }
}
