using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Review;

/// <summary>A word or a number of a script.</summary>
/// <param name="Token">As if it were spoken.</param>
/// <param name="Sentence">0-based, as <see cref="ScriptSpeech.Sentences"/> has them.</param>
/// <param name="Topic">0-based.</param>
/// <param name="Claim">The checked statement that speaks it; null for plain words.</param>
internal sealed record ScriptToken(SpokenToken Token, int Sentence, int Topic, LessonRun.Claim? Claim);

/// <summary>Lays a script beside what was said, topic by topic, whatever order the topics were filmed in.</summary>
/// <remarks>Each topic is laid where it fits best, by dynamic programming over words: equal words, numbers in the place of numbers, words left out and words put in between.
/// The time and the memory grow with the words of a topic times the words of the recording.</remarks>
internal sealed class ScriptAlignment
{
    // Beyond it a script is not laid beside the recording: a topic of ten thousand words, or a day of speech.
    private const long MostCells = 60_000_000;

    /// <summary>From here on somebody reads: see <see cref="Read"/>.</summary>
    public const double ReadClosely = 0.6;

    private const float OfNumber = 2.5f;
    private const float OfWord = 2;
    private const float OfSmallWord = 1;
    private const float OtherNumber = -0.3f;
    private const float OtherWord = -1.5f;
    private const float LeftOut = -0.5f;
    private const float PutIn = -0.1f;

    /// <summary>Lays a script beside what was said.</summary>
    public ScriptAlignment(ScriptSpeech script, ImmutableArray<SpokenToken> heard)
    {
        (Speech, Heard) = (script, heard);
        var tokens = ImmutableArray.CreateBuilder<ScriptToken>();
        var places = new List<int>();
        SpokenSentence[] said = [.. script.Sentences];
        foreach (IGrouping<int, (SpokenSentence Sentence, int At)> topic in said.Select((s, i) => (Sentence: s, At: i)).Where(s => !s.Sentence.IsCaption).GroupBy(s => s.Sentence.Topic))
        {
            ScriptToken[] of = [.. topic.SelectMany(s => TokensOf(s.Sentence, s.At))];
            tokens.AddRange(of);
            places.AddRange(Laid(of));
        }

        (Tokens, HeardAt) = (tokens.ToImmutable(), [.. places]);
        // In 'jugs five for the plates' the number is five, though a machine may write 'for' where four was said.
        HashSet<int> taken = [.. HeardAt];
        HeardAt = [.. HeardAt.Select((at, i) => at > 0 && Tokens[i].Token.Number is not null && heard[at].Number is null && heard[at - 1].Number is not null && !taken.Contains(at - 1) ? at - 1 : at)];
    }

    /// <summary>The script.</summary>
    public ScriptSpeech Speech { get; }

    /// <summary>What was said.</summary>
    public ImmutableArray<SpokenToken> Heard { get; }

    /// <summary>The words of the script.</summary>
    public ImmutableArray<ScriptToken> Tokens { get; }

    /// <summary>By word of the script, the heard word beside it: the same one, or for a number the one in its place; -1 where it was left out.</summary>
    public ImmutableArray<int> HeardAt { get; }

    /// <summary>True where the word that was heard is that of the script.</summary>
    public bool IsSame(int at) => HeardAt[at] >= 0 && Worth(Tokens[at].Token, Heard[HeardAt[at]]) > 0;

    /// <summary>True for a number, and for a word that tells which rule is meant.</summary>
    public bool IsTelling(int at) => Tokens[at].Token is { Stem.Length: > 0 } or { Number: not null };

    /// <summary>How much of the words that tell something was heard as written, 0 to 1.</summary>
    /// <param name="of">Which words; 1 where none of them tells anything.</param>
    public double Followed(IEnumerable<int> of)
    {
        int[] telling = [.. of.Where(IsTelling)];
        return telling.Length == 0 ? 1 : (double)telling.Count(IsSame) / telling.Length;
    }

    /// <summary>Of two words that follow each other in the script, how often both are heard one right behind the other, 0 to 1: high for somebody who reads, low for somebody who has bullets before them.</summary>
    /// <param name="of">Which words, in order.</param>
    public double Read(IReadOnlyList<int> of) =>
        of.Count < 2 ? 0 : (double)of.Zip(of.Skip(1)).Count(p => IsSame(p.First) && IsSame(p.Second) && HeardAt[p.Second] - HeardAt[p.First] is 1 or 2) / (of.Count - 1);

    private static IEnumerable<ScriptToken> TokensOf(SpokenSentence sentence, int at)
    {
        var claims = new Queue<LessonRun.Claim>(sentence.Runs.OfType<LessonRun.Claim>().Where(c => Statements.Spoken(c.Words).Any(t => t.Number is not null)));
        foreach (SpokenToken token in Statements.Spoken(sentence.Words))
        {
            bool isClaim = token.Number is { } number && claims.TryPeek(out LessonRun.Claim? claim) && Statements.Spoken(claim.Words).Any(t => t.Number == number);
            yield return new ScriptToken(token, at, sentence.Topic, isClaim ? claims.Dequeue() : null);
        }
    }

    private static float Worth(SpokenToken script, SpokenToken heard)
    {
        if (script.Number is { } number)
        {
            // 'Costs one' and 'is minus one' are the same.
            return heard.Number is null ? (heard.Homophone is not { } alike ? OtherWord : alike == number ? OfNumber : OtherNumber)
                : heard.IsOrdinal != script.IsOrdinal ? OtherWord : heard.Size == script.Size ? OfNumber : OtherNumber;
        }

        return heard.Number is not null ? OtherWord
            : script.Stem.Length > 0 && script.Stem == heard.Stem ? OfWord
            : script.Text == heard.Text ? OfSmallWord : OtherWord;
    }

    // The whole topic against a stretch of the recording; what is said before and behind costs nothing.
    private int[] Laid(ScriptToken[] topic)
    {
        int[] places = [.. Enumerable.Repeat(-1, topic.Length)];
        int width = Heard.Length + 1;
        if ((long)topic.Length * width > MostCells)
        {
            return places;
        }

        byte[] came = new byte[(topic.Length + 1) * width];
        float[] above = new float[width];
        float[] row = new float[width];
        for (int i = 1; i <= topic.Length; i++)
        {
            row[0] = i * LeftOut;
            came[i * width] = 1;
            for (int j = 1; j < width; j++)
            {
                float both = above[j - 1] + Worth(topic[i - 1].Token, Heard[j - 1]);
                float left = above[j] + LeftOut;
                float extra = row[j - 1] + PutIn;
                (row[j], came[(i * width) + j]) = both >= left && both >= extra ? (both, (byte)0) : left >= extra ? (left, (byte)1) : (extra, (byte)2);
            }

            (above, row) = (row, above);
        }

        int at = Array.IndexOf(above, above.Max());
        for (int i = topic.Length; i > 0;)
        {
            switch (came[(i * width) + at])
            {
                case 0:
                    places[i - 1] = Worth(topic[i - 1].Token, Heard[at - 1]) > OtherWord ? at - 1 : -1;
                    (i, at) = (i - 1, at - 1);
                    break;
                case 1:
                    i--;
                    break;
                default:
                    at--;
                    break;
            }
        }

        return places;
    }
}
