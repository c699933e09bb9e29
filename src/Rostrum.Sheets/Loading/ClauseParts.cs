using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>What the clauses of several sections have in common.</summary>
internal static class ClauseParts
{
    /// <summary>The citation of a clause; a warning where it has none, once the sheet declares sources.</summary>
    public static Citation? CiteOrWarn(LoadContext context, OutlineMapping mapping, OutlineScalar key, string name)
    {
        Citation? cite = context.Cite(mapping);
        if (mapping.Find("cite") is null && context.Sources.Count > 0)
        {
            context.Problems.Add(SheetProblems.NoCitation(key.Span, name, Example(context.Sources.Values)));
        }

        return cite;
    }

    // A page that is there, of the source with most pages.
    private static string Example(IEnumerable<RuleSource> sources)
    {
        RuleSource source = sources.OrderByDescending(s => s.Pages ?? 0).First();
        return source.Pages is { } pages ? $"{source.Name} {Math.Min(pages, 8)}" : source.Name;
    }

    /// <summary>A value as it reads in the sheet, on one line.</summary>
    public static string Words(OutlineNode? node) => node switch
    {
        null or OutlineEmpty => "",
        OutlineScalar scalar => Prose.Fold(scalar.Text),
        OutlineSequence list => string.Join("; ", list.Items.Select(Words)),
        OutlineMapping mapping => string.Join(", ", mapping.Entries.Select(e => $"{Prose.Fold(e.Key.Text)}: {Words(e.Value)}")),
        _ => "",
    };
}
