namespace Rostrum.Pictures;

/// <summary>A finished picture, not yet written in any format.</summary>
/// <param name="Width">Scene units; at scale 1 a unit is a pixel.</param>
/// <param name="Height">Scene units.</param>
/// <param name="Title">A few words that name the picture.</param>
/// <param name="Description">The text alternative: everything that the picture tells, in sentences.</param>
/// <param name="Nodes">What to draw, from back to front.</param>
public sealed record Scene(double Width, double Height, string Title, string Description, ValueList<SceneNode> Nodes);
