using Rostrum.Text.Outline;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Rostrum.Text.Tests.Outline;

/// <summary>What two readers saw, one line an event: <c>3,5 text ‹white›</c>. Ours is told from the tree, the other comes from YamlDotNet,
/// which shares no code with it.</summary>
/// <remarks>Two things are evened out because we differ on purpose: lines that a text goes on with are kept as they stand (YAML joins them),
/// and a drawing has no line end at its end (YAML keeps one). A value that is missing has no place in YAML.</remarks>
internal static class YamlEvents
{
    /// <summary>The events of our tree.</summary>
    public static IEnumerable<string> OfTree(OutlineNode node) => node switch
    {
        OutlineMapping m => [$"{m.Span.StartPosition} names", .. m.Entries.SelectMany(e => OfTree(e.Key).Concat(OfTree(e.Value))), "end"],
        OutlineSequence s => [$"{s.Span.StartPosition} list", .. s.Items.SelectMany(OfTree), "end"],
        OutlineScalar { Style: OutlineStyle.Plain or OutlineStyle.Prose } s => [$"{s.Span.StartPosition} text ‹{Folded(s.Text)}›"],
        OutlineScalar s => [$"{s.Span.StartPosition} text ‹{s.Text}›"],
        _ => ["nothing"],
    };

    /// <summary>The events that YamlDotNet gives.</summary>
    /// <exception cref="YamlException">The text is not YAML.</exception>
    public static IEnumerable<string> OfYaml(string content)
    {
        var parser = new Parser(new StringReader(content));
        while (parser.MoveNext())
        {
            if (Told(parser.Current!) is { } told)
            {
                yield return told;
            }
        }
    }

    private static string? Told(ParsingEvent found) => found switch
    {
        Scalar { Style: ScalarStyle.Plain, Value: "" } => "nothing",
        Scalar { Style: ScalarStyle.Literal or ScalarStyle.Folded } s => $"{Place(s)} text ‹{s.Value.TrimEnd('\n')}›",
        Scalar s => $"{Place(s)} text ‹{s.Value}›",
        MappingStart m => $"{Place(m)} names",
        SequenceStart s => $"{Place(s)} list",
        MappingEnd or SequenceEnd => "end",
        _ => null,
    };

    private static LinePosition Place(ParsingEvent found) => new((int)found.Start.Line, (int)found.Start.Column);

    // As YAML joins lines: one line end is a blank, each blank line more a line end.
    private static string Folded(string text)
    {
        string[] lines = [.. text.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim())];
        string joined = lines[0];
        int blank = 0;
        foreach (string line in lines[1..])
        {
            joined += line.Length == 0 ? "" : (blank == 0 ? " " : new string('\n', blank)) + line;
            blank = line.Length == 0 ? blank + 1 : 0;
        }

        return joined;
    }
}
