using System.Collections.Immutable;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Cuts a text into words that know their place.</summary>
internal static class WordCutter
{
    /// <summary>The words between blanks.</summary>
    public static ImmutableArray<PlacedWord> Cut(OutlineScalar text)
    {
        var words = ImmutableArray.CreateBuilder<PlacedWord>();
        int at = 0;
        while (at < text.Text.Length)
        {
            int start = at;
            while (at < text.Text.Length && !char.IsWhiteSpace(text.Text[at]))
            {
                at++;
            }

            if (at > start)
            {
                words.Add(new PlacedWord(text.Text[start..at], text.SpanOf(start, at - start)));
            }

            at++;
        }

        return words.ToImmutable();
    }

    /// <summary>The place of the words themselves, quotes left out.</summary>
    public static SourceSpan WordsOf(OutlineScalar text) => text.Style == OutlineStyle.Quoted ? text.SpanOf(0, text.Text.Length) : text.Span;
}

/// <summary>A word and where it stands.</summary>
/// <param name="Text">Its characters; never empty.</param>
/// <param name="Span">Its place in the file.</param>
internal readonly record struct PlacedWord(string Text, SourceSpan Span);
