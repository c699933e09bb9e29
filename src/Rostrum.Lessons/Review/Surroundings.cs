using System.Collections.Immutable;

namespace Rostrum.Lessons.Review;

/// <summary>What is said round a number: the ideas near it, how far off each is, and whether the talk is of rules or of an example on the table.</summary>
internal sealed class Surroundings
{
    private const int Reach = 14;
    private const int Close = 7;

    // A pause after which something else is spoken of.
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1.5);

    private static readonly HashSet<string> OfExamples =
        ["here", "this", "these", "that's", "so", "now", "look", "see", "my", "i", "i've", "i'd", "i'm", "mine", "me", "example", "say", "imagine", "suppose", "altogether", "total", "together", "makes", "plus", "gives", "leaves", "already", "currently", "he", "she", "anna", "ben"];

    private readonly Dictionary<string, int> _distance = new(StringComparer.Ordinal);
    private readonly HashSet<long> _numbers = [];

    /// <summary>Looks round a number.</summary>
    /// <param name="tokens">What is said.</param>
    /// <param name="at">Where the number stands.</param>
    public Surroundings(ImmutableArray<SpokenToken> tokens, int at)
    {
        From = Edge(tokens, at, -1);
        To = Edge(tokens, at, 1);
        for (int i = From; i <= To; i++)
        {
            if (tokens[i].Stem.Length > 0 && (!_distance.TryGetValue(tokens[i].Stem, out int known) || known > Math.Abs(i - at)))
            {
                _distance[tokens[i].Stem] = Math.Abs(i - at);
            }

            if (i != at && (tokens[i].Number ?? tokens[i].Homophone) is { } number)
            {
                _numbers.Add(number);
            }

            ExampleCues += OfExamples.Contains(tokens[i].Text) && Math.Abs(i - at) <= Close ? 1 : 0;
        }
    }

    /// <summary>The first token that belongs to it.</summary>
    public int From { get; }

    /// <summary>The last token that belongs to it.</summary>
    public int To { get; }

    /// <summary>How many words speak of an example rather than of a rule.</summary>
    public int ExampleCues { get; }

    /// <summary>True where another number of this amount is near.</summary>
    public bool Says(long number) => _numbers.Contains(number);

    /// <summary>True where an idea is near.</summary>
    public bool Holds(string stem) => _distance.ContainsKey(stem);

    /// <summary>How near an idea is: 1 within seven words, less further off, 0 where it is not said.</summary>
    public double Nearness(string stem) => _distance.TryGetValue(stem, out int words) ? (words <= Close ? 1 : 0.7) : 0;

    /// <summary>The ideas that are near.</summary>
    public IEnumerable<string> Ideas => _distance.Keys;

    private static int Edge(ImmutableArray<SpokenToken> tokens, int at, int step)
    {
        int edge = at;
        for (int i = 1; i <= Reach; i++)
        {
            int next = at + (step * i);
            if (next < 0 || next >= tokens.Length)
            {
                break;
            }

            (SpokenToken before, SpokenToken after) = step < 0 ? (tokens[next], tokens[next + 1]) : (tokens[next - 1], tokens[next]);
            if (before.EndsSentence || after.Start - before.End > Pause)
            {
                break;
            }

            edge = next;
        }

        return edge;
    }
}
