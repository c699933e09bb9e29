using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>What the cells of a column are.</summary>
internal enum CellForm
{
    /// <summary>A number or a formula that gives one.</summary>
    Number,

    /// <summary>A truth.</summary>
    Condition,

    /// <summary>A pattern.</summary>
    Drawing,

    /// <summary>Any formula.</summary>
    Formula,

    /// <summary>Several numbers.</summary>
    Numbers,

    /// <summary>Steps, which <c>do</c> carries out.</summary>
    Steps,
}

/// <summary>A column with what its cells are.</summary>
internal sealed record ColumnText(Column Column, CellForm Form);

/// <summary>Reads <c>columns</c>: <c>{worth: number, picture: drawing, asks: condition, suit: [red, blue], cite: source}</c>.</summary>
internal static class CardColumns
{
    private static readonly (string Word, CellForm Form, Sort Sort)[] Forms =
    [
        ("number", CellForm.Number, Sort.Number), ("condition", CellForm.Condition, Sort.Truth), ("drawing", CellForm.Drawing, Sort.Drawing),
        ("formula", CellForm.Formula, Sort.Any), ("numbers", CellForm.Numbers, Sort.ListOf(Sort.Number)), ("steps", CellForm.Steps, Sort.Text),
    ];

    public static ImmutableArray<ColumnText> Read(LoadContext context, Kind kind, OutlineMapping mapping)
    {
        var columns = ImmutableArray.CreateBuilder<ColumnText>();
        foreach (OutlineEntry entry in Entries(context, kind, mapping))
        {
            if (entry.Value is OutlineSequence || OutlineAsk.Text(context, entry.Value, "what the column holds, such as 'number' or 'drawing'") is not { } form || form.Text is "source" or "text")
            {
                continue;
            }

            (string word, CellForm cell, Sort sort) = Forms.FirstOrDefault(f => f.Word == Prose.Fold(form.Text));
            if (word is null)
            {
                context.Problems.Add(SheetProblems.UnknownWord(form.Span, form.Text, "something that a column can hold", [.. Forms.Select(f => f.Word), "source", "text"]));
                continue;
            }

            var column = new Column(Prose.Fold(entry.Key.Text), kind, sort, columns.Count, entry.Key.Span);
            context.Declare(column);
            columns.Add(new ColumnText(column, cell));
        }

        return columns.ToImmutable();
    }

    /// <summary>Columns that list their words are attributes of the cards.</summary>
    public static IEnumerable<AttributeFacts> Attributes(LoadContext context, Kind kind, OutlineMapping mapping, int first)
    {
        foreach (OutlineEntry entry in Entries(context, kind, mapping).Where(e => e.Value is OutlineSequence))
        {
            var attribute = new Attribute(Prose.Fold(entry.Key.Text), kind, isState: false, first++, entry.Key.Span);
            context.Declare(attribute);
            yield return new AttributeFacts(attribute, AttributeReader.Values(context, attribute, entry.Value));
        }
    }

    private static ImmutableArray<OutlineEntry> Entries(LoadContext context, Kind kind, OutlineMapping mapping) =>
        mapping.Find("columns") is { } columns ? OutlineAsk.Entries(context, columns.Value, $"the columns of {kind.Plural}") : [];
}
