using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Rostrum.Testing.Speech;

/// <summary>Writes a talk as a platform exports the captions that its machine made, the same for the same seed.</summary>
/// <remarks>Each cue shows the line before once more and a new line below it, whose words have their own times; between two cues stands one of a
/// hundredth of a second that shows the line alone. The form is that of such exports as our reader of captions takes them for rolling.</remarks>
public static class PlatformCaptions
{
    private const int LettersInLine = 38;
    private const int FillerMilliseconds = 10;

    /// <summary>WebVTT, and for each word of the talk the time at which it is said.</summary>
    /// <param name="lesson">The talk.</param>
    /// <param name="noise">What is spoilt.</param>
    /// <param name="wordsAMinute">How fast it is spoken.</param>
    /// <param name="seed">Which words are spoilt.</param>
    public static (string Text, ImmutableArray<TimeSpan> Times) Of(SpokenLesson lesson, CaptionNoise noise, double wordsAMinute, ulong seed)
    {
        (List<(string Word, TimeSpan At)> heard, ImmutableArray<TimeSpan> times, TimeSpan end) = MachineCaptions.Heard(lesson, noise, wordsAMinute, seed);
        var text = new StringBuilder("WEBVTT\nKind: captions\nLanguage: en\n\n");
        string before = " ";
        int from = 0;
        while (from < heard.Count)
        {
            int to = EndOfLine(heard, from);
            TimeSpan until = to < heard.Count ? heard[to].At : end;
            TimeSpan filler = until - TimeSpan.FromMilliseconds(FillerMilliseconds);
            string line = string.Join(' ', heard[from..to].Select(w => w.Word));
            text.Append(CultureInfo.InvariantCulture, $"{MachineCaptions.Time(heard[from].At)} --> {MachineCaptions.Time(filler)} align:start position:0%\n{before}\n{Timed(heard[from..to])}\n\n");
            text.Append(CultureInfo.InvariantCulture, $"{MachineCaptions.Time(filler)} --> {MachineCaptions.Time(until)} align:start position:0%\n{line}\n \n\n");
            (before, from) = (line, to);
        }

        return (text.ToString(), times);
    }

    private static int EndOfLine(List<(string Word, TimeSpan At)> heard, int from)
    {
        int to = from + 1;
        for (int letters = heard[from].Word.Length; to < heard.Count && letters + 1 + heard[to].Word.Length <= LettersInLine; to++)
        {
            letters += 1 + heard[to].Word.Length;
        }

        return to;
    }

    private static string Timed(List<(string Word, TimeSpan At)> line) =>
        string.Concat(line.Select((w, i) => i == 0 ? w.Word : $"<{MachineCaptions.Time(w.At)}><c> {w.Word}</c>"));
}
