using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>Reads the outline of a sheet, a position or an idiom file: the part of YAML that our files use, line by line.</summary>
/// <remarks>Always gives a tree, tells every problem that it meets, and goes on behind it. Time grows with the length of the text
/// and with the depth of its indentation, never with the square of what stands on one line. Why we read it ourselves is told in
/// <c>docs/decisions/0001-outline-reader.md</c>.</remarks>
public static class OutlineReader
{
    /// <summary>How many levels may stand inside each other.</summary>
    public const int DeepestLevel = 64;

    /// <summary>Reads a text into a tree.</summary>
    /// <param name="text">The whole file; a byte order sign at its beginning is skipped.</param>
    /// <param name="dialect">Which keys hold prose and which keys may stand in braces.</param>
    /// <param name="problems">Receives what is wrong, ids ROS0101 to ROS0122.</param>
    /// <returns>The keys at the margin; empty for an empty text. Where a line could not be understood it is left out.</returns>
    public static OutlineMapping Read(SourceText text, OutlineDialect dialect, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(dialect);
        ArgumentNullException.ThrowIfNull(problems);
        UnreadableCharacters.Report(text, problems);
        OutlineLines lines = OutlineLines.Of(text, problems);
        var input = new OutlineInput(text, lines, dialect, problems);
        return new BlockReader(input).ReadRoot() ?? new OutlineMapping(text.Span(0, 0), ImmutableArray<OutlineEntry>.Empty);
    }
}
