using System.Collections.Immutable;

namespace Rostrum.Lessons.Review;

/// <summary>What is spoken of round one place of a talk: each idea with how near it is, 0 to 1.</summary>
/// <remarks>An idea fades with every word and with every sentence in between, and less backwards than forwards: what a number counts is most often said before it.</remarks>
internal sealed class Context
{
    private const int Back = 34;
    private const int Ahead = 16;
    private const double FadeBack = 16;
    private const double FadeAhead = 9;
    private const double SentenceBack = 0.72;
    private const double SentenceAhead = 0.55;
    private const double NumberBetween = 0.88;

    // 'You' and 'everybody' are players, though not as plainly as the word.
    private const double OfYou = 0.6;

    private static readonly HashSet<string> You = ["you", "you've", "you'll", "you're", "your", "everybody", "everyone", "each", "we", "we've", "us", "he", "she", "they"];

    private static readonly string Player = Stems.Of("player");

    private readonly Dictionary<string, double> _near = new(StringComparer.Ordinal);

    /// <summary>Looks round a place.</summary>
    /// <param name="tokens">What is said.</param>
    /// <param name="at">The place, which is no part of its own surroundings.</param>
    public Context(ImmutableArray<SpokenToken> tokens, int at)
    {
        double part = 1;
        for (int i = at - 1; i >= Math.Max(0, at - Back); i--)
        {
            part *= tokens[i].EndsSentence ? SentenceBack : 1;
            Add(tokens[i], part * Math.Exp(-(at - i - 1) / FadeBack));
            part *= tokens[i].Number is null ? 1 : NumberBetween;
        }

        part = tokens[at].EndsSentence ? SentenceAhead : 1;
        for (int i = at + 1; i < Math.Min(tokens.Length, at + 1 + Ahead); i++)
        {
            Add(tokens[i], part * Math.Exp(-(i - at - 1) / FadeAhead));
            part *= (tokens[i].EndsSentence ? SentenceAhead : 1) * (tokens[i].Number is null ? 1 : NumberBetween);
        }
    }

    /// <summary>How near an idea is; 0 where it is not spoken of.</summary>
    public double Nearness(string stem) => _near.GetValueOrDefault(stem);

    private void Add(SpokenToken token, double near)
    {
        if (token.Stem.Length > 0)
        {
            Raise(token.Stem, near);
        }
        else if (You.Contains(token.Text))
        {
            Raise(Player, near * OfYou);
        }
    }

    private void Raise(string stem, double near) => _near[stem] = Math.Max(_near.GetValueOrDefault(stem), near);
}
