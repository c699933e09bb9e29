using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>The words that are to be broken, with what the costs need of each worked out once. Times are whole milliseconds and never run backwards.</summary>
internal sealed class BreakText
{
    private readonly string[] _words;
    private readonly int[] _widthBefore;
    private readonly long[] _starts;
    private readonly long[] _ends;
    private readonly long[] _breaks;
    private readonly bool[] _sentenceEnds;

    /// <summary>Takes the words in the order in which they are said.</summary>
    public BreakText(ImmutableArray<TimedWord> words)
    {
        _words = [.. words.Select(w => w.Text)];
        _widthBefore = new int[words.Length + 1];
        _starts = new long[words.Length];
        _ends = new long[words.Length];
        _breaks = new long[words.Length];
        _sentenceEnds = new bool[words.Length];
        long latest = 0;
        for (int i = 0; i < words.Length; i++)
        {
            latest = Math.Max(latest, Milliseconds(words[i].Start));
            _starts[i] = latest;
            _widthBefore[i + 1] = _widthBefore[i] + new StringInfo(_words[i]).LengthInTextElements;
        }

        for (int i = 0; i < words.Length; i++)
        {
            // A word that overlaps the next ends when the next begins.
            _ends[i] = Math.Clamp(Milliseconds(words[i].End), _starts[i], i + 1 < words.Length ? _starts[i + 1] : long.MaxValue);
            _breaks[i] = BreakWords.Cost(At(i - 1), At(i), At(i + 1), At(i + 2), PauseBehind(i));
            _sentenceEnds[i] = BreakWords.EndsSentence(At(i), At(i + 1));
        }
    }

    /// <summary>How many words.</summary>
    public int Count => _words.Length;

    /// <summary>The word as written; empty beyond both ends.</summary>
    public string At(int word) => word < 0 || word >= _words.Length ? "" : _words[word];

    /// <summary>When the word begins; the end of time behind the last.</summary>
    public long Start(int word) => word < _starts.Length ? _starts[word] : long.MaxValue;

    /// <summary>When the word ends.</summary>
    public long End(int word) => _ends[word];

    /// <summary>What a break behind the word costs; nothing behind the last.</summary>
    public long BreakBehind(int word) => word + 1 < _words.Length ? _breaks[word] : 0;

    /// <summary>True where a sentence ends with the word.</summary>
    public bool EndsSentence(int word) => _sentenceEnds[word];

    /// <summary>The silence behind the word; 0 behind the last.</summary>
    public long PauseBehind(int word) => word + 1 < _words.Length ? _starts[word + 1] - _ends[word] : 0;

    /// <summary>How many characters a line of the words takes: what a reader takes for one, with a blank between words.</summary>
    public int Width(int from, int to) => _widthBefore[to] - _widthBefore[from] + to - from - 1;

    /// <summary>The words of a line.</summary>
    public string Line(int from, int to) => string.Join(' ', _words[from..to]);

    private static long Milliseconds(TimeSpan time) => (long)Math.Round(time.TotalMilliseconds);
}
