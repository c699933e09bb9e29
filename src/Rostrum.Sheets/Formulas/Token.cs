using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>The kinds of small parts of a formula.</summary>
internal enum TokenKind
{
    /// <summary>A word: letters of any script, digits, <c>'</c>, an inner <c>-</c> before a letter.</summary>
    Word,

    /// <summary>Digits only, or a number word from one to twelve.</summary>
    Number,

    /// <summary>One of <c>( ) , + -</c>.</summary>
    Sign,

    /// <summary>A sign that no formula uses.</summary>
    Stray,

    /// <summary>The end of the formula.</summary>
    End,
}

/// <summary>A small part of a formula.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As written.</param>
/// <param name="Start">0-based, in the text of the formula.</param>
/// <param name="Span">Where it stands in the file.</param>
/// <param name="Number">The number of a number; 0 otherwise.</param>
internal readonly record struct Token(TokenKind Kind, string Text, int Start, SourceSpan Span, long Number)
{
    /// <summary>True for this word or sign, small letters.</summary>
    public bool Is(string word) => Kind is not (TokenKind.End or TokenKind.Stray) && string.Equals(Text, word, StringComparison.OrdinalIgnoreCase);
}
