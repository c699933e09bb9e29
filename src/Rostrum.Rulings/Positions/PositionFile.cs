using System.Collections.Immutable;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>A position as it was read from a file, which stays as its author wrote it: an edit changes what it must and no other byte.</summary>
/// <param name="Source">The file.</param>
/// <param name="Tree">Its outline.</param>
/// <param name="Position">What lies on the table; null where something about it could not be read, so that no answer may rest on it.</param>
/// <param name="Expectations">What the author expects, in the order of the file; often empty.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Variants">The variants that the file asks for; often empty.</param>
public sealed partial record PositionFile(
    SourceText Source,
    OutlineMapping Tree,
    Position? Position,
    ImmutableArray<Expectation> Expectations,
    string? Says,
    ImmutableArray<string> Variants)
{
    /// <summary>Where the content of spaces, slots and heaps is written.</summary>
    internal ImmutableDictionary<PositionSpot, SourceSpan> Spots { get; init; } = ImmutableDictionary<PositionSpot, SourceSpan>.Empty;
}
