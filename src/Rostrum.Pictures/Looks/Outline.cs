namespace Rostrum.Pictures;

/// <summary>The silhouette of a piece.</summary>
/// <param name="Name">The word in a sheet, such as <c>jug</c>.</param>
/// <param name="Shape">In the unit square, y downwards, standing on y = 1; filled by the even-odd rule.</param>
/// <param name="EmblemBox">Where an emblem goes, in the same square.</param>
/// <param name="Lines">Fine lines on the body that make the thing recognisable from near; may be empty.</param>
public sealed record Outline(string Name, PathData Shape, Box EmblemBox, PathData Lines) : INamedLook;
