using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>places</c> and <c>marks</c>.</summary>
internal static class PlacesSection
{
    private static readonly (string Key, PlaceForm Form)[] Forms =
        [("row of", PlaceForm.Row), ("bag of", PlaceForm.Bag), ("deck of", PlaceForm.Deck), ("heap of", PlaceForm.Heap), ("hand of", PlaceForm.Hand)];

    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the places"))
        {
            if (entry.Value is not OutlineMapping mapping)
            {
                context.Problems.Add(SheetProblems.WantedEntries(entry.Value.Span, "what the place holds, such as 'heap of: stick'"));
                continue;
            }

            OutlineAsk.CheckKeys(context, mapping, "places");
            ReadPlace(context, entry.Key, mapping);
        }
    }

    private static void ReadPlace(LoadContext context, OutlineScalar key, OutlineMapping mapping)
    {
        (string formKey, PlaceForm form) = Forms.FirstOrDefault(f => mapping.Find(f.Key) is not null, (Key: "", Form: PlaceForm.Heap));
        if (formKey.Length == 0)
        {
            context.Problems.Add(SheetProblems.NoForm(key.Span, key.Text));
            return;
        }

        bool eachPlayer = mapping.Find("of")?.Value is OutlineScalar of && OutlineAsk.Fold(of.Text) == "each player";
        var place = new Place(OutlineAsk.Fold(key.Text), form, eachPlayer, context.Declared.Places.Count, key.Span);
        context.Declare(place);
        OutlineNode what = mapping.Find(formKey)!.Value;
        int slots = form == PlaceForm.Row ? (int)Math.Clamp(OutlineAsk.Number(context, what, "how many slots the row has") ?? 0, 0, 1000) : 0;
        ImmutableArray<Kind> holds = form == PlaceForm.Row ? Kinds(context, mapping.Find("holds")?.Value) : Kinds(context, what);
        context.Declared.Places[place] = new PlaceFacts(place, holds, slots, Noun(context, place, mapping), context.Cite(mapping));
    }

    private static SlotNoun? Noun(LoadContext context, Place place, OutlineMapping mapping)
    {
        if (mapping.Find("slots")?.Value is not OutlineScalar scalar)
        {
            return null;
        }

        string name = OutlineAsk.Fold(scalar.Text);
        var noun = new SlotNoun(name, OutlineAsk.PluralOf(name), place, scalar.Span);
        context.Declare(noun, noun.Plural);
        return noun;
    }

    // `ware`, `ware and sticks`, [ware, stick]
    private static ImmutableArray<Kind> Kinds(LoadContext context, OutlineNode? node)
    {
        if (node is null)
        {
            return [];
        }

        var kinds = ImmutableArray.CreateBuilder<Kind>();
        foreach (OutlineScalar item in OutlineAsk.Items(context, node, "the kinds that lie there"))
        {
            int at = 0;
            foreach (string name in item.Text.Split([" and ", ","], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            {
                at = item.Text.IndexOf(name, at, StringComparison.Ordinal);
                if (context.Declared.Names.Find(name).Select(s => s.Symbol).OfType<Kind>().FirstOrDefault() is { } kind)
                {
                    kinds.Add(kind);
                }
                else
                {
                    context.Problems.Add(SheetProblems.UnknownWord(item.SpanOf(at, name.Length), name, "a kind of piece, card or die", context.Declared.Kinds.Keys.Select(k => k.Name)));
                }
            }
        }

        return kinds.ToImmutable();
    }

    public static void ReadMarks(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the marks"))
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

            bool each = entry.Value is OutlineMapping m && m.Find("of")?.Value is OutlineScalar of && OutlineAsk.Fold(of.Text) == "each player";
            (Sort sort, long? low, long? high) = SortOfMark(context, holds);
            var mark = new Mark(OutlineAsk.Fold(entry.Key.Text), sort, each, low, high, context.Marks.Count, entry.Key.Span);
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
        string words = OutlineAsk.Fold(holds.Text);
        string[] ends = words.Split(" to ", 2);
        if (OutlineAsk.NumberIn(ends[0]) is { } low)
        {
            return (Sort.Number, low, OutlineAsk.NumberIn(ends[^1]));
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
