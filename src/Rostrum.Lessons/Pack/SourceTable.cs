using Rostrum.Lessons.Page;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>The sources of a sheet with the pages that its clauses lean on.</summary>
internal static class SourceTable
{
    /// <summary>A row for each source, weightiest first; those without a rank in the order of the sheet.</summary>
    public static IEnumerable<PageSource> Of(Sheet sheet)
    {
        ILookup<RuleSource, int?> pages = SheetReadBack.Of(sheet).Select(c => c.Cite).OfType<Citation>().ToLookup(c => c.Source, c => c.Page);
        return sheet.Sources.OrderBy(s => s.Rank ?? int.MaxValue).Select(s => Row(s, [.. pages[s].OfType<int>().Distinct().Order()]));
    }

    private static PageSource Row(RuleSource source, int[] pages)
    {
        string printing = source.Printing is not null ? $"{source.Printing} printing" : source.Date ?? "";
        return new PageSource(source.Title, printing, source.Rank, Ranges(pages));
    }

    /// <summary><c>2 to 9, 11, 12</c>.</summary>
    internal static string Ranges(int[] pages)
    {
        var parts = new List<string>();
        for (int i = 0; i < pages.Length; i++)
        {
            int first = i;
            while (i + 1 < pages.Length && pages[i + 1] == pages[i] + 1)
            {
                i++;
            }

            parts.Add(i - first > 1 ? $"{pages[first]} to {pages[i]}" : string.Join(", ", pages[first..(i + 1)]));
        }

        return Prose.Clip(string.Join(", ", parts), 200);
    }
}
