using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>places</c> and <c>marks</c>.</summary>
internal static class PlacesSection
{
    private static readonly (string Key, PlaceForm Form)[] Forms =
        [("row of", PlaceForm.Row), ("bag of", PlaceForm.Bag), ("deck of", PlaceForm.Deck), ("heap of", PlaceForm.Heap), ("hand of", PlaceForm.Hand)];

    private const int MostSlots = 1000;

    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the places", "apples: {heap of: apple, of: each player}"))
        {
            if (OutlineAsk.Mapping(context, entry, "what the place holds and whose it is", "{heap of: apple, of: each player}") is { } mapping)
            {
                OutlineAsk.CheckKeys(context, mapping, "places");
                ReadPlace(context, entry.Key, mapping);
            }
        }
    }

    private static void ReadPlace(LoadContext context, OutlineScalar key, OutlineMapping mapping)
    {
        (string formKey, PlaceForm form) = Forms.FirstOrDefault(f => mapping.Find(f.Key) is not null, (Key: "", Form: PlaceForm.Heap));
        if (formKey.Length == 0)
        {
            if (!OutlineAsk.HasUnknownKey(mapping, "places"))
            {
                context.Problems.Add(SheetProblems.NoForm(key.Span, key.Text));
            }

            return;
        }

        bool eachPlayer = OutlineAsk.IsOfEachPlayer(context, mapping);
        var place = new Place(Prose.Fold(key.Text), form, eachPlayer, context.Declared.Places.Count, key.Span);
        context.Declare(place);
        OutlineNode what = mapping.Find(formKey)!.Value;
        int slots = form == PlaceForm.Row ? Slots(context, what) : 0;
        if (form != PlaceForm.Row && mapping.Find("holds") is { } limit)
        {
            context.Problems.Add(SheetProblems.NotYet(limit.Key.Span, $"'holds' of a {form.ToString().ToLowerInvariant()}"));
        }

        ImmutableArray<Kind> holds = form == PlaceForm.Row ? KindWords.Read(context, mapping.Find("holds")?.Value) : KindWords.Read(context, what);
        context.Declared.Places[place] = new PlaceFacts(place, holds, slots, Noun(context, place, mapping), context.Cite(mapping));
    }

    private static int Slots(LoadContext context, OutlineNode node)
    {
        long? slots = OutlineAsk.Number(context, node, "how many slots the row has, from 1 to 1000");
        if (slots is < 1 or > MostSlots)
        {
            context.Problems.Add(SheetProblems.WantedNumber(node.Span, node.Span.Text, "how many slots the row has, from 1 to 1000"));
        }

        return (int)Math.Clamp(slots ?? 0, 0, MostSlots);
    }

    private static SlotNoun? Noun(LoadContext context, Place place, OutlineMapping mapping)
    {
        if (mapping.Find("slots")?.Value is not OutlineScalar scalar)
        {
            return null;
        }

        string name = Prose.Fold(scalar.Text);
        var noun = new SlotNoun(name, Prose.Plural(name), place, scalar.Span);
        context.Declare(noun, noun.Plural);
        return noun;
    }

    public static void ReadMarks(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the marks", "coins: {holds: 0 to 20, of: each player}"))
        {
            OutlineScalar? holds = entry.Value switch
            {
                OutlineScalar scalar => scalar,
                OutlineMapping mapping => Holds(context, mapping),
                _ => null,
            };
            if (holds is null)
            {
                context.Problems.Add(SheetProblems.WantedText(entry.Value.Span, "what the mark holds, such as '0 to 20' or 'yes or no'"));
                continue;
            }

            bool each = entry.Value is OutlineMapping m && OutlineAsk.IsOfEachPlayer(context, m);
            (Sort sort, long? low, long? high) = SortOfMark(context, holds);
            var mark = new Mark(Prose.Fold(entry.Key.Text), sort, each, low, high, context.Marks.Count, entry.Key.Span);
            context.Marks.Add(mark);
            context.Declare(mark);
        }
    }

    private static OutlineScalar? Holds(LoadContext context, OutlineMapping mapping)
    {
        OutlineAsk.CheckKeys(context, mapping, "marks");
        return mapping.Find("holds")?.Value as OutlineScalar;
    }

    private static (Sort Sort, long? Low, long? High) SortOfMark(LoadContext context, OutlineScalar holds)
    {
        string words = Prose.Fold(holds.Text);
        string[] ends = words.Split(" to ", 2);
        if (OutlineAsk.NumberIn(ends[0]) is { } low)
        {
            long? high = OutlineAsk.NumberIn(ends[^1]);
            if (high is null || high < low)
            {
                context.Problems.Add(SheetProblems.WantedNumber(holds.Span, words, "what the mark holds, from the lowest to the highest, such as '0 to 20',"));
            }

            return (Sort.Number, low, high);
        }

        if (SubjectSorts.Find(context, words) is { } sort)
        {
            return (sort, null, null);
        }

        if (words is "number" or "yes or no")
        {
            return (words == "number" ? Sort.Number : Sort.Truth, null, null);
        }

        context.Problems.Add(SheetProblems.UnknownWord(holds.Span, words, "something that a mark can hold", ["number", "yes or no", "player", "space", "0 to 20"]));
        return (Sort.Any, null, null);
    }
}
