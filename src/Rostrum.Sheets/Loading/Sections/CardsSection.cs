using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>cards</c>: names and columns first, so that formulas may speak of them; cells at the end.</summary>
internal sealed class CardsSection(LoadContext context)
{
    private const int MostCards = 5000;
    private readonly List<CardText> _texts = [];

    /// <summary>Declares kinds of cards, their columns and the cards by name.</summary>
    public void Declare(OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the kinds of cards"))
        {
            if (OutlineAsk.Mapping(context, entry, "what the cards are like") is not { } mapping)
            {
                continue;
            }

            OutlineAsk.CheckKeys(context, mapping, "cards");
            Kind kind = AttributeReader.Declare(context, entry, mapping, KindFamily.Card);
            ImmutableArray<AttributeFacts> attributes = AttributeReader.Read(context, kind, mapping);
            ImmutableArray<ColumnText> columns = CardColumns.Read(context, kind, mapping);
            attributes = attributes.AddRange(CardColumns.Attributes(context, kind, mapping, attributes.Length));
            CardSources sources = CardSources.Read(context, kind, mapping, attributes);
            ImmutableArray<CardSource> rows = Within(kind, sources.Rows, entry);
            _texts.Add(new CardText(kind, columns, rows, attributes));
            var supply = new Supply(rows.IsEmpty ? Unnamed(mapping) : rows.Sum(r => (long)r.Count), []);
            context.Declared.Kinds[kind] = new KindFacts(kind, attributes, supply, context.Cite(mapping));
            foreach (CardSource row in rows)
            {
                context.Declare(row.Card);
            }
        }
    }

    /// <summary>The cards with their cells.</summary>
    public ImmutableArray<CardTable> Bind() =>
        [.. _texts.Select(t => new CardTable(t.Kind, [.. t.Columns.Select(c => c.Column)], [.. t.Rows.Select(r => Row(t, r))]))];

    // `count` says how many there are of cards that nobody names.
    private long? Unnamed(OutlineMapping mapping) => mapping.Find("count") is { } count ? OutlineAsk.Number(context, count.Value, "how many there are", least: 0) : null;

    private ImmutableArray<CardSource> Within(Kind kind, ImmutableArray<CardSource> rows, OutlineEntry entry)
    {
        if (rows.Length <= MostCards)
        {
            return rows;
        }

        context.Problems.Add(SheetProblems.MoreRowsThanAllowed(entry.Key.Span, kind.Plural, MostCards));
        return rows[..MostCards];
    }

    private CardRow Row(CardText text, CardSource row)
    {
        var scope = new Scope();
        ImmutableArray<Term> cells = [.. text.Columns.Select(c => Cell(text, row, c, scope))];
        Citation? cite = row.Cite is { } words ? CitationReader.Read(context, words.Text, words.Span) : null;
        return new CardRow(row.Card, row.Count, cells, scope.FrameSize, cite, row.Says) { Values = row.Values };
    }

    private Term Cell(CardText text, CardSource row, ColumnText column, Scope scope)
    {
        string owner = $"{column.Column.Name} of {row.Card.Name}";
        if (row.Changes.TryGetValue(column.Column.Name, out OutlineNode? changed))
        {
            return CellReader.Read(context, changed, column, owner, scope);
        }

        return row.Cells.TryGetValue(column.Column.Name, out CsvCell? cell) && cell.Text.Length > 0
            ? CellReader.Read(context, cell, column, owner, scope)
            : new Term.Nothing(Origin.Of(row.Card.DeclaredAt!.Value));
    }

    private sealed record CardText(Kind Kind, ImmutableArray<ColumnText> Columns, ImmutableArray<CardSource> Rows, ImmutableArray<AttributeFacts> Attributes);
}
