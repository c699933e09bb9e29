using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Formulas;

/// <summary>A formula as words, with the place of each of them in its file.</summary>
public sealed class FormulaText
{
    private readonly Func<int, int, SourceSpan> _spanOf;

    /// <summary>Words whose places are given by a function of start and length (0-based, code units).</summary>
    public FormulaText(string text, Func<int, int, SourceSpan> spanOf)
    {
        Text = text;
        _spanOf = spanOf;
    }

    /// <summary>The words.</summary>
    public string Text { get; }

    /// <summary>A text of the outline.</summary>
    public static FormulaText Of(OutlineScalar scalar) => new(scalar.Text, scalar.SpanOf);

    /// <summary>Words that stand in a stretch of a file.</summary>
    public static FormulaText Of(SourceSpan span) => new(span.Text, span.Part);

    /// <summary>Words from outside any file, such as the command line.</summary>
    public static FormulaText Of(string words, string name) => Of(new SourceText(name, words).Whole);

    /// <summary>A part of these words.</summary>
    public FormulaText Part(int start, int length) => new(Text.Substring(start, length), (s, l) => _spanOf(start + s, l));

    /// <summary>Where a part of the words stands.</summary>
    public SourceSpan SpanOf(int start, int length) => _spanOf(start, length);

    /// <summary>Where all of them stand.</summary>
    public SourceSpan Span => _spanOf(0, Text.Length);
}
