using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads how pieces are drawn: <c>outlines</c>, <c>colours</c>, <c>emblems</c>, <c>flaws</c>, each a table from values to names of the picture room.</summary>
internal static class AppearanceReader
{
    public static void Read(LoadContext context, Kind kind, ImmutableArray<AttributeFacts> attributes, OutlineMapping mapping)
    {
        Appearance known = context.Appearance;
        context.Appearance = new Appearance(
            known.Outlines.AddRange(Rows(context, kind, attributes, mapping, "outlines")),
            known.Colours.AddRange(Rows(context, kind, attributes, mapping, "colours")),
            known.Emblems.AddRange(Rows(context, kind, attributes, mapping, "emblems")),
            known.Flaws.AddRange(Rows(context, kind, attributes, mapping, "flaws")));
    }

    private static IEnumerable<(Named Of, string Drawn)> Rows(LoadContext context, Kind kind, ImmutableArray<AttributeFacts> attributes, OutlineMapping mapping, string key)
    {
        if (mapping.Find(key) is not { } entry)
        {
            yield break;
        }

        if (entry.Value is OutlineScalar one)
        {
            yield return (kind, Prose.Fold(one.Text));
            yield break;
        }

        foreach (OutlineEntry row in OutlineAsk.Entries(context, entry.Value, $"the {key} of {kind.Name}"))
        {
            string name = Prose.Fold(row.Key.Text);
            Named? of = name == kind.Name ? kind : attributes.SelectMany(a => a.Values).FirstOrDefault(v => v.Name == name);
            if (of is null)
            {
                context.Problems.Add(SheetProblems.UnknownWord(row.Key.Span, name, $"a value of {kind.Name}", attributes.SelectMany(a => a.Values).Select(v => v.Name)));
            }
            else if (OutlineAsk.Text(context, row.Value, "a name from the list of the pictures") is { } drawn)
            {
                yield return (of, Prose.Fold(drawn.Text));
            }
        }
    }
}
