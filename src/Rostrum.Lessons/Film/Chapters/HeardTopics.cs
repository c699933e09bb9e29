using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Finds in the captions of a film when each topic of the lesson begins.</summary>
/// <remarks>Runs of words that stand once in the script and once in the captions are paired; of the pairs the longest sequence that ascends in both is kept, as
/// Bram Cohen's "patience diff" pairs lines (the source is from memory). What lies between two pairs is not compared.</remarks>
internal sealed class HeardTopics
{
    // So many words in a row seldom come twice in a lesson, and machines that write captions get most such runs right.
    private const int Run = 3;

    // How far into a topic the first words that are heard may be: what is before them takes no longer than a few seconds.
    private const int Opening = 25;

    private readonly ImmutableArray<TimedWord> _words;
    private readonly ImmutableArray<int> _starts;
    private readonly Pair[] _pairs;
    private readonly int _scriptWords;

    /// <summary>Compares a lesson with what is said in its film.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="words">What is said, in the order of time.</param>
    public HeardTopics(Lesson lesson, ImmutableArray<TimedWord> words)
    {
        _words = [.. words.Where(w => Plain(w.Text).Length > 0)];
        string[][] topics = [.. lesson.Topics.Select(t => t.Blocks.SelectMany(b => b.Passages).SelectMany(Spoken).Select(Plain).Where(w => w.Length > 0).ToArray())];
        _starts = [.. topics.Select((_, i) => topics.Take(i).Sum(t => t.Length))];
        string[] script = [.. topics.SelectMany(t => t)];
        _scriptWords = script.Length;
        _pairs = Ascending(Pairs(script, [.. _words.Select(w => Plain(w.Text))]));
    }

    /// <summary>The share of the script's words that stand in runs which are heard, in whole percent.</summary>
    public int Percent => _scriptWords == 0 ? 0 : 100 * _pairs.SelectMany(p => Enumerable.Range(p.Script, Run)).Distinct().Count() / _scriptWords;

    /// <summary>When each topic begins, and whether its opening words were heard; times never run backwards.</summary>
    public ImmutableArray<(TimeSpan Start, bool IsHeard)> Times()
    {
        var times = ImmutableArray.CreateBuilder<(TimeSpan, bool)>();
        TimeSpan latest = TimeSpan.Zero;
        for (int i = 0; i < _starts.Length; i++)
        {
            int end = i + 1 < _starts.Length ? _starts[i + 1] : _scriptWords;
            bool isHeard = _pairs.Any(p => p.Script >= _starts[i] && p.Script < Math.Min(end, _starts[i] + Opening));

            // A viewer expects the first chapter at the beginning, whatever is said before its first word.
            TimeSpan start = i == 0 ? TimeSpan.Zero : _words[HeardAt(_starts[i])].Start;
            latest = start > latest ? start : latest;
            times.Add((latest, isHeard));
        }

        return times.ToImmutable();
    }

    // Where a word of the script is in what is heard: between the pairs around it, as far on as in the script.
    private int HeardAt(int script)
    {
        Pair before = _pairs.LastOrDefault(p => p.Script <= script, new Pair(0, 0));
        Pair after = _pairs.FirstOrDefault(p => p.Script > script, new Pair(Math.Max(_scriptWords, 1), _words.Length));
        long heard = before.Script == script
            ? before.Heard
            : Math.Max(before.Heard, IsOpening(script, after.Script) ? after.Heard - (after.Script - script) : Between(script, before, after));
        return (int)Math.Clamp(heard, 0, _words.Length - 1);
    }

    private static bool IsOpening(int script, int after) => after - script < Opening;

    private static long Between(int script, Pair before, Pair after) =>
        before.Heard + ((long)(script - before.Script) * (after.Heard - before.Heard) / (after.Script - before.Script));

    private static IEnumerable<string> Spoken(ImmutableArray<LessonRun> passage) => Prose.WordsOf(string.Concat(passage.Where(r => r is not LessonRun.Code).Select(r => r.Words)));

    // 'Four', '4' and 'four,' are one word.
    private static string Plain(string word)
    {
        string letters = string.Concat(word.Where(char.IsLetterOrDigit)).ToLowerInvariant();
        return SpokenNumber.Read(letters) is { } number ? number.ToString(CultureInfo.InvariantCulture) : letters;
    }

    private static IEnumerable<Pair> Pairs(string[] script, string[] heard)
    {
        Dictionary<string, int> once = Once(heard);
        return Once(script).Where(r => r.Value >= 0 && once.TryGetValue(r.Key, out int at) && at >= 0).Select(r => new Pair(r.Value, once[r.Key])).OrderBy(p => p.Script);
    }

    // Where each run begins; -1 for one that comes again.
    private static Dictionary<string, int> Once(string[] words)
    {
        var runs = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i + Run <= words.Length; i++)
        {
            string run = string.Join(' ', words[i..(i + Run)]);
            runs[run] = runs.ContainsKey(run) ? -1 : i;
        }

        return runs;
    }

    // The longest subsequence that ascends (C. Schensted, "Longest increasing and decreasing subsequences", Canadian Journal of Mathematics 13, 1961): the least last member of each length is kept.
    private static Pair[] Ascending(IEnumerable<Pair> pairs)
    {
        Pair[] all = [.. pairs];
        int[] before = new int[all.Length];
        var last = new List<int>();
        for (int i = 0; i < all.Length; i++)
        {
            int length = last.BinarySearch(i, Comparer<int>.Create((a, b) => all[a].Heard.CompareTo(all[b].Heard)));
            length = length < 0 ? ~length : length;
            before[i] = length > 0 ? last[length - 1] : -1;
            if (length == last.Count)
            {
                last.Add(i);
            }
            else
            {
                last[length] = i;
            }
        }

        var kept = new List<Pair>();
        for (int at = last.Count > 0 ? last[^1] : -1; at >= 0; at = before[at])
        {
            kept.Add(all[at]);
        }

        kept.Reverse();
        return [.. kept];
    }

    // A run of words: its first in the script, counted from 0, and in what is heard.
    private readonly record struct Pair(int Script, int Heard);
}
