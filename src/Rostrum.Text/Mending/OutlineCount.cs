using Rostrum.Text.Outline;

namespace Rostrum.Text.Mending;

/// <summary>How much an outline holds.</summary>
/// <param name="Entries">Keys with their colon, at any depth.</param>
/// <param name="Prose">Characters of all sentences.</param>
internal readonly record struct OutlineCount(int Entries, int Prose)
{
    /// <summary>Reads a text and counts.</summary>
    public static OutlineCount Of(SourceText text, OutlineDialect dialect) => Of(OutlineReader.Read(text, dialect, new DiagnosticBag()));

    private static OutlineCount Of(OutlineNode node) => node switch
    {
        OutlineMapping mapping => Sum(mapping.Entries.Select(e => new OutlineCount(HasColon(e.Key) ? 1 : 0, 0) + Of(e.Value))),
        OutlineSequence list => Sum(list.Items.Select(Of)),
        OutlineScalar { Style: OutlineStyle.Prose } sentence => new OutlineCount(0, sentence.Text.Length),
        _ => default,
    };

    // A line whose colon is lost is read as a key all the same.
    private static bool HasColon(OutlineScalar key) => key.Span.Source.Span(key.Span.End, 1).Text == ":";

    private static OutlineCount Sum(IEnumerable<OutlineCount> parts) => parts.Aggregate(default(OutlineCount), (sum, part) => sum + part);

    public static OutlineCount operator +(OutlineCount left, OutlineCount right) => new(left.Entries + right.Entries, left.Prose + right.Prose);
}
