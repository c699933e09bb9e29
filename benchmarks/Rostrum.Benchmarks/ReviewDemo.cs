using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Testing.Speech;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>Changes one number word of the demo recording after the other and tells whether the review finds it, and how long a review of an hour takes.</summary>
internal static class ReviewDemo
{
    private const string Demo = "kiln-night";
    private const double WordsAMinute = 176;
    private const ulong Seed = 7;
    private const int LongWords = 9000;
    private const double MinutesOfLong = 60;
    private const int Rounds = 5;

    private static readonly TimeSpan Near = TimeSpan.FromSeconds(2.5);

    /// <summary>One line for each changed number: <c>found</c>, <c>listen</c> or <c>missed</c>, what else is newly found, and the words round it.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="isFree">For the recording that is spoken freely; otherwise the one along the script.</param>
    public static int Changes(TextWriter to, bool isFree)
    {
        Game game = ShippedGames.Open(Demo);
        return Changes(to, game, LessonOf(game), Speech(isFree).Mended());
    }

    /// <summary>The same for the script of the lesson read aloud word for word, and each passage that says a rule left out.</summary>
    public static int Read(TextWriter to)
    {
        Game game = ShippedGames.Open(Demo);
        Lesson lesson = LessonOf(game);
        string[] sentences = [.. ScriptSpeech.Of(lesson).Sentences.Where(s => !s.IsCaption).Select(s => s.Words)];
        SpokenLesson Spoken(IEnumerable<string> said) => Speech(isFree: false).Mended() with { Words = [.. said.SelectMany(s => s.Split(' ', StringSplitOptions.RemoveEmptyEntries))] };
        SpokenLesson whole = Spoken(sentences);
        Changes(to, game, lesson, whole);
        string[] told = [.. Review(game, lesson, whole).Report.Certain.Where(f => f.Time is null).Select(f => f.Clause)];
        int found = 0;
        var script = ScriptWords.Of(game, game.Sheet().Sheet!, lesson);
        string[] heard = [.. Review(game, lesson, whole).Report.Coverage.Select(c => c.Clause).Except(told)];
        (string Section, string Name)[] known = [.. script.Places.Keys.Where(k => CoverageReview.IsRule(k.Section) && heard.Contains(k.Name)).Order()];
        foreach ((string Section, string Name) rule in known)
        {
            RecordingReport without = Review(game, lesson, Spoken(sentences.Where(s => !script.Passage(rule)!.Contains(s, StringComparison.Ordinal)))).Report;
            string[] fresh = [.. without.Certain.Where(f => f.Time is null).Select(f => f.Clause).Except(told)];
            found += fresh.Contains(rule.Name) ? 1 : 0;
            to.WriteLine($"{(fresh.Contains(rule.Name) ? "found" : "missed")} without '{rule.Section}/{rule.Name}': {string.Join(", ", fresh)}");
        }

        to.WriteLine($"rules left out: found {found} of {known.Length}; told of the whole script: {told.Length}");
        return 0;
    }

    private static int Changes(TextWriter to, Game game, Lesson lesson, SpokenLesson right)
    {
        RecordingReport before = Review(game, lesson, right).Report;
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"without slips: {before.Certain.Length} certain, {before.Listen.Length} to listen to"));
        foreach (Finding finding in before.Certain)
        {
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  FALSE {finding.Kind} {finding.Time:mm\\:ss} '{finding.Said}' [{finding.Clause}: {finding.Sheet}]"));
        }

        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i < right.Words.Length; i++)
        {
            if (!IsLabel(right.Words, i) && Other(right.Words[i]) is { } other)
            {
                string how = One(to, game, lesson, right, before, i, other);
                counts[how] = counts.GetValueOrDefault(how) + 1;
            }
        }

        to.WriteLine(string.Join(", ", counts.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"{c.Key} {c.Value}")));
        return 0;
    }

    /// <summary>The time and the memory that a review of sixty minutes takes.</summary>
    public static int Long(TextWriter to)
    {
        SpokenLesson speech = Speech(isFree: true);
        var talk = speech with { Words = [.. Enumerable.Range(0, LongWords).Select(i => speech.Words[i % speech.Words.Length])], Slips = [] };
        byte[] captions = Encoding.UTF8.GetBytes(PlatformCaptions.Of(talk, CaptionNoise.Usual, LongWords / MinutesOfLong, Seed).Text);
        Game game = ShippedGames.Open(Demo);
        Lesson lesson = LessonOf(game);
        TimeSpan[] times = [.. Enumerable.Range(0, Rounds).Select(_ => Timed(game, lesson, captions))];
        using var process = Process.GetCurrentProcess();
        to.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"review of {LongWords} words ({captions.Length / 1024} KB of captions): first {times[0].TotalMilliseconds:0} ms, then median {times.Order().ElementAt(Rounds / 2).TotalMilliseconds:0} ms; {process.TotalProcessorTime.TotalSeconds / Rounds:0.0} s of processor time a round; memory at the most {process.PeakWorkingSet64 / (1024 * 1024)} MB"));
        return 0;
    }

    private static string One(TextWriter to, Game game, Lesson lesson, SpokenLesson right, RecordingReport before, int word, string other)
    {
        (RecordingReport after, ImmutableArray<TimeSpan> times) = Review(game, lesson, right with { Words = right.Words.SetItem(word, other) });
        Finding[] fresh = [.. after.Certain.Where(f => !before.Certain.Any(b => IsSame(b, f)))];
        Finding? hit = fresh.FirstOrDefault(f => f.Time is { } at && (at - times[word]).Duration() < Near);
        Finding? listened = after.Listen.FirstOrDefault(f => f.Time is { } at && (at - times[word]).Duration() < Near && !before.Listen.Any(b => IsSame(b, f)));
        string how = hit is not null ? "found" : listened is not null ? "listen" : "missed";
        string others = fresh.Length - (hit is null ? 0 : 1) is > 0 and var more ? $" ({more} other new)" : "";
        string right1 = hit is { Right: { } meant } && meant != SpokenNumber.Read(Bare(right.Words[word])) ? $" (taken for {meant} of {hit.Clause})" : "";
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{how,-7} {times[word]:m\\:ss} {Bare(right.Words[word])} -> {Bare(other)}{others}{right1} [{hit?.Clause} {hit?.Cite?.InWords}] … {string.Join(' ', right.Words.Skip(word - 6).Take(13))}"));
        return how;
    }

    private static bool IsSame(Finding one, Finding other) => one.Kind == other.Kind && one.Clause == other.Clause && (one.Time is null || (one.Time.Value - other.Time!.Value).Duration() < Near);

    // A plausible slip: one more, or one less where that is no number of things.
    private static string? Other(string word)
    {
        string bare = Bare(word);
        if (bare is "one" or "first" or "a" or "no" || bare.Contains('-', StringComparison.Ordinal) || SpokenNumber.Read(bare) is not ({ } number and >= 2 and <= 90))
        {
            return null;
        }

        string said = number switch { < 12 => Prose.Word(number + 1), _ => (number + 2).ToString(CultureInfo.InvariantCulture) };
        return word.ToLowerInvariant().Replace(bare, said, StringComparison.Ordinal);
    }

    // 'Page three', 'card eleven', 'three, wait, make that two', a number of the speech's own: no rule says it.
    private static bool IsLabel(ImmutableArray<string> words, int at) =>
        (at > 0 && Bare(words[at - 1]) is "page" or "number" or "card" or "like") || (at + 1 < words.Length && Bare(words[at + 1]) is "wait" or "rules" or "placings");

    private static string Bare(string word) => word.Trim('.', ',', '!', '?', ':', ';', '"').ToLowerInvariant();

    private static SpokenLesson Speech(bool isFree) => SpokenLesson.Read(Demo, TestFiles.Read($"games/{Demo}/recording{(isFree ? "-free" : "")}.txt"));

    private static (RecordingReport Report, ImmutableArray<TimeSpan> Times) Review(Game game, Lesson lesson, SpokenLesson speech)
    {
        (string text, ImmutableArray<TimeSpan> times) = PlatformCaptions.Of(speech, CaptionNoise.Usual, WordsAMinute, Seed);
        return (RecordingReview.Of(game, CaptionReader.Read("recording.vtt", Encoding.UTF8.GetBytes(text)), lesson), times);
    }

    private static TimeSpan Timed(Game game, Lesson lesson, byte[] captions)
    {
        long start = Stopwatch.GetTimestamp();
        RecordingReview.Of(game, CaptionReader.Read("recording.vtt", captions), lesson);
        return Stopwatch.GetElapsedTime(start);
    }

    private static Lesson LessonOf(Game game) => LessonReader.Read(game.Folder.Read("lesson.md").Text!, new DiagnosticBag());
}
