namespace Rostrum.Lessons.Page;

/// <summary>How a figure is known. The kinds are never mixed in one number.</summary>
public enum FigureKind
{
    /// <summary>Proved or enumerated.</summary>
    Exact,

    /// <summary>Estimated from simulated games.</summary>
    Simulated,

    /// <summary>Taken from the presenter's own plays.</summary>
    OwnLog,

    /// <summary>Given by the author of the sheet.</summary>
    Stated,
}
