using System.Collections.Immutable;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads the cells of cards, from a CSV file or from the sheet.</summary>
internal static class CellReader
{
    /// <summary>A cell of a CSV file; it is not empty.</summary>
    public static Term Read(LoadContext context, CsvCell cell, ColumnText column, string owner, Scope scope)
    {
        var words = new FormulaText(cell.Text, cell.SpanOf);
        return column.Form switch
        {
            CellForm.Drawing => Drawn(context, DrawingText.Read(cell.Text, cell.SpanOf, context.Problems), Origin.Of(cell.Span)),
            CellForm.Steps => new Term.Text(cell.Text, Origin.Of(cell.Span)) { Steps = Steps(context, scope).Read(words) },
            CellForm.Numbers => Numbers(context, words, owner, scope),
            _ => context.Formulas(scope).Formula(words, column.Column.Sort, owner),
        };
    }

    /// <summary>A cell that stands in the sheet.</summary>
    public static Term Read(LoadContext context, OutlineNode node, ColumnText column, string owner, Scope scope)
    {
        switch (node)
        {
            case OutlineEmpty:
                return new Term.Nothing(Origin.Of(node.Span));
            case OutlineMapping mapping when ForkReader.OfValue(context, mapping, owner) is { } fork:
                return context.Formulas(scope).Fork(fork.Choice, [.. fork.Values.Select(v => Read(context, v, column, owner, scope))], mapping.Span);
            case OutlineScalar drawn when column.Form == CellForm.Drawing:
                return Drawn(context, DrawingText.Read(drawn, context.Problems), Origin.Of(drawn.Span));
            case OutlineSequence list when column.Form == CellForm.Numbers:
                ImmutableArray<Term> items = [.. list.Items.Select(i => context.Formulas(scope).Value(i, Sort.Number, owner))];
                return new Term.Listed(items, Sort.ListOf(Sort.Number), Origin.Of(list.Span));
            case OutlineScalar or OutlineSequence or OutlineMapping when column.Form == CellForm.Steps:
                return new Term.Text(node.Span.Text, Origin.Of(node.Span)) { Steps = Steps(context, scope).Read(node) };
            default:
                return context.Formulas(scope).Value(node, column.Column.Sort, owner);
        }
    }

    private static StepReader Steps(LoadContext context, Scope scope) => new(context.Declared, context.Declared.Names, scope, context.Problems);

    private static Term Drawn(LoadContext context, DrawingText text, Origin origin) =>
        DrawingReader.Read(context, text) is { } drawing ? new Term.Drawn(drawing, origin) : new Term.NotYet("a drawing with a mistake in it", Sort.Drawing, origin);

    private static Term.Listed Numbers(LoadContext context, FormulaText words, string owner, Scope scope)
    {
        var items = ImmutableArray.CreateBuilder<Term>();
        int at = 0;
        foreach (string part in words.Text.Split((char[])[' ', ','], System.StringSplitOptions.RemoveEmptyEntries))
        {
            at = words.Text.IndexOf(part, at, System.StringComparison.Ordinal);
            items.Add(context.Formulas(scope).Formula(words.Part(at, part.Length), Sort.Number, owner));
            at += part.Length;
        }

        return new Term.Listed(items.ToImmutable(), Sort.ListOf(Sort.Number), Origin.Of(words.Span));
    }
}
