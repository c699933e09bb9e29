namespace Rostrum.Pictures;

/// <summary>A space of a board with what lies on it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Column">0-based from the left. On hexes it counts half steps: a neighbour in the row lies two on, one in the next row one on.
/// Without meaning on maps, rings and tracks.</param>
/// <param name="Row">0-based from the lowest; without meaning on maps, rings and tracks.</param>
/// <param name="Content">What lies there; never <see cref="CellPicture.Missing"/>.</param>
public sealed record SpacePicture(string Name, int Column, int Row, CellPicture Content)
{
    /// <summary>Where a map has it, to the right and upwards; null where the picture finds a place.</summary>
    public (double Across, double Up)? Spot { get; init; }

    /// <summary>The numbers that are printed on it, in the order of <see cref="BoardPicture.NumberNames"/>; null for none of that name.</summary>
    public ValueList<long?> Numbers { get; init; }
}

/// <summary>What is to be seen at a place of a board.</summary>
public abstract record CellPicture
{
    private CellPicture()
    {
    }

    /// <summary>There is no space.</summary>
    public static CellPicture None { get; } = new Missing();

    /// <summary>A space with nothing on it.</summary>
    public static CellPicture Empty { get; } = new Free();

    /// <summary>A space with pieces on it.</summary>
    /// <param name="pieces">From the lowest up; at least one.</param>
    public static CellPicture Holding(params ReadOnlySpan<PieceLook> pieces) => new Stack(ValueList.Create(pieces));

    /// <summary>There is no space at this place of a row.</summary>
    public sealed record Missing : CellPicture;

    /// <summary>A space with nothing on it.</summary>
    public sealed record Free : CellPicture;

    /// <summary>A space with pieces on it.</summary>
    /// <param name="Pieces">From the lowest up; at least one. Four are drawn at most, the topmost ones.</param>
    public sealed record Stack(ValueList<PieceLook> Pieces) : CellPicture;
}
