namespace Rostrum.Text.Outline;

/// <summary>What a line holds, at first sight.</summary>
internal enum LineKind
{
    /// <summary>Nothing.</summary>
    Blank,

    /// <summary>Only a comment.</summary>
    Comment,

    /// <summary>Something to read.</summary>
    Content,
}

/// <summary>One line of an outline.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="ContentStart">Offset of its first character that is no indentation.</param>
/// <param name="End">Offset behind its last character; blanks at its end are left out.</param>
/// <param name="Column">How deep it is indented, 0-based; a tab counts as two blanks.</param>
/// <param name="Kind">What it holds.</param>
internal readonly record struct OutlineLine(int Start, int ContentStart, int End, int Column, LineKind Kind)
{
    /// <summary>The column of an offset in the content of this line.</summary>
    public int ColumnOf(int offset) => Column + offset - ContentStart;
}
