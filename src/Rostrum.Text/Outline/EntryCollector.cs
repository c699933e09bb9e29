using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>Collects the keys of one level; tells a key that stands twice and keeps the first.</summary>
/// <param name="problems">Receives what is wrong.</param>
internal sealed class EntryCollector(DiagnosticBag problems)
{
    private readonly ImmutableArray<OutlineEntry>.Builder _entries = ImmutableArray.CreateBuilder<OutlineEntry>();
    private readonly Dictionary<string, int> _first = new(StringComparer.Ordinal);
    private int _end = -1;

    /// <summary>Adds a key and its value.</summary>
    public void Add(OutlineScalar key, OutlineNode value)
    {
        _end = Math.Max(_end, Math.Max(key.Span.End, value.Span.End));
        string name = Prose.Fold(key.Text);
        if (_first.TryAdd(name, _entries.Count))
        {
            _entries.Add(new OutlineEntry(key, value));
            return;
        }

        OutlineEntry first = _entries[_first[name]];
        bool isEmpty = IsEmpty(first.Value) && !IsEmpty(value);
        Fix? removal = isEmpty ? Without(first.Key.Span, first.Value.Span) : IsRepeated(first, key, value) ? Without(key.Span, value.Span) : null;
        problems.Add(OutlineProblems.DuplicateKey(key.Span, first.Key.Span, removal));
        if (isEmpty)
        {
            // A head that was written twice, with what belongs to it below the second.
            _entries[_first[name]] = new OutlineEntry(first.Key, value);
        }
    }

    // The same line twice, one below the other.
    private static bool IsRepeated(OutlineEntry first, OutlineScalar key, OutlineNode value) =>
        first.Value.Span.Length == value.Span.Length && key.Span.Start - first.Value.Span.End is > 0 and < 200
        && string.IsNullOrWhiteSpace(key.Span.Source.Content[first.Value.Span.End..key.Span.Start]) && first.Value.Span.Text == value.Span.Text;

    private static bool IsEmpty(OutlineNode value) => value is OutlineEmpty or OutlineScalar { Style: OutlineStyle.Lines, Text.Length: 0 };

    // The whole line, where nothing else stands on it.
    private static Fix? Without(SourceSpan key, SourceSpan value)
    {
        SourceText text = key.Source;
        int line = text.LineIndexOf(key.Start);
        bool isAlone = text.LineIndexOf(value.End) == line && string.IsNullOrWhiteSpace(text.Content[text.LineStart(line)..key.Start]) && line + 1 < text.LineCount;
        return isAlone ? new Fix("take this line out", FixGrade.Safe, [new TextEdit(text.Span(text.LineStart(line), text.LineStart(line + 1) - text.LineStart(line)), "")]) : null;
    }

    /// <summary>How many keys there are so far.</summary>
    public int Count => _entries.Count;

    /// <summary>The level, from its first key to the end of its last value.</summary>
    /// <param name="text">The file.</param>
    /// <param name="start">Where the level begins.</param>
    public OutlineMapping ToMapping(SourceText text, int start) => Within(text.Span(start, Math.Max(_end, start) - start));

    /// <summary>The level with a span that is already known, braces included.</summary>
    public OutlineMapping Within(SourceSpan span) => new(span, _entries.ToImmutable());
}
