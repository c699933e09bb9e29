using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>tables</c>; a table is bound when it is first asked for.</summary>
internal sealed class TablesSection
{
    private readonly LoadContext _context;
    private readonly List<(Table Table, OutlineMapping Text)> _texts = [];
    private readonly Dictionary<Table, TableFacts> _facts = [];
    private readonly HashSet<Table> _open = [];

    public TablesSection(LoadContext context)
    {
        _context = context;
        context.Declared.EntrySort = table => Facts(table) is { } facts ? SortOf(facts) : Sort.Any;
    }

    /// <summary>All tables in order.</summary>
    public ImmutableArray<TableFacts> All => [.. _texts.Select(t => Facts(t.Table)).OfType<TableFacts>()];

    public void Declare(OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(_context, section, "the tables", "worth: {1: 1, 2: 3, 3: 6}"))
        {
            if (TextOf(entry) is not { } mapping)
            {
                _context.Problems.Add(SheetProblems.WantedEntries(entry.Value.Span, "the rows of the table, such as '1: 3'"));
                continue;
            }

            ReportLater(mapping);
            var table = new Table(Prose.Fold(entry.Key.Text), _texts.Count, entry.Key.Span);
            _context.Declare(table);
            _texts.Add((table, mapping));
        }
    }

    // A table that is not modelled gives a gap for everything.
    private static OutlineMapping? TextOf(OutlineEntry entry) => entry.Value switch
    {
        OutlineMapping mapping => mapping,
        OutlineScalar gap when gap.Text.StartsWith("not modelled", StringComparison.Ordinal) =>
            new OutlineMapping(gap.Span, [new OutlineEntry(new OutlineScalar(entry.Key.Span, "beyond", OutlineStyle.Plain, entry.Key.TextStart), gap)]),
        _ => null,
    };

    private void ReportLater(OutlineMapping table)
    {
        foreach (OutlineEntry later in table.Entries.Where(e => SheetDialect.LaterKeys[""].Contains(e.Key.Text)))
        {
            _context.Problems.Add(SheetProblems.NotYet(later.Key.Span, $"'{later.Key.Text}'"));
        }
    }

    private TableFacts? Facts(Table table)
    {
        if (_facts.TryGetValue(table, out TableFacts? known) || !_open.Add(table))
        {
            return known;
        }

        OutlineMapping text = _texts[table.Index].Text;
        Forked forked = ForkReader.OfClause(_context, text, table.Name);
        ImmutableArray<TableVersion> versions = [.. forked.Alternatives.Select(a => TableReader.Read(_context, table, a))];
        var facts = new TableFacts(table, versions, forked.Choice, OutlineAsk.Prose(text, "says"), _context.Cite(text));
        _facts[table] = facts;
        return facts;
    }

    private static Sort SortOf(TableFacts facts) =>
        facts.Versions.SelectMany(v => v.Rows).Aggregate(Sort.Any, (sum, r) => sum.Join(r.Entry.Sort) ?? Sort.Any);
}
