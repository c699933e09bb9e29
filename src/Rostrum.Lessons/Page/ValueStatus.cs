namespace Rostrum.Lessons.Page;

/// <summary>How a statement of the lesson came out.</summary>
public enum ValueStatus
{
    /// <summary>The sheet gives the same.</summary>
    Right,

    /// <summary>The sheet gives something else.</summary>
    Wrong,

    /// <summary>The sheet does not say, or readings disagree.</summary>
    Unsettled,
}
