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

    // A sentence is heard where so many of its words stand, or a few words before and behind.
    private const double LeastHeard = 0.6;
    private const int Around = 6;
    private const int AroundEstimate = 25;

    // Fewer words stand together by chance; they are heard only beside a place in common.
    private const int FewestToFind = 5;

    private const int MillisecondsAMinute = 60_000;

    private readonly Lesson _lesson;
    private readonly LessonClock _clock;
    private readonly ImmutableArray<TimedWord> _timed;
    private readonly (string Word, TimeSpan Start)[] _heard;
    private readonly List<string> _script = [];
    private readonly ImmutableArray<(int Script, int Heard)> _anchors = [];
    private readonly Dictionary<SpokenSentence, (int First, int Count)> _words = new(ReferenceEqualityComparer.Instance);

    /// <summary>The times of a lesson.</summary>
    /// <param name="speech">The lesson, sentence by sentence.</param>
    /// <param name="captions">The captions of the finished video; null where there are none.</param>
    public SpokenTimes(ScriptSpeech speech, CaptionFile? captions)
    {
        _lesson = speech.Lesson;
        _clock = LessonClock.Of(_lesson);
        _timed = captions is null ? [] : SpokenWords.Of(captions);
        foreach (SpokenSentence sentence in speech.Sentences.Where(s => !s.IsCaption))
        {
            string[] words = [.. WordAnchors.WordsOf(sentence.Words)];
            _words[sentence] = (_script.Count, words.Length);
            _script.AddRange(words);
        }

        // A word of the captions may be several of ours, such as 'thirty-five'.
        _heard = [.. _timed.SelectMany(w => WordAnchors.WordsOf(w.Text).Select(t => (t, w.Start)))];
        ImmutableArray<(int Script, int Heard)> anchors = WordAnchors.Between(_script, [.. _heard.Select(h => h.Word)]);
        _anchors = anchors.Length < FewestAnchors ? [] : anchors;
    }

    /// <summary>How long the video is.</summary>
    public VideoTime Length => _timed.IsEmpty ? VideoTime.Of(_clock.Length, true) : VideoTime.Of(_timed[^1].End, false);

    /// <summary>When a sentence begins.</summary>
    public VideoTime Of(SpokenSentence sentence)
    {
        if (_anchors.IsEmpty || !_words.TryGetValue(sentence, out (int First, int Count) words))
        {
            int before = _lesson.Topics.Take(sentence.Topic).Sum(t => t.Words);
            return Scaled(_clock.Topics[sentence.Topic].Start + TimeSpan.FromMilliseconds((long)Math.Max(0, sentence.WordsBefore - before) * MillisecondsAMinute / _lesson.WordsAMinute));
        }

        (int at, bool isNear) = PlaceOf(words.First);
        return VideoTime.Of(_heard[at].Start, !isNear || !IsHeard(words, at, Around));
    }

    /// <summary>True where the video says a sentence of the script, and where there are no captions to tell.</summary>
    public bool Says(SpokenSentence sentence)
    {
        if (_timed.IsEmpty)
        {
            return true;
        }

        return !_anchors.IsEmpty && _words.TryGetValue(sentence, out (int First, int Count) words) && PlaceOf(words.First) is var (at, isNear)
            && (isNear || words.Count >= FewestToFind) && IsHeard(words, at, isNear ? Around : AroundEstimate);
    }

    /// <summary>When a topic begins.</summary>
    public VideoTime OfTopic(int topic) =>
        _words.Keys.Where(s => s.Topic == topic).MinBy(s => _words[s].First) is { } first ? Of(first) : Scaled(_clock.Topics[topic].Start);

    // Where the captions are of another speech, the lesson is stretched over the video.
    private VideoTime Scaled(TimeSpan time) => VideoTime.Of(_timed.IsEmpty || _clock.Length == TimeSpan.Zero ? time : time * (_timed[^1].End / _clock.Length), true);

    private bool IsHeard((int First, int Count) words, int at, int around)
    {
        HashSet<string> there = [.. _heard.Skip(Math.Max(0, at - around)).Take(words.Count + (2 * around)).Select(h => h.Word)];
        return words.Count > 0 && _script.Skip(words.First).Take(words.Count).Count(there.Contains) >= LeastHeard * words.Count;
    }

    // Near a place in common the words are counted; between two far ones the place is shared out.
    private (int At, bool IsNear) PlaceOf(int word)
    {
        int next = FirstAnchorFrom(word);
        if (next < _anchors.Length && _anchors[next].Script - word <= NearWords)
        {
            int least = next == 0 ? 0 : _anchors[next - 1].Heard;
            return (Math.Max(least, _anchors[next].Heard - (_anchors[next].Script - word)), true);
        }

        (int fromWord, int from) = next == 0 ? (0, 0) : _anchors[next - 1];
        (int toWord, int to) = next == _anchors.Length ? (fromWord + _heard.Length - from, _heard.Length - 1) : _anchors[next];
        double share = toWord <= fromWord ? 0 : Math.Clamp((double)(word - fromWord) / (toWord - fromWord), 0, 1);
        return (from + (int)((to - from) * share), false);
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
