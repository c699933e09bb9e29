using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>Reads the rows of one version of a table.</summary>
internal static class TableReader
{
    private static readonly string[] NoRows = ["rows", "beyond", "says", "cite", "readings", "follow", "why", "conflict", "called", "never", "how to say"];

    public static TableVersion Read(LoadContext context, Table table, OutlineMapping text)
    {
        OutlineMapping rows = OutlineMerge.Without(text, NoRows);
        if (text.Find("rows") is { } given)
        {
            rows = rows with { Entries = OutlineAsk.Entries(context, given.Value, "the rows of the table, such as '1: 3'") };
        }

        ImmutableArray<TableRow> read = [.. rows.Entries.Select(e => Row(context, table, e)).OfType<TableRow>().OrderBy(r => r.Low ?? 0)];
        WarnOfGaps(context, table, read, PlaceOf(text, rows));
        (TableBeyond beyond, Term? term) = Beyond(context, table, text.Find("beyond")?.Value);
        return new TableVersion(read, beyond, term);
    }

    private static (TableBeyond Beyond, Term? Term) Beyond(LoadContext context, Table table, OutlineNode? node) => node switch
    {
        null => (TableBeyond.Nothing, null),
        OutlineScalar { Text: "last" } => (TableBeyond.Last, null),
        OutlineScalar { Text: "nothing" } => (TableBeyond.Nothing, null),
        _ => (TableBeyond.Given, context.Formulas(new Scope()).Value(node, Sort.Any, table.Name)),
    };

    private static TableRow? Row(LoadContext context, Table table, OutlineEntry entry)
    {
        Term value = entry.Value is OutlineSequence list
            ? List(context, table, list)
            : context.Formulas(new Scope()).Value(entry.Value, Sort.Any, $"{table.Name} of {entry.Key.Text}");
        string key = Prose.Fold(entry.Key.Text);
        if (OutlineAsk.NumberIn(key) is { } number)
        {
            return new TableRow(number, number, null, value);
        }

        if (key.EndsWith(" or more", StringComparison.Ordinal) && OutlineAsk.NumberIn(key[..^8]) is { } least)
        {
            return new TableRow(least, null, null, value);
        }

        string[] ends = key.Split(" to ", 2);
        if (ends.Length == 2 && OutlineAsk.NumberIn(ends[0]) is { } low && OutlineAsk.NumberIn(ends[1]) is { } high)
        {
            return new TableRow(low, high, null, value);
        }

        return ByValue(context, entry, key, value);
    }

    private static TableRow? ByValue(LoadContext context, OutlineEntry entry, string key, Term value)
    {
        if (context.Declared.Names.Find(key).Select(s => s.Symbol).OfType<AttributeValue>().FirstOrDefault() is { } word)
        {
            return new TableRow(null, null, word, value);
        }

        IEnumerable<string> known = context.Declared.Names.All.Where(n => n.Symbol is AttributeValue).Select(n => n.Words);
        context.Problems.Add(SheetProblems.UnknownWord(entry.Key.Span, key, "a number, a range such as '3 to 5', '7 or more' or a value", known));
        return null;
    }

    private static Term.Listed List(LoadContext context, Table table, OutlineSequence list)
    {
        ImmutableArray<Term> items = [.. list.Items.Select(i => context.Formulas(new Scope()).Value(i, Sort.Any, table.Name))];
        Sort element = items.Aggregate(Sort.Any, (sum, i) => sum.Join(i.Sort) ?? Sort.Any);
        return new Term.Listed(items, Sort.ListOf(element), Origin.Of(list.Span));
    }

    private static SourceSpan PlaceOf(OutlineMapping text, OutlineMapping rows) =>
        text.Find("rows")?.Value.Span ?? (rows.Entries.IsEmpty || rows.Entries.Length == text.Entries.Length ? text.Span : rows.Entries[0].Key.Span.To(rows.Entries[^1].Value.Span));

    private static void WarnOfGaps(LoadContext context, Table table, ImmutableArray<TableRow> rows, SourceSpan at)
    {
        for (int i = 1; i < rows.Length; i++)
        {
            if (rows[i].Low is { } low && rows[i - 1].High is { } high && low > high + 1)
            {
                context.Problems.Add(SheetProblems.TableGap(at, table.Name, high + 1, low - 1));
            }
        }
    }
}
