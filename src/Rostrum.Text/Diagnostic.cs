using System.Collections.Immutable;

namespace Rostrum.Text;

/// <summary>How much a problem weighs.</summary>
public enum Severity
{
    /// <summary>Worth a look; nothing is wrong yet.</summary>
    Warning,

    /// <summary>Something is wrong; what depends on it gives no answer.</summary>
    Error,
}

/// <summary>Something that a person wrote wrongly, said in that person's words.</summary>
/// <param name="Id">Permanent, such as <c>ROS0201</c>; each has a page in <c>docs/diagnostics</c>.</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="At">The words to underline.</param>
/// <param name="Message">What is wrong: one sentence that stands alone.</param>
/// <param name="Hint">What to do about it, never empty: one sentence, or a sentence and lines to add, parted by line ends.</param>
public sealed record Diagnostic(string Id, Severity Severity, SourceSpan At, string Message, string Hint)
{
    /// <summary>An edit that mends it, where one is known.</summary>
    public Fix? Fix { get; init; }

    /// <summary>How many further problems of the same reading are not kept because this one is the last that is; 0 for all others.</summary>
    public int Further { get; init; }

    /// <summary>Other places that belong to the problem, such as the first of two equal names or the idiom behind a clause.</summary>
    public ImmutableArray<RelatedPlace> Related { get; init; } = [];
}

/// <summary>A second place that belongs to a problem.</summary>
/// <param name="At">Where.</param>
/// <param name="Note">What stands there, such as <c>declared here</c>.</param>
public sealed record RelatedPlace(SourceSpan At, string Note);
