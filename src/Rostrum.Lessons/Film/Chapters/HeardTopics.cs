using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Finds in the captions of a film when each topic of the lesson begins.</summary>
/// <remarks>Between places at which both surely say the same, see <see cref="WordAnchors"/>, words are counted and not compared.</remarks>
internal sealed class HeardTopics
{
    // How far into a topic the first words that are heard may be: what is before them takes no longer than a few seconds.
    private const int Opening = 25;

    private readonly ImmutableArray<TimedWord> _words;
    private readonly ImmutableArray<int> _starts;
    private readonly ImmutableArray<(int Script, int Heard)> _pairs;
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
        _pairs = WordAnchors.Between(script, [.. _words.Select(w => Plain(w.Text))]);
    }

    /// <summary>The share of the script's words that stand in runs which are heard, in whole percent.</summary>
    public int Percent => _scriptWords == 0 ? 0 : 100 * _pairs.SelectMany(p => Enumerable.Range(p.Script, WordAnchors.WordsInARow)).Distinct().Count() / _scriptWords;

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
        (int Script, int Heard) before = _pairs.LastOrDefault(p => p.Script <= script, (Script: 0, Heard: 0));
        (int Script, int Heard) after = _pairs.FirstOrDefault(p => p.Script > script, (Script: Math.Max(_scriptWords, 1), Heard: _words.Length));
        long heard = before.Script == script
            ? before.Heard
            : Math.Max(before.Heard, IsOpening(script, after.Script) ? after.Heard - (after.Script - script) : Between(script, before, after));
        return (int)Math.Clamp(heard, 0, _words.Length - 1);
    }

    private static bool IsOpening(int script, int after) => after - script < Opening;

    private static long Between(int script, (int Script, int Heard) before, (int Script, int Heard) after) =>
        before.Heard + ((long)(script - before.Script) * (after.Heard - before.Heard) / (after.Script - before.Script));

    private static IEnumerable<string> Spoken(ImmutableArray<LessonRun> passage) => Prose.WordsOf(string.Concat(passage.Where(r => r is not LessonRun.Code).Select(r => r.Words)));

    // 'Four', '4' and 'four,' are one word.
    private static string Plain(string word)
    {
        string letters = string.Concat(word.Where(char.IsLetterOrDigit)).ToLowerInvariant();
        return SpokenNumber.Read(letters) is { } number ? number.ToString(CultureInfo.InvariantCulture) : letters;
    }
}
