using Rostrum.Text;

namespace Rostrum.Sheets.Drawings;

/// <summary>A drawing before it is cut up.</summary>
/// <param name="Text">Its characters.</param>
/// <param name="SpanOf">Gives the place in the file of a part of them.</param>
/// <param name="Whole">Its place in the file.</param>
/// <param name="Problems">Receives what is wrong.</param>
internal sealed record DrawingInput(string Text, Func<int, int, SourceSpan> SpanOf, SourceSpan Whole, DiagnosticBag Problems)
{
    /// <summary>True where the margin of later lines was not cut, so that blanks at their beginning mean nothing.</summary>
    public bool KeepsMargin { get; init; }

    /// <summary>The words between blanks in a stretch of the drawing.</summary>
    public IEnumerable<DrawnWord> Words(int from, int end)
    {
        int at = from;
        while (true)
        {
            while (at < end && char.IsWhiteSpace(Text[at]))
            {
                at++;
            }

            if (at >= end)
            {
                yield break;
            }

            int start = at;
            while (at < end && !char.IsWhiteSpace(Text[at]))
            {
                at++;
            }

            yield return new DrawnWord(Text[start..at], start, SpanOf(start, at - start));
        }
    }
}

/// <summary>A word of a drawing.</summary>
/// <param name="Text">Its characters.</param>
/// <param name="Start">0-based, in the text of the drawing.</param>
/// <param name="Span">Its place in the file.</param>
internal sealed record DrawnWord(string Text, int Start, SourceSpan Span);
