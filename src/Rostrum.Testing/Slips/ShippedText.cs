using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;

namespace Rostrum.Testing.Slips;

/// <summary>One file of a shipped game that somebody typed.</summary>
/// <param name="Game">The game, such as <c>kiln-night</c>.</param>
/// <param name="Text">The file; its name is relative to the game's folder.</param>
public sealed record ShippedText(string Game, SourceText Text)
{
    private readonly Lazy<ImmutableArray<SourceSpan>> _prose = new(() => [.. ProseOf(Text)]);

    /// <summary>True for a position, false for the sheet and the tables beside it.</summary>
    public bool IsPosition => Text.Name.StartsWith("positions/", StringComparison.Ordinal);

    /// <summary>True where a stretch lies wholly in prose or in a remark, which mean nothing to Rostrum.</summary>
    public bool IsProse(SourceSpan at) => _prose.Value.Any(p => p.Contains(at) && at.Length < p.Length) || IsRemark(at);

    private bool IsRemark(SourceSpan at) =>
        !Text.Name.EndsWith(".csv", StringComparison.Ordinal) && Text.Line(Text.LineIndexOf(at.Start)) is var line && line.TrimStart().StartsWith('#')
        && at.Start > Text.LineStart(Text.LineIndexOf(at.Start));

    private static IEnumerable<SourceSpan> ProseOf(SourceText text)
    {
        if (text.Name.EndsWith(".csv", StringComparison.Ordinal))
        {
            return CardSentences(text);
        }

        OutlineMapping tree = OutlineReader.Read(text, new OutlineDialect(SheetDialect.ProseKeys, SheetDialect.Sheets.KnownKeys.Union(["is", "illegal", "because"])), new DiagnosticBag());
        return Texts(tree).Where(s => s.Style == OutlineStyle.Prose || IsListed(tree, s)).Select(s => s.Span);
    }

    // What is left out, and a card's sentence, are told in the author's own words.
    private static bool IsListed(OutlineMapping tree, OutlineScalar text) => tree.Find("not modelled")?.Value.Span.Contains(text.Span) ?? false;

    private static IEnumerable<OutlineScalar> Texts(OutlineNode node) => node switch
    {
        OutlineScalar scalar => [scalar],
        OutlineSequence list => list.Items.SelectMany(Texts),
        OutlineMapping mapping => mapping.Entries.SelectMany(e => ((IEnumerable<OutlineScalar>)[e.Key]).Concat(Texts(e.Value))),
        _ => [],
    };

    private static IEnumerable<SourceSpan> CardSentences(SourceText text)
    {
        CsvTable? table = CsvReader.Read(text, new DiagnosticBag());
        return table?.ColumnOf("says") is { } says ? table.Rows.Select(r => r.Cells[says].Span) : [];
    }
}
