using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>One way in which a drawing lies on a board.</summary>
/// <param name="Spaces">The space under each cell, in the order of <see cref="Drawing.Cells"/>; none twice.</param>
/// <param name="Turns">Turns clockwise, made after any mirroring: quarters on squares (0 to 3), sixths on hexes (0 to 5).</param>
/// <param name="IsMirrored">True where left and right are exchanged.</param>
/// <param name="Anchor">The space under the cell in brackets; null where the drawing has none.</param>
public sealed record DrawingPlacement(ImmutableArray<int> Spaces, int Turns, bool IsMirrored, int? Anchor)
{
    /// <inheritdoc />
    public bool Equals(DrawingPlacement? other) =>
        other is not null && Turns == other.Turns && IsMirrored == other.IsMirrored && Anchor == other.Anchor
        && Spaces.AsSpan().SequenceEqual(other.Spaces.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Turns, IsMirrored, Anchor, Spaces.IsEmpty ? -1 : Spaces[0]);
}
