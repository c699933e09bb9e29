using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>A card with its cells before they are read.</summary>
internal sealed record CardSource(Card Card)
{
    /// <summary>How many there are of it.</summary>
    public int Count { get; set; } = 1;

    /// <summary>Cells of a CSV file by column.</summary>
    public Dictionary<string, CsvCell> Cells { get; init; } = [];

    /// <summary>Cells of the sheet by column; they replace those of the file.</summary>
    public Dictionary<string, OutlineNode> Changes { get; } = [];

    /// <summary>The values of its attributes, by index; -1 where it has none.</summary>
    public ImmutableArray<int> Values { get; set; } = [];

    public OutlineWords? Cite { get; set; }

    public string? Says { get; set; }
}

/// <summary>Words with their place, from a sheet or a table.</summary>
internal sealed record OutlineWords(string Text, SourceSpan Span);

/// <summary>Where the cards come from: <c>file</c>, <c>rows</c>, <c>names</c>, or every combination of <c>attributes</c>; then <c>changes</c>.</summary>
internal sealed class CardSources
{
    private const int MostOfOne = 1000;
    private static readonly string[] OwnColumns = ["name", "count", "cite", "says"];

    private readonly LoadContext _context;
    private readonly HashSet<string> _columns = [];
    private readonly Kind _kind;
    private readonly ImmutableArray<AttributeFacts> _attributes;
    private readonly List<CardSource> _rows = [];
    private readonly Dictionary<string, CardSource> _byName = new(StringComparer.OrdinalIgnoreCase);

    private CardSources(LoadContext context, Kind kind, ImmutableArray<AttributeFacts> attributes) => (_context, _kind, _attributes) = (context, kind, attributes);

    public ImmutableArray<CardSource> Rows => [.. _rows];

    public static CardSources Read(LoadContext context, Kind kind, OutlineMapping mapping, ImmutableArray<AttributeFacts> attributes)
    {
        var sources = new CardSources(context, kind, attributes);
        sources._columns.UnionWith((mapping.Find("columns")?.Value as OutlineMapping)?.Entries.Select(e => Prose.Fold(e.Key.Text)) ?? []);
        if (mapping.Find("file")?.Value is OutlineScalar file)
        {
            sources.ReadFile(file, mapping);
        }

        if (mapping.Find("names") is { } names)
        {
            foreach (OutlineScalar name in OutlineAsk.Items(context, names.Value, "the names of the cards"))
            {
                sources.Add(Prose.Fold(name.Text), 1, name.Span);
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

    private void ReadFile(OutlineScalar file, OutlineMapping mapping)
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
            _context.Problems.Add(SheetProblems.NoNameColumn(table.Header[0].Span, "cards"));
            return;
        }

        ReportMissingColumns(file, table, mapping);
        foreach (CsvRow row in table.Rows)
        {
            AddRow(table, row, nameAt);
        }
    }

    // A column that neither the file nor the sheet fills is misspelt in one of the two.
    private void ReportMissingColumns(OutlineScalar file, CsvTable table, OutlineMapping mapping)
    {
        string[] header = [.. table.Header.Select(h => h.Text)];
        HashSet<string> filled = [.. header, .. FilledIn(mapping, "changes"), .. FilledIn(mapping, "rows")];
        foreach (OutlineEntry column in (mapping.Find("columns")?.Value as OutlineMapping)?.Entries.Where(e => !filled.Contains(Prose.Fold(e.Key.Text))) ?? [])
        {
            _context.Problems.Add(SheetProblems.UnknownWord(column.Key.Span, column.Key.Text, $"a column of {file.Text.Trim()}", header));
        }
    }

    private static IEnumerable<string> FilledIn(OutlineMapping mapping, string key) =>
        (mapping.Find(key)?.Value as OutlineMapping)?.Entries.Select(e => e.Value).OfType<OutlineMapping>().SelectMany(m => m.Entries).Select(e => Prose.Fold(e.Key.Text)) ?? [];

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
        if (OutlineAsk.NumberIn(cell.Text) is { } count and >= 0 and <= MostOfOne)
        {
            return count;
        }

        _context.Problems.Add(SheetProblems.WantedNumber(cell.Span, cell.Text, "how many there are of this card"));
        return 1;
    }

    private int CountIn(OutlineNode node)
    {
        long count = OutlineAsk.Number(_context, node, "how many there are of this card", least: 0) ?? 1;
        if (count > MostOfOne)
        {
            _context.Problems.Add(SheetProblems.MoreRowsThanAllowed(node.Span, "of one card", MostOfOne));
        }

        return (int)Math.Min(count, MostOfOne);
    }

    private CardSource? Add(string name, int count, SourceSpan at, Dictionary<string, CsvCell>? cells = null, ImmutableArray<int>? values = null)
    {
        if (name.Length == 0)
        {
            _context.Problems.Add(SheetProblems.WantedText(at, $"the name of {Prose.A(_kind.Name)}"));
            return null;
        }

        var card = new CardSource(new Card(name, _kind, _rows.Count, at)) { Count = count, Cells = cells ?? [], Values = values ?? ValuesIn(cells) };
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
            int value = cell is not { Text.Length: > 0 } ? -1 : ValueIn(attribute, cell.Text, cell.Span);

            values.Add(attribute.Attribute.IsState ? 0 : value);
        }

        return values.ToImmutable();
    }

    private void ReadRows(OutlineNode? node, bool mayAdd)
    {
        foreach (OutlineEntry entry in node is null ? [] : OutlineAsk.Entries(_context, node, "the cards by name"))
        {
            string name = Prose.Fold(entry.Key.Text);
            CardSource? row = mayAdd ? Add(name, 1, entry.Key.Span) : _byName.GetValueOrDefault(name);
            if (row is null)
            {
                if (!mayAdd)
                {
                    _context.Problems.Add(SheetProblems.UnknownWord(entry.Key.Span, name, Prose.A(_kind.Name), _byName.Keys));
                }

                continue;
            }

            foreach (OutlineEntry cell in OutlineAsk.Entries(_context, entry.Value, "cells by column"))
            {
                ReadCell(row, cell);
            }
        }
    }

    private void ReadCell(CardSource row, OutlineEntry cell)
    {
        string column = Prose.Fold(cell.Key.Text);
        int attribute = _attributes.ToList().FindIndex(a => a.Attribute.Name == column);
        switch (cell.Key.Text, cell.Value)
        {
            case ("count", _):
                row.Count = CountIn(cell.Value);
                break;
            case (_, OutlineScalar value) when attribute >= 0:
                row.Values = row.Values.SetItem(attribute, ValueIn(_attributes[attribute], Prose.Fold(value.Text), value.Span));
                break;

            case ("cite", OutlineScalar cite):
                row.Cite = new OutlineWords(cite.Text, cite.Span);
                break;
            case ("says", OutlineScalar says):
                row.Says = Prose.Fold(says.Text);
                break;
            default:
                row.Changes[column] = cell.Value;
                if (!_columns.Contains(column))
                {
                    _context.Problems.Add(SheetProblems.UnknownWord(cell.Key.Span, column, $"a column of {_kind.Plural}", [.. _columns, .. OwnColumns, .. _attributes.Select(a => a.Attribute.Name)]));
                }

                break;
        }
    }

    private int ValueIn(AttributeFacts attribute, string word, SourceSpan at)
    {
        int value = attribute.Values.ToList().FindIndex(v => v.Name == word);
        if (value < 0)
        {
            _context.Problems.Add(SheetProblems.UnknownWord(at, word, $"a value of {attribute.Attribute.Name}", attribute.Values.Select(v => v.Name)));
        }

        return value;
    }

    // `attributes: {suit: […], rank: […]}` alone: one card of each combination, called as `called: (rank) of (suit)` says.
    private void AddCombinations(OutlineMapping mapping)
    {
        ImmutableArray<AttributeFacts> fixedOnes = [.. _attributes.Where(a => !a.Attribute.IsState && !a.HoldsPlayer)];
        string pattern = mapping.Find("called")?.Value is OutlineScalar called ? Prose.Fold(called.Text) : string.Join(' ', fixedOnes.Select(a => $"({a.Attribute.Name})")) + " " + _kind.Name;
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
