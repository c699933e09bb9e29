using System.Collections.Immutable;

namespace Rostrum.Text.Tables;

/// <summary>A table from a CSV file: one header line, then rows with as many cells as the header has.</summary>
/// <param name="Source">The file.</param>
/// <param name="Header">The names of the columns, in order; never empty.</param>
/// <param name="Rows">The rows in the order of the file; may be empty. Each has one cell a column: what a row lacked is empty, what it had
/// too much is cut off.</param>
public sealed record CsvTable(SourceText Source, ImmutableArray<CsvCell> Header, ImmutableArray<CsvRow> Rows)
{
    /// <summary>The 0-based index of the column with this name (exact spelling; the first of two equal ones), or null.</summary>
    public int? ColumnOf(string name)
    {
        for (int i = 0; i < Header.Length; i++)
        {
            if (Header[i].Text == name)
            {
                return i;
            }
        }

        return null;
    }
}

/// <summary>A row of a table.</summary>
/// <param name="Span">From its first cell to its last; its line end is left out.</param>
/// <param name="Cells">One a column.</param>
public sealed record CsvRow(SourceSpan Span, ImmutableArray<CsvCell> Cells);

/// <summary>A cell of a table.</summary>
/// <param name="Text">What it says, blanks at both ends and quotes left out; empty for an empty cell.</param>
/// <param name="Span">Where it was written, quotes included; an empty spot where a row was too short.</param>
public sealed record CsvCell(string Text, SourceSpan Span)
{
    private readonly ImmutableArray<int> _offsets = [];

    internal CsvCell(string text, SourceSpan span, ImmutableArray<int> offsets)
        : this(text, span) => _offsets = offsets;

    /// <summary>The place in the file of a part of <see cref="Text"/>.</summary>
    /// <param name="start">0-based, in <see cref="Text"/>.</param>
    /// <param name="length">Code units.</param>
    public SourceSpan SpanOf(int start, int length)
    {
        int from = OffsetOf(start);
        return Span.Source.Span(from, OffsetOf(start + length) - from);
    }

    private int OffsetOf(int at) => _offsets.IsEmpty ? Span.Start + at : _offsets[Math.Min(at, _offsets.Length - 1)];
}
