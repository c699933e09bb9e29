namespace Rostrum.Lessons.Page;

/// <summary>The tone of a verdict.</summary>
public enum SlipTone
{
    /// <summary>Yes: allowed, met, shown.</summary>
    Yes,

    /// <summary>No: forbidden, not met.</summary>
    No,

    /// <summary>The sheet does not say.</summary>
    Unsettled,
}
