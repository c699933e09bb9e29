using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>A card with its cells before they are read.</summary>
internal sealed record CardSource(Card Card, int Count)
{
    /// <summary>Cells of a CSV file by column.</summary>
    public Dictionary<string, CsvCell> Cells { get; init; } = [];

    /// <summary>Cells of the sheet by column; they replace those of the file.</summary>
    public Dictionary<string, OutlineNode> Changes { get; } = [];

    /// <summary>The values of its attributes, by index; -1 where it has none.</summary>
    public ImmutableArray<int> Values { get; init; } = [];

    public OutlineWords? Cite { get; set; }

    public string? Says { get; set; }
}

/// <summary>Words with their place, from a sheet or a table.</summary>
internal sealed record OutlineWords(string Text, SourceSpan Span);

/// <summary>Where the cards come from: <c>file</c>, <c>rows</c>, <c>names</c>, or every combination of <c>attributes</c>; then <c>changes</c>.</summary>
internal sealed class CardSources
{
    private readonly LoadContext _context;
    private readonly Kind _kind;
    private readonly ImmutableArray<AttributeFacts> _attributes;
    private readonly List<CardSource> _rows = [];
    private readonly Dictionary<string, CardSource> _byName = new(StringComparer.OrdinalIgnoreCase);

    private CardSources(LoadContext context, Kind kind, ImmutableArray<AttributeFacts> attributes) => (_context, _kind, _attributes) = (context, kind, attributes);

    public ImmutableArray<CardSource> Rows => [.. _rows];

    public static CardSources Read(LoadContext context, Kind kind, OutlineMapping mapping, ImmutableArray<AttributeFacts> attributes)
    {
        var sources = new CardSources(context, kind, attributes);
        if (mapping.Find("file")?.Value is OutlineScalar file)
        {
            sources.ReadFile(file);
        }

        if (mapping.Find("names") is { } names)
        {
            foreach (OutlineScalar name in OutlineAsk.Items(context, names.Value, "the names of the cards"))
            {
                sources.Add(OutlineAsk.Fold(name.Text), 1, name.Span);
            }
        }

        sources.ReadRows(mapping.Find("rows")?.Value, mayAdd: true);
        sources.ReadRows(mapping.Find("changes")?.Value, mayAdd: false);
        if (sources._rows.Count == 0 && !attributes.IsEmpty && mapping.Find("file") is null)
        {
            sources.AddCombinations(mapping);
        }

        return sources;
    }

    private void ReadFile(OutlineScalar file)
    {
        FolderReading reading = _context.Folder.Read(file.Text.Trim());
        if (reading.Text is not { } text)
        {
            _context.Problems.Add(SheetProblems.NotReadable(file.Span, file.Text, reading.Refusal));
            return;
        }

        if (CsvReader.Read(text, _context.Problems) is not { } table)
        {
            return;
        }

        if (table.ColumnOf("name") is not { } nameAt)
        {
            _context.Problems.Add(SheetProblems.NoNameColumn(table.Header[0].Span));
            return;
        }

        foreach (CsvRow row in table.Rows)
        {
            AddRow(table, row, nameAt);
        }
    }

    private void AddRow(CsvTable table, CsvRow row, int nameAt)
    {
        var cells = new Dictionary<string, CsvCell>(StringComparer.Ordinal);
        for (int i = 0; i < table.Header.Length; i++)
        {
            cells.TryAdd(table.Header[i].Text, row.Cells[i]);
        }

        long count = cells.TryGetValue("count", out CsvCell? c) && c.Text.Length > 0 ? CountIn(c) : 1;
        CardSource? added = Add(row.Cells[nameAt].Text, (int)count, row.Cells[nameAt].Span, cells);
        if (added is not null && cells.TryGetValue("cite", out CsvCell? cite) && cite.Text.Length > 0)
        {
            added.Cite = new OutlineWords(cite.Text, cite.Span);
        }

        if (added is not null && cells.TryGetValue("says", out CsvCell? says) && says.Text.Length > 0)
        {
            added.Says = says.Text;
        }
    }

    private long CountIn(CsvCell cell)
    {
        if (OutlineAsk.NumberIn(cell.Text) is { } count and >= 0 and <= 1000)
        {
            return count;
        }

        _context.Problems.Add(SheetProblems.WantedNumber(cell.Span, cell.Text, "how many there are of this card"));
        return 1;
    }

    private CardSource? Add(string name, int count, SourceSpan at, Dictionary<string, CsvCell>? cells = null, ImmutableArray<int>? values = null)
    {
        if (name.Length == 0)
        {
            _context.Problems.Add(SheetProblems.WantedText(at, $"the name of a {_kind.Name}"));
            return null;
        }

        var card = new CardSource(new Card(name, _kind, _rows.Count, at), count) { Cells = cells ?? [], Values = values ?? ValuesIn(cells) };
        if (!_byName.TryAdd(name, card))
        {
            _context.Problems.Add(SheetProblems.NameTaken(at, name, card.Card.Role, _byName[name].Card));
            return null;
        }

        _rows.Add(card);
        return card;
    }

    // A column that lists words gives the attribute of the card.
    private ImmutableArray<int> ValuesIn(Dictionary<string, CsvCell>? cells)
    {
        var values = ImmutableArray.CreateBuilder<int>();
        foreach (AttributeFacts attribute in _attributes)
        {
            CsvCell? cell = cells?.GetValueOrDefault(attribute.Attribute.Name);
            int value = cell is null ? -1 : attribute.Values.ToList().FindIndex(v => v.Name == cell.Text);
            if (cell is { Text.Length: > 0 } && value < 0)
            {
                _context.Problems.Add(SheetProblems.UnknownWord(cell.Span, cell.Text, $"a value of {attribute.Attribute.Name}", attribute.Values.Select(v => v.Name)));
            }

            values.Add(attribute.Attribute.IsState ? 0 : value);
        }

        return values.ToImmutable();
    }

    private void ReadRows(OutlineNode? node, bool mayAdd)
    {
        foreach (OutlineEntry entry in node is null ? [] : OutlineAsk.Entries(_context, node, "the cards by name"))
        {
            string name = OutlineAsk.Fold(entry.Key.Text);
            CardSource? row = mayAdd ? Add(name, 1, entry.Key.Span) : _byName.GetValueOrDefault(name);
            if (row is null)
            {
                if (!mayAdd)
                {
                    _context.Problems.Add(SheetProblems.UnknownWord(entry.Key.Span, name, $"a {_kind.Name}", _byName.Keys));
                }

                continue;
            }

            foreach (OutlineEntry cell in OutlineAsk.Entries(_context, entry.Value, "cells by column"))
            {
                ReadCell(row, cell);
            }
        }
    }

    private static void ReadCell(CardSource row, OutlineEntry cell)
    {
        switch (cell.Key.Text, cell.Value)
        {
            case ("cite", OutlineScalar cite):
                row.Cite = new OutlineWords(cite.Text, cite.Span);
                break;
            case ("says", OutlineScalar says):
                row.Says = OutlineAsk.Fold(says.Text);
                break;
            default:
                row.Changes[OutlineAsk.Fold(cell.Key.Text)] = cell.Value;
                break;
        }
    }

    // `attributes: {suit: […], rank: […]}` alone: one card of each combination, called as `called: (rank) of (suit)` says.
    private void AddCombinations(OutlineMapping mapping)
    {
        ImmutableArray<AttributeFacts> fixedOnes = [.. _attributes.Where(a => !a.Attribute.IsState && !a.HoldsPlayer)];
        string pattern = mapping.Find("called")?.Value is OutlineScalar called ? OutlineAsk.Fold(called.Text) : string.Join(' ', fixedOnes.Select(a => $"({a.Attribute.Name})")) + " " + _kind.Name;
        IEnumerable<ImmutableArray<AttributeValue>> combinations = [[]];
        foreach (AttributeFacts attribute in fixedOnes)
        {
            combinations = combinations.SelectMany(c => attribute.Values.Select(c.Add));
        }

        foreach (ImmutableArray<AttributeValue> combination in combinations.Take(6000))
        {
            string name = combination.Aggregate(pattern, (text, v) => text.Replace($"({v.Attribute.Name})", v.Name, StringComparison.Ordinal));
            ImmutableArray<int> values = [.. _attributes.Select(a => combination.FirstOrDefault(v => ReferenceEquals(v.Attribute, a.Attribute))?.Index ?? 0)];
            Add(name, 1, _kind.DeclaredAt!.Value, null, values);
        }
    }
}
