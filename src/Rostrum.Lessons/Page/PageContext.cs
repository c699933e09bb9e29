namespace Rostrum.Lessons.Page;

/// <summary>What the writers of one page share: where the words go and what things are called in links.</summary>
internal sealed class PageContext
{
    private readonly HashSet<string> _mentioned = new(StringComparer.Ordinal);
    private int _figures;

    /// <summary>The page so far.</summary>
    public Markup Out { get; } = new();

    /// <summary>The ids given out so far.</summary>
    public AnchorNames Names { get; } = new();

    /// <summary>The id of a slip.</summary>
    public string SlipAnchor(string slipId) => Names.Of("slip", slipId);

    /// <summary>The id of a topic.</summary>
    public string TopicAnchor(string slug) => Names.Of("topic", slug);

    /// <summary>The id that the first mention of a slip carries; null for the mentions after it.</summary>
    public string? MentionAnchor(string slipId) => _mentioned.Add(slipId) ? Names.Of("said", slipId) : null;

    /// <summary>Where a slip leads back to; null if nothing mentions it.</summary>
    public string? BackTarget(string slipId) => _mentioned.Contains(slipId) ? Names.Of("said", slipId) : null;

    /// <summary>A name for the next figure, counted from 1.</summary>
    public string NextFigure() => Names.Of("figure", (++_figures).ToString(System.Globalization.CultureInfo.InvariantCulture));
}
