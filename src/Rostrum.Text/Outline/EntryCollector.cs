using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>Collects the keys of one level; tells a key that stands twice and keeps the first.</summary>
/// <param name="problems">Receives what is wrong.</param>
internal sealed class EntryCollector(DiagnosticBag problems)
{
    private readonly ImmutableArray<OutlineEntry>.Builder _entries = ImmutableArray.CreateBuilder<OutlineEntry>();
    private readonly Dictionary<string, OutlineScalar> _first = new(StringComparer.Ordinal);
    private int _end = -1;

    /// <summary>Adds a key and its value.</summary>
    public void Add(OutlineScalar key, OutlineNode value)
    {
        _end = Math.Max(_end, Math.Max(key.Span.End, value.Span.End));
        string name = Prose.Fold(key.Text);
        if (_first.TryAdd(name, key))
        {
            _entries.Add(new OutlineEntry(key, value));
        }
        else
        {
            problems.Add(OutlineProblems.DuplicateKey(key.Span, _first[name].Span));
        }
    }

    /// <summary>The level, from its first key to the end of its last value.</summary>
    /// <param name="text">The file.</param>
    /// <param name="start">Where the level begins.</param>
    public OutlineMapping ToMapping(SourceText text, int start) => Within(text.Span(start, Math.Max(_end, start) - start));

    /// <summary>The level with a span that is already known, braces included.</summary>
    public OutlineMapping Within(SourceSpan span) => new(span, _entries.ToImmutable());
}
