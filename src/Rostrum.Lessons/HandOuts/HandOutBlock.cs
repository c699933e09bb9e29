using Rostrum.Pictures;

namespace Rostrum.Lessons.HandOuts;

/// <summary>A piece of a column that is never cut.</summary>
/// <param name="Before">Room above it, in points; none at the top of a column.</param>
/// <param name="Height">Its height, in points.</param>
/// <param name="StaysWithNext">True for a heading: it never ends a column.</param>
/// <param name="Draw">What it looks like with its upper left corner there.</param>
internal sealed record HandOutBlock(double Before, double Height, bool StaysWithNext, Func<Point, Drawn> Draw)
{
    /// <summary>True for a drawing: where it has no room, what follows it is read first, and it begins the next column.</summary>
    public bool MayWait { get; init; }
}

/// <summary>What is drawn of a block.</summary>
/// <param name="Nodes">Words and lines.</param>
/// <param name="Picture">A drawing; null for none.</param>
internal readonly record struct Drawn(IEnumerable<SceneNode> Nodes, PlacedScene? Picture = null);
