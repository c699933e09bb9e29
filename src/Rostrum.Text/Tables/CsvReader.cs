using System.Collections.Immutable;

namespace Rostrum.Text.Tables;

/// <summary>Reads a table with a header line; cells stand between commas or semicolons, which the header decides.</summary>
/// <remarks>Quotes and doubled quotes as in RFC 4180 (from memory); a quoted cell may go over several lines. Blank lines are skipped.</remarks>
public static class CsvReader
{
    /// <summary>Reads a file into a table.</summary>
    /// <param name="text">The whole file; a byte order sign at its beginning is skipped.</param>
    /// <param name="problems">Receives what is wrong, ids ROS0150 to ROS0156.</param>
    /// <returns>The table, as far as it could be read; null where there is no header line.</returns>
    public static CsvTable? Read(SourceText text, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(problems);
        var scanner = new CsvScanner(text, problems);
        if (scanner.ReadRow() is not { } header)
        {
            problems.Add(CsvProblems.NoHeader(text.Span(0, 0)));
            return null;
        }

        CheckHeader(header, problems);
        var rows = ImmutableArray.CreateBuilder<CsvRow>();
        while (scanner.ReadRow() is { } row)
        {
            ReportDates(row, header.Cells, problems);
            rows.Add(Fitted(row, header.Cells, scanner.IsRowBroken ? null : problems));
        }

        return new CsvTable(text, header.Cells, rows.ToImmutable());
    }

    private static void CheckHeader(CsvRow header, DiagnosticBag problems)
    {
        var first = new Dictionary<string, CsvCell>(StringComparer.Ordinal);
        for (int i = 0; i < header.Cells.Length; i++)
        {
            CsvCell name = header.Cells[i];
            if (name.Text.Length == 0)
            {
                problems.Add(CsvProblems.EmptyName(name.Span, i + 1));
            }
            else if (!first.TryAdd(name.Text, name))
            {
                problems.Add(CsvProblems.DuplicateName(name.Span, name.Text, first[name.Text].Span));
            }
        }
    }

    private static void ReportDates(CsvRow row, ImmutableArray<CsvCell> header, DiagnosticBag problems)
    {
        for (int i = 0; i < Math.Min(header.Length, row.Cells.Length); i++)
        {
            if (SpreadsheetDate.Matches(row.Cells[i].Text) && !header[i].Text.Contains("date", StringComparison.OrdinalIgnoreCase))
            {
                problems.Add(CsvProblems.MadeADate(row.Cells[i].Span, row.Cells[i].Text, header[i].Text));
            }
        }
    }

    private static CsvRow Fitted(CsvRow row, ImmutableArray<CsvCell> header, DiagnosticBag? problems)
    {
        if (row.Cells.Length == header.Length)
        {
            return row;
        }

        problems?.Add(CsvProblems.RowLength(row.Span, row.Cells.Length, header.Length));
        var empty = new CsvCell("", row.Span.Part(row.Span.Length, 0));
        IEnumerable<CsvCell> missing = Enumerable.Repeat(empty, Math.Max(0, header.Length - row.Cells.Length));
        return row with { Cells = [.. row.Cells.Take(header.Length), .. missing] };
    }
}
