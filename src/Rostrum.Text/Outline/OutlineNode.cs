using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>A node of the text tree: what an outline file says, with the exact place of every word.</summary>
/// <param name="Span">Where it was written. After a variant was merged in, children may come from another file.</param>
public abstract record OutlineNode(SourceSpan Span);

/// <summary>A single text: a name, a number, a formula, a sentence, a drawing. Nothing is ever converted.</summary>
/// <param name="Span">Where it was written, quotes included.</param>
/// <param name="Text">What it says. Lines that continue it are kept as they stand in the source, so that offsets stay true.</param>
/// <param name="Style">How it was written.</param>
/// <param name="TextStart">The source offset of the first character of <paramref name="Text"/>.</param>
public sealed record OutlineScalar(SourceSpan Span, string Text, OutlineStyle Style, int TextStart) : OutlineNode(Span)
{
    /// <summary>Offsets of each character of <see cref="Text"/> in the source; empty where they simply follow <see cref="TextStart"/>
    /// (a quoted text with escapes, or a drawing whose margin was cut, needs it).</summary>
    public ImmutableArray<int> Offsets { get; init; } = [];

    /// <summary>The source span of a part of <see cref="Text"/>.</summary>
    /// <param name="start">0-based, in <see cref="Text"/>.</param>
    /// <param name="length">Code units.</param>
    public SourceSpan SpanOf(int start, int length)
    {
        if (Offsets.IsDefaultOrEmpty)
        {
            return Span.Source.Span(TextStart + start, length);
        }

        int from = start < Offsets.Length ? Offsets[start] : Span.End;
        int to = start + length < Offsets.Length ? Offsets[start + length] : Span.End;
        return Span.Source.Span(from, to - from);
    }
}

/// <summary>How a text was written.</summary>
public enum OutlineStyle
{
    /// <summary>Bare words.</summary>
    Plain,

    /// <summary>In single or double quotes.</summary>
    Quoted,

    /// <summary>A prose field: the raw rest of the line and its deeper lines.</summary>
    Prose,

    /// <summary>Several lines behind <c>|</c>, margin cut: a drawing.</summary>
    Lines,
}

/// <summary>Keys with what belongs to them, in the order of the file.</summary>
/// <param name="Span">From the first key to the end of the last value.</param>
/// <param name="Entries">May be empty; no key stands twice.</param>
public sealed record OutlineMapping(SourceSpan Span, ImmutableArray<OutlineEntry> Entries) : OutlineNode(Span)
{
    /// <summary>The entry with this key (exact spelling), or null.</summary>
    public OutlineEntry? Find(string key)
    {
        foreach (OutlineEntry entry in Entries)
        {
            if (entry.Key.Text == key)
            {
                return entry;
            }
        }

        return null;
    }
}

/// <summary>One key and its value.</summary>
/// <param name="Key">The key, a plain or quoted text.</param>
/// <param name="Value">What belongs to it; <see cref="OutlineEmpty"/> where nothing was written.</param>
public sealed record OutlineEntry(OutlineScalar Key, OutlineNode Value);

/// <summary>A list.</summary>
/// <param name="Span">From the first dash or bracket to the end of the last item.</param>
/// <param name="Items">May be empty.</param>
public sealed record OutlineSequence(SourceSpan Span, ImmutableArray<OutlineNode> Items) : OutlineNode(Span);

/// <summary>Nothing was written where a value could stand.</summary>
/// <param name="Span">The empty spot behind the key or dash.</param>
public sealed record OutlineEmpty(SourceSpan Span) : OutlineNode(Span);
