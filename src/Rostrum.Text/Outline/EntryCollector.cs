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
            return;
        }

        int before = _entries.IndexOf(_entries.First(e => Prose.Fold(e.Key.Text) == name));
        OutlineEntry first = _entries[before];
        bool isEmpty = IsEmpty(first.Value) && !IsEmpty(value);
        problems.Add(OutlineProblems.DuplicateKey(key.Span, first.Key.Span, isEmpty ? Without(first.Key.Span, first.Value.Span) : first.Value.Span.Text == value.Span.Text ? Without(key.Span, value.Span) : null));
        if (isEmpty)
        {
            // A head that was written twice, with what belongs to it below the second.
            _entries[before] = new OutlineEntry(first.Key, value);
        }
    }

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
