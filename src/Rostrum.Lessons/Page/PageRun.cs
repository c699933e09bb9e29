namespace Rostrum.Lessons.Page;

/// <summary>A stretch of words inside a block.</summary>
public abstract record PageRun
{
    private PageRun() { }

    /// <summary>Plain words.</summary>
    /// <param name="Words">The words, blanks at both ends included.</param>
    public sealed record Text(string Words) : PageRun;

    /// <summary>Words that the voice leans on.</summary>
    /// <param name="Words">The words.</param>
    public sealed record Emphasis(string Words) : PageRun;

    /// <summary>Words that must not be missed.</summary>
    /// <param name="Words">The words.</param>
    public sealed record Strong(string Words) : PageRun;

    /// <summary>Words to be typed or read letter by letter.</summary>
    /// <param name="Words">The words.</param>
    public sealed record Code(string Words) : PageRun;

    /// <summary>Words that lead elsewhere.</summary>
    /// <param name="Words">The words.</param>
    /// <param name="Target">An address; shown as plain words unless it is http, https, mailto, a fragment or relative.</param>
    public sealed record Link(string Words, string Target) : PageRun;

    /// <summary>A statement that was held against the sheet.</summary>
    /// <param name="Said">The words of the lesson, such as <c>35</c> or <c>not allowed</c>.</param>
    /// <param name="SlipId">The <see cref="PageSlip.Id"/> that gives the reasons.</param>
    /// <param name="Status">How it came out.</param>
    public sealed record Value(string Said, string SlipId, ValueStatus Status) : PageRun
    {
        /// <summary>What readers see behind a value that is not right, such as <c>the sheet says 34</c>; empty for the usual words.</summary>
        public string Note { get; init; } = "";
    }

    /// <summary>Words about which the sheet gave no answer, so that no slip stands behind them: a misspelt name, a shot that cannot be drawn.</summary>
    /// <param name="Said">The words of the lesson.</param>
    /// <param name="Status">How it came out; never right.</param>
    /// <param name="Note">What is wrong, in a sentence.</param>
    public sealed record Marked(string Said, ValueStatus Status, string Note) : PageRun;
}
