using Rostrum.Lessons.Page;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>The sources of a sheet with the pages that its clauses lean on.</summary>
internal static class SourceTable
{
    public static PageSource Row(Sheet sheet, RuleSource source)
    {
        int[] pages = [.. SheetReadBack.Of(sheet).Select(c => c.Cite).OfType<Citation>().Where(c => ReferenceEquals(c.Source, source)).Select(c => c.Page).OfType<int>().Distinct().Order()];
        string printing = source.Printing is not null ? $"{source.Printing} printing" : source.Date ?? "";
        return new PageSource(source.Title, printing, source.Rank ?? 99, Ranges(pages));
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
