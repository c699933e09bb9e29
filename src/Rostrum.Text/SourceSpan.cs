namespace Rostrum.Text;

/// <summary>A stretch of one text: where something was written.</summary>
/// <param name="Source">The text.</param>
/// <param name="Start">0-based offset of the first code unit.</param>
/// <param name="Length">Code units; 0 for a spot between two characters.</param>
public readonly record struct SourceSpan(SourceText Source, int Start, int Length)
{
    /// <summary>The offset just behind the stretch (half open).</summary>
    public int End => Start + Length;

    /// <summary>The words that stand there.</summary>
    public string Text => Source.Content.Substring(Start, Length);

    /// <summary>Line and column of the first character.</summary>
    public LinePosition StartPosition => Source.PositionOf(Start);

    /// <summary>Line and column just behind the last character.</summary>
    public LinePosition EndPosition => Source.PositionOf(End);

    /// <summary>The stretch from the beginning of this one to the end of another in the same text.</summary>
    public SourceSpan To(SourceSpan other) => new(Source, Start, Math.Max(other.End, Start) - Start);

    /// <summary>A part of this stretch.</summary>
    /// <param name="start">0-based, from the beginning of this stretch.</param>
    /// <param name="length">Code units; cut to this stretch.</param>
    public SourceSpan Part(int start, int length)
    {
        int from = Math.Clamp(start, 0, Length);
        return new SourceSpan(Source, Start + from, Math.Clamp(length, 0, Length - from));
    }

    /// <summary>True where the other stretch lies inside this one.</summary>
    public bool Contains(SourceSpan other) => ReferenceEquals(Source, other.Source) && other.Start >= Start && other.End <= End;

    /// <summary>For example <c>sheet.yaml(14,10)</c>.</summary>
    public override string ToString() => $"{Source.Name}({StartPosition})";
}
