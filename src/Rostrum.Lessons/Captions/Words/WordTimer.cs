using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Lessons.Captions.Words;

/// <summary>Gives each word of a cue its time: the one that the file says, else one worked out by letters between the times that are known.</summary>
/// <remarks>A time is known at the cue's begin and end and at each of its marks. Between two known times every letter takes the same time. Marks
/// that run backwards or leave the cue are passed over. Of two marks at one place, the first ends the word before, the last begins the next.</remarks>
internal sealed class WordTimer
{
    private readonly StringBuilder _word = new();
    private readonly List<(string Word, int FirstLetter)> _words = [];
    private readonly List<(int Letter, TimeSpan Time)> _known;
    private readonly TimeSpan _end;
    private int _letter;

    private WordTimer(TimeSpan start, TimeSpan end)
    {
        _known = [(0, start)];
        _end = end;
    }

    /// <summary>The words of some lines of a cue.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="start">When the first of them begins.</param>
    /// <param name="end">When the cue goes; anything before <paramref name="start"/> counts as that.</param>
    /// <param name="cueIndex">The cue's 0-based place.</param>
    public static ImmutableArray<TimedWord> Of(IEnumerable<ImmutableArray<SpokenPiece>> lines, TimeSpan start, TimeSpan end, int cueIndex)
    {
        var timer = new WordTimer(start, end < start ? start : end);
        foreach (ImmutableArray<SpokenPiece> line in lines)
        {
            foreach (SpokenPiece piece in line)
            {
                timer.Take(piece);
            }

            timer.EndWord();
        }

        return timer.Finish(cueIndex);
    }

    private void Take(SpokenPiece piece)
    {
        if (piece.Time is { } time)
        {
            Mark(time);
            return;
        }

        foreach (char c in piece.Words)
        {
            if (char.IsWhiteSpace(c))
            {
                EndWord();
            }
            else
            {
                _word.Append(c);
            }
        }
    }

    private void Mark(TimeSpan time)
    {
        if (time >= _known[^1].Time && time <= _end)
        {
            _known.Add((_letter + _word.Length, time));
        }
    }

    private void EndWord()
    {
        if (_word.Length > 0)
        {
            _words.Add((_word.ToString(), _letter));
            _letter += _word.Length;
            _word.Clear();
        }
    }

    private ImmutableArray<TimedWord> Finish(int cueIndex)
    {
        _known.Add((_letter, _end));
        ImmutableArray<TimedWord>.Builder timed = ImmutableArray.CreateBuilder<TimedWord>(_words.Count);
        int next = 0;
        foreach ((string word, int first) in _words)
        {
            TimeSpan start = Begin(first, ref next);
            bool isTimed = next > 0 && _known[next].Letter == first;
            timed.Add(new TimedWord(word, start, EndOf(first + word.Length, next), cueIndex, isTimed));
        }

        return timed.MoveToImmutable();
    }

    // The last time known at or before the letter; 'next' goes forward only, so that a cue of a million words takes no longer than its length.
    private TimeSpan Begin(int letter, ref int next)
    {
        while (next + 1 < _known.Count && _known[next + 1].Letter <= letter && _known[next + 1].Letter < _letter)
        {
            next++;
        }

        return Between(next, letter);
    }

    // The first time known at or behind the letter.
    private TimeSpan EndOf(int letter, int from)
    {
        int before = from;
        while (_known[before + 1].Letter < letter)
        {
            before++;
        }

        return Between(before, letter);
    }

    private TimeSpan Between(int before, int letter)
    {
        (int from, TimeSpan begin) = _known[before];
        (int to, TimeSpan end) = _known[before + 1];
        double share = to == from ? 0 : (double)(letter - from) / (to - from);
        return begin + TimeSpan.FromMilliseconds(Math.Round((end - begin).TotalMilliseconds * share));
    }
}
