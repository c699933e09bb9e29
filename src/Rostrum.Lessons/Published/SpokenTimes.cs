using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Published;

/// <summary>When each sentence of a lesson is said in the finished video: from its captions where they say so, else worked out from the words.</summary>
internal sealed class SpokenTimes
{
    // Fewer places in common than these, and the presenter did not speak this script.
    private const int FewestAnchors = 8;

    // So far from a place in common the time of a word is still known to the second or two.
    private const int NearWords = 10;

    private const int MillisecondsAMinute = 60_000;

    private readonly Lesson _lesson;
    private readonly LessonClock _clock;
    private readonly ImmutableArray<TimedWord> _heard;
    private readonly ImmutableArray<(int Script, int Heard)> _anchors = [];
    private readonly Dictionary<SpokenSentence, int> _firstWord = new(ReferenceEqualityComparer.Instance);

    /// <summary>The times of a lesson.</summary>
    /// <param name="speech">The lesson, sentence by sentence.</param>
    /// <param name="captions">The captions of the finished video; null where there are none.</param>
    public SpokenTimes(ScriptSpeech speech, CaptionFile? captions)
    {
        _lesson = speech.Lesson;
        _clock = LessonClock.Of(_lesson);
        _heard = captions is null ? [] : SpokenWords.Of(captions);
        var script = new List<string>();
        foreach (SpokenSentence sentence in speech.Sentences.Where(s => !s.IsCaption))
        {
            _firstWord[sentence] = script.Count;
            script.AddRange(WordAnchors.WordsOf(sentence.Words));
        }

        // A word of the captions may be several of ours, such as 'thirty-five'.
        (string Word, int At)[] heard = [.. _heard.SelectMany((w, i) => WordAnchors.WordsOf(w.Text).Select(t => (t, i)))];
        ImmutableArray<(int Script, int Heard)> anchors = WordAnchors.Between(script, [.. heard.Select(h => h.Word)]);
        _anchors = anchors.Length < FewestAnchors ? [] : [.. anchors.Select(a => (a.Script, heard[a.Heard].At))];
    }

    /// <summary>How long the video is.</summary>
    public VideoTime Length => _heard.IsEmpty ? VideoTime.Of(_clock.Length, true) : VideoTime.Of(_heard[^1].End, false);

    /// <summary>When a sentence begins.</summary>
    public VideoTime Of(SpokenSentence sentence)
    {
        if (_anchors.IsEmpty || !_firstWord.TryGetValue(sentence, out int word))
        {
            int before = _lesson.Topics.Take(sentence.Topic).Sum(t => t.Words);
            return Scaled(_clock.Topics[sentence.Topic].Start + TimeSpan.FromMilliseconds((long)Math.Max(0, sentence.WordsBefore - before) * MillisecondsAMinute / _lesson.WordsAMinute));
        }

        return Heard(word);
    }

    /// <summary>When a topic begins.</summary>
    public VideoTime OfTopic(int topic) =>
        _firstWord.Keys.Where(s => s.Topic == topic).MinBy(s => _firstWord[s]) is { } first ? Of(first) : Scaled(_clock.Topics[topic].Start);

    // Where the captions are of another speech, the lesson is stretched over the video.
    private VideoTime Scaled(TimeSpan time) => VideoTime.Of(_heard.IsEmpty || _clock.Length == TimeSpan.Zero ? time : time * (_heard[^1].End / _clock.Length), true);

    // Near a place in common the words are counted; between two far ones the time is shared out.
    private VideoTime Heard(int word)
    {
        int next = FirstAnchorFrom(word);
        if (next < _anchors.Length && _anchors[next].Script - word <= NearWords)
        {
            int least = next == 0 ? 0 : _anchors[next - 1].Heard;
            return VideoTime.Of(_heard[Math.Max(least, _anchors[next].Heard - (_anchors[next].Script - word))].Start, false);
        }

        (int fromWord, TimeSpan from) = next == 0 ? (0, TimeSpan.Zero) : (_anchors[next - 1].Script, _heard[_anchors[next - 1].Heard].Start);
        (int toWord, TimeSpan to) = next == _anchors.Length ? (fromWord + _heard.Length - _anchors[^1].Heard, _heard[^1].End) : (_anchors[next].Script, _heard[_anchors[next].Heard].Start);
        double share = toWord <= fromWord ? 0 : Math.Clamp((double)(word - fromWord) / (toWord - fromWord), 0, 1);
        return VideoTime.Of(from + ((to - from) * share), true);
    }

    private int FirstAnchorFrom(int word)
    {
        (int low, int high) = (0, _anchors.Length);
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _anchors[middle].Script < word ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
