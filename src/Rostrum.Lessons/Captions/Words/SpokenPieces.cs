using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Lessons.Captions.Words;

/// <summary>Words of a cue, or a moment between words.</summary>
/// <param name="Words">Words with their line ends; empty for a moment.</param>
/// <param name="Time">When what follows is said; null for words.</param>
internal readonly record struct SpokenPiece(string Words, TimeSpan? Time);

/// <summary>The text of a cue laid out flat.</summary>
internal static class SpokenPieces
{
    /// <summary>Words and moments in their order; ruby text, which nobody speaks, is left out.</summary>
    public static ImmutableArray<SpokenPiece> Of(CueText text)
    {
        ImmutableArray<SpokenPiece>.Builder pieces = ImmutableArray.CreateBuilder<SpokenPiece>();
        Add(pieces, text.Parts);
        return pieces.ToImmutable();
    }

    /// <summary>The pieces line by line, line ends left out; never empty.</summary>
    public static ImmutableArray<ImmutableArray<SpokenPiece>> Lines(ImmutableArray<SpokenPiece> pieces)
    {
        List<ImmutableArray<SpokenPiece>.Builder> lines = [ImmutableArray.CreateBuilder<SpokenPiece>()];
        foreach (SpokenPiece piece in pieces)
        {
            string[] parts = piece.Words.Split('\n');
            for (int i = 0; i < parts.Length; i++)
            {
                if (i > 0)
                {
                    lines.Add(ImmutableArray.CreateBuilder<SpokenPiece>());
                }

                lines[^1].Add(piece with { Words = parts[i] });
            }
        }

        return [.. lines.Select(l => l.ToImmutable())];
    }

    /// <summary>The words of a line with single blanks between them.</summary>
    public static string WordsOf(ImmutableArray<SpokenPiece> line)
    {
        var words = new StringBuilder();
        foreach (SpokenPiece piece in line)
        {
            words.Append(piece.Words);
        }

        return Text.Prose.Fold(words.ToString());
    }

    // No deeper than CueText.MostDepth.
    private static void Add(ImmutableArray<SpokenPiece>.Builder pieces, ImmutableArray<CuePart> parts)
    {
        foreach (CuePart part in parts)
        {
            switch (part)
            {
                case CuePart.Words words:
                    pieces.Add(new SpokenPiece(words.Text, null));
                    break;
                case CuePart.Timestamp mark:
                    pieces.Add(new SpokenPiece("", mark.Time));
                    break;
                case CuePart.Span { Tag: not CueTag.RubyText } span:
                    Add(pieces, span.Parts);
                    break;
            }
        }
    }
}
