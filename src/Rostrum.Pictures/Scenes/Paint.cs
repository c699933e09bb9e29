namespace Rostrum.Pictures;

/// <summary>How a shape is coloured; a part that is null is not drawn.</summary>
/// <param name="Fill">The inside.</param>
/// <param name="Stroke">The outline, centred on the edge, with round joins and ends.</param>
/// <param name="StrokeWidth">Width of the outline in scene units.</param>
/// <param name="Dash">Length of the dashes and of the gaps between them in scene units; 0 for an unbroken line.</param>
public sealed record Paint(Tone? Fill, Tone? Stroke = null, double StrokeWidth = 0, double Dash = 0)
{
    /// <summary>An outline without inside.</summary>
    public static Paint Line(Tone stroke, double width, double dash = 0) => new(null, stroke, width, dash);
}
