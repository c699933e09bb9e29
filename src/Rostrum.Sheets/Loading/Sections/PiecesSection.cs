using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>pieces</c> and <c>dice</c>: kinds with attributes, states and counts.</summary>
internal static class PiecesSection
{
    private const string CountOfEach = "count of each ";

    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the kinds of pieces", "apple: {count: 12}"))
        {
            if (Mapping(context, entry) is not { } mapping)
            {
                continue;
            }

            OutlineAsk.CheckKeys(context, mapping, "pieces", k => k.StartsWith(CountOfEach, StringComparison.Ordinal));
            Kind kind = AttributeReader.Declare(context, entry, mapping, KindFamily.Piece);
            ImmutableArray<AttributeFacts> attributes = AttributeReader.Read(context, kind, mapping);
            context.Declared.Kinds[kind] = new KindFacts(kind, attributes, Supply(context, kind, attributes, mapping), context.Cite(mapping)) { Shape = ShapeReader.Read(context, mapping) };
            AppearanceReader.Read(context, kind, attributes, mapping);
        }
    }

    public static void ReadDice(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the dice", "die: {count: 2, faces: 1 to 6}"))
        {
            if (Mapping(context, entry) is not { } mapping)
            {
                continue;
            }

            OutlineAsk.CheckKeys(context, mapping, "dice");
            Kind kind = AttributeReader.Declare(context, entry, mapping, KindFamily.Die);
            if (mapping.Find("faces") is null && !OutlineAsk.HasUnknownKey(mapping, "dice"))
            {
                context.Problems.Add(SheetProblems.Missing(entry.Key.Span, kind.Name, "faces", "faces: 1 to 6"));
            }

            var face = new Attribute("face", kind, isState: true, 0, entry.Key.Span);
            ImmutableArray<AttributeValue> faces = mapping.Find("faces") is { } f ? AttributeReader.Values(context, face, f.Value) : [];
            context.Declared.Kinds[kind] = new KindFacts(kind, [new AttributeFacts(face, faces)], Supply(context, kind, [], mapping), context.Cite(mapping));
        }
    }

    /// <summary>How many there are: <c>count</c>, <c>each player</c>, <c>count of each glaze: {bowl: 8}</c>.</summary>
    internal static Supply Supply(LoadContext context, Kind kind, ImmutableArray<AttributeFacts> attributes, OutlineMapping mapping)
    {
        long? total = mapping.Find("count") is { } count ? OutlineAsk.Number(context, count.Value, "how many there are", least: 0) : null;
        long? own = mapping.Find("each player") is { } each ? OutlineAsk.Number(context, each.Value, "how many each player has", least: 0) : null;
        var rows = ImmutableArray.CreateBuilder<SupplyRow>();
        foreach (OutlineEntry entry in mapping.Entries.Where(e => e.Key.Text.StartsWith(CountOfEach, StringComparison.Ordinal)))
        {
            AddRows(context, kind, attributes, entry, rows);
        }

        long? sum = rows.Count > 0 ? rows.Sum(r => r.Count) : null;
        return new Supply(total ?? own ?? sum, rows.ToImmutable(), own is not null);
    }

    private static void AddRows(LoadContext context, Kind kind, ImmutableArray<AttributeFacts> attributes, OutlineEntry entry, ImmutableArray<SupplyRow>.Builder rows)
    {
        string name = Prose.Fold(entry.Key.Text[CountOfEach.Length..]);
        AttributeFacts? each = attributes.FirstOrDefault(a => a.Attribute.Name == name);
        if (each is null)
        {
            context.Problems.Add(SheetProblems.UnknownWord(entry.Key.Span, name, $"an attribute of {kind.Name}", attributes.Select(a => a.Attribute.Name)));
            return;
        }

        if (entry.Value is OutlineScalar scalar)
        {
            long count = OutlineAsk.Number(context, scalar, "how many there are", least: 0) ?? 0;
            rows.AddRange(each.Values.Select(v => new SupplyRow([v], count)));
            return;
        }

        foreach (OutlineEntry row in OutlineAsk.Entries(context, entry.Value, "values with how many there are"))
        {
            AttributeValue? value = attributes.SelectMany(a => a.Values).FirstOrDefault(v => v.Name == Prose.Fold(row.Key.Text));
            if (value is null)
            {
                context.Problems.Add(SheetProblems.UnknownWord(row.Key.Span, row.Key.Text, $"a value of {kind.Name}", attributes.SelectMany(a => a.Values).Select(v => v.Name)));
            }
            else if (OutlineAsk.Number(context, row.Value, "how many there are", least: 0) is { } count)
            {
                // Bowls of each glaze; a glaze of its own attribute is simply counted.
                rows.AddRange(ReferenceEquals(value.Attribute, each.Attribute) ? [new SupplyRow([value], count)] : each.Values.Select(v => new SupplyRow([value, v], count)));
            }
        }
    }

    private static OutlineMapping? Mapping(LoadContext context, OutlineEntry entry)
    {
        if (entry.Value is OutlineEmpty)
        {
            return new OutlineMapping(entry.Value.Span, []);
        }

        // A kind that is told wrongly is declared all the same, so that what speaks of it is not wrong too.
        string example = entry.Value is OutlineScalar scalar && OutlineAsk.NumberIn(scalar.Text) is { } count ? $"{{count: {count}}}" : "{count: 12}";
        OutlineMapping? mapping = OutlineAsk.Mapping(context, entry, $"what '{Prose.Clip(entry.Key.Text)}' is like", example);
        return mapping ?? (OutlineAsk.IsLeftOut(entry.Value) ? null : new OutlineMapping(entry.Value.Span, []));
    }
}
