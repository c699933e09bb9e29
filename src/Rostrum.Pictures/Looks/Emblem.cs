namespace Rostrum.Pictures;

/// <summary>A shape mark on a piece, so that kinds differ in more than colour.</summary>
/// <param name="Name">The word in a sheet, such as <c>bars</c>.</param>
/// <param name="Shape">Filled by the even-odd rule; in the unit square, y downwards.</param>
public sealed record Emblem(string Name, PathData Shape) : INamedLook;
