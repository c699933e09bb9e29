namespace Rostrum.Lessons.Page;

/// <summary>How a figure is known, with what a reader needs to weigh it.</summary>
/// <param name="Kind">Which of the four kinds.</param>
/// <param name="Detail">For a simulated figure games, players, seed and interval; for an own log the number of plays; otherwise usually empty.</param>
public sealed record SlipBasis(FigureKind Kind, string Detail = "")
{
    /// <summary>Worked out or enumerated, nothing to add.</summary>
    public static SlipBasis Exact { get; } = new(FigureKind.Exact);

    /// <summary>Taken from the sheet as its author wrote it, nothing to add.</summary>
    public static SlipBasis Stated { get; } = new(FigureKind.Stated);
}
