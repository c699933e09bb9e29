namespace Rostrum.Pictures;

/// <summary>A state of a piece that must be seen at once.</summary>
/// <param name="Name">The word in a sheet, such as <c>cracked</c>.</param>
public sealed record Flaw(string Name) : INamedLook;
