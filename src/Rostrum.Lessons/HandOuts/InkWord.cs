using System.Collections.Immutable;
using Rostrum.Pictures;
using Rostrum.Text;

namespace Rostrum.Lessons.HandOuts;

/// <summary>A word on paper.</summary>
/// <param name="Text">Without line breaks; it may hold a blank that is not to be broken.</param>
/// <param name="Tone">Its colour.</param>
/// <param name="Weight">Regular or bold.</param>
internal readonly record struct InkWord(string Text, Tone Tone, FontWeight Weight = FontWeight.Regular)
{
    /// <summary>True where the word before it goes with it to the next line, so that no line holds it alone.</summary>
    public bool StaysWithLast { get; init; }

    /// <summary>The words of a text.</summary>
    public static IEnumerable<InkWord> Of(string text, Tone tone, FontWeight weight = FontWeight.Regular) => Prose.WordsOf(text).Select(w => new InkWord(w, tone, weight));

    /// <summary>Its width in the unit of the size.</summary>
    public double Width(double size) => ShippedFonts.Width(Text, size, Weight);
}

/// <summary>A line of words on paper.</summary>
/// <param name="Words">From left to right.</param>
internal readonly record struct InkLine(ImmutableArray<InkWord> Words)
{
    // A line of exactly the width of its words shall hold them.
    private const double Rounding = 0.01;

    /// <summary>Breaks words into lines; a word wider than a line is broken inside, so that nothing ever sticks out.</summary>
    /// <param name="words">The words, one blank between them.</param>
    /// <param name="width">Of a line.</param>
    /// <param name="size">Height of an em, in the same unit.</param>
    public static ImmutableArray<InkLine> Break(IEnumerable<InkWord> words, double width, double size)
    {
        var lines = ImmutableArray.CreateBuilder<InkLine>();
        var line = ImmutableArray.CreateBuilder<InkWord>();
        double used = 0;
        foreach (InkWord word in words.SelectMany(w => Parts(w, width, size)))
        {
            double wide = word.Width(size);
            double blank = line.Count == 0 ? 0 : Blank(size);
            if (line.Count > 0 && used + blank + wide > width + Rounding)
            {
                InkWord? along = word.StaysWithLast && line.Count > 1 && line[^1].Width(size) + blank + wide <= width ? line[^1] : null;
                lines.Add(new InkLine([.. line.Take(line.Count - (along is null ? 0 : 1))]));
                line.Clear();
                if (along is { } taken)
                {
                    line.Add(taken);
                }

                used = along?.Width(size) ?? 0;
                blank = along is null ? 0 : blank;
            }

            line.Add(word);
            used += blank + wide;
        }

        if (line.Count > 0)
        {
            lines.Add(new InkLine(line.ToImmutable()));
        }

        return lines.ToImmutable();
    }

    /// <summary>The line as texts, neighbours of one look in one.</summary>
    /// <param name="at">The left end, on the base line.</param>
    /// <param name="size">Height of an em.</param>
    public IEnumerable<SceneNode> At(Point at, double size)
    {
        double x = at.X;
        for (int from = 0; from < Words.Length;)
        {
            InkWord first = Words[from];
            int to = from + 1;
            while (to < Words.Length && Words[to].Tone == first.Tone && Words[to].Weight == first.Weight)
            {
                to++;
            }

            // The blank before a change of look belongs to the text, so that who copies the words has it too.
            string text = string.Join(' ', Words[from..to].Select(w => w.Text)) + (to < Words.Length ? " " : "");
            var node = new SceneNode.Text(new Point(x, at.Y), text, size, first.Tone, TextAnchor.Start, first.Weight);
            yield return node;
            x += node.Width;
            from = to;
        }
    }

    private static double Blank(double size) => ShippedFonts.Width(" ", size, FontWeight.Regular);

    private static IEnumerable<InkWord> Parts(InkWord word, double width, double size)
    {
        // No line has room for more letters than this, and a word of a whole page shall not be measured again and again.
        const int Most = 200;
        string rest = word.Text;
        while (rest.Length > Most || (rest.Length > 1 && ShippedFonts.Width(rest, size, word.Weight) > width + Rounding))
        {
            int fits = Enumerable.Range(1, Math.Min(Most, rest.Length - 1)).TakeWhile(n => ShippedFonts.Width(rest[..n], size, word.Weight) <= width).LastOrDefault(1);
            fits += char.IsHighSurrogate(rest[fits - 1]) ? 1 : 0;
            yield return word with { Text = rest[..fits] };
            rest = rest[fits..];
        }

        if (rest.Length > 0)
        {
            yield return word with { Text = rest };
        }
    }
}
