using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>places</c>.</summary>
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
        ImmutableArray<Kind> holds = form == PlaceForm.Row ? KindWords.Read(context, mapping.Find("holds")?.Value) : KindWords.Read(context, what);
        context.Declared.Places[place] = new PlaceFacts(place, holds, slots, Noun(context, place, mapping), context.Cite(mapping))
        {
            Most = form == PlaceForm.Row ? null : Most(context, mapping),
        };
    }

    // `holds: 7`, `holds: 7 cards`
    private static int? Most(LoadContext context, OutlineMapping mapping)
    {
        const string Wanted = "how many the place holds, such as '7' or '7 cards'";
        if (mapping.Find("holds")?.Value is not { } node || OutlineAsk.Text(context, node, Wanted) is not { } scalar)
        {
            return null;
        }

        string number = Prose.WordsOf(scalar.Text).FirstOrDefault() ?? "";
        if (OutlineAsk.NumberIn(number) is not ({ } most and >= 1 and <= 100_000))
        {
            context.Problems.Add(SheetProblems.WantedNumber(scalar.Span, scalar.Text, Wanted));
            return null;
        }

        int behind = scalar.Text.IndexOf(number, StringComparison.Ordinal) + number.Length;
        string rest = scalar.Text[behind..].Trim();
        bool isAny = rest is "" or "thing" or "things" or "card" or "cards" or "piece" or "pieces";
        _ = isAny ? 0 : KindWords.Read(context, scalar, behind).Count();
        return (int)most;
    }

    /// <summary>What speaks of actions and looks, read once all names are known: <c>when short</c>, <c>starts</c>.</summary>
    public static void ReadLater(LoadContext context, OutlineNode section, IReadOnlyCollection<ActionName> actions)
    {
        foreach (OutlineEntry entry in (section as OutlineMapping)?.Entries ?? [])
        {
            if (entry.Value is OutlineMapping mapping && context.Declared.Places.Values.FirstOrDefault(p => p.Place.DeclaredAt == entry.Key.Span) is { } facts)
            {
                (bool isEmpty, Look? look) = Starts(context, mapping, facts);
                context.Declared.Places[facts.Place] = facts with { WhenShort = WhenShort(context, mapping, actions), StartsEmpty = isEmpty, Starts = look };
            }
        }
    }

    private static ActionName? WhenShort(LoadContext context, OutlineMapping mapping, IReadOnlyCollection<ActionName> actions)
    {
        if (mapping.Find("when short")?.Value is not { } node || OutlineAsk.Text(context, node, "the action that is done when too little is left") is not { } scalar)
        {
            return null;
        }

        ActionName? action = actions.FirstOrDefault(a => a.Name == Prose.Fold(scalar.Text));
        if (action is null)
        {
            context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, scalar.Text, "an action", actions.Select(a => a.Name)));
        }

        return action;
    }

    // `starts: empty`, `starts: red cards`
    private static (bool IsEmpty, Look? Look) Starts(LoadContext context, OutlineMapping mapping, PlaceFacts facts)
    {
        if (mapping.Find("starts")?.Value is not { } node || OutlineAsk.Text(context, node, "what lies there at the start, such as 'empty'") is not { } scalar)
        {
            return (false, null);
        }

        if (Prose.Fold(scalar.Text) == "empty")
        {
            return (true, null);
        }

        Look? look = context.Formulas(new Scope()).Look(FormulaText.Of(scalar));
        if (look?.Kind is { } kind && !facts.Holds.IsEmpty && !facts.Holds.Contains(kind))
        {
            context.Problems.Add(SheetProblems.NeverHeld(scalar.Span, kind, facts.Place.Name));
        }

        return (false, look);
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
}
