using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Rostrum.Testing.Speech;

/// <summary>How much a captioning machine spoils: shares of words, 0 to 1.</summary>
/// <param name="Homophones">Of <c>four</c>, <c>two</c>, <c>one</c> written as <c>for</c>, <c>to</c>, <c>won</c>.</param>
/// <param name="Digits">Of number words written as digits.</param>
/// <param name="Plurals">Of words that lose or gain their plural.</param>
/// <param name="Letters">Of longer words with one letter wrong.</param>
/// <param name="Hesitations">Of words before which the speaker hesitates.</param>
/// <param name="Punctuation">True where the machine writes capitals and stops.</param>
public sealed record CaptionNoise(double Homophones, double Digits, double Plurals, double Letters, double Hesitations, bool Punctuation)
{
    /// <summary>As platforms' machines write today: some stops missing, numbers half and half, few words wrong.</summary>
    public static CaptionNoise Usual { get; } = new(0.02, 0.5, 0.01, 0.01, 0.02, false);

    /// <summary>What a good transcriber writes.</summary>
    public static CaptionNoise None { get; } = new(0, 0, 0, 0, 0, true);
}

/// <summary>Writes a talk as captions made by machine, the same for the same seed.</summary>
public static class MachineCaptions
{
    private const int WordsInCue = 8;

    private static readonly string[] Numbers = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>WebVTT, and for each word of the talk the time at which it is said.</summary>
    /// <param name="lesson">The talk.</param>
    /// <param name="noise">What is spoilt.</param>
    /// <param name="wordsAMinute">How fast it is spoken.</param>
    /// <param name="seed">Which words are spoilt.</param>
    public static (string Text, ImmutableArray<TimeSpan> Times) Of(SpokenLesson lesson, CaptionNoise noise, double wordsAMinute, ulong seed)
    {
        (List<(string Word, TimeSpan At)> heard, ImmutableArray<TimeSpan> times, TimeSpan end) = Heard(lesson, noise, wordsAMinute, seed);
        return (Written(heard, end.TotalMilliseconds), times);
    }

    /// <summary>What the machine hears word by word, the times of the talk's own words, and when it ends.</summary>
    internal static (List<(string Word, TimeSpan At)> Heard, ImmutableArray<TimeSpan> Times, TimeSpan End) Heard(SpokenLesson lesson, CaptionNoise noise, double wordsAMinute, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(noise);
        var times = ImmutableArray.CreateBuilder<TimeSpan>(lesson.Words.Length);
        var heard = new List<(string Word, TimeSpan At)>();
        double at = 1000;
        double each = 60_000 / wordsAMinute;
        for (int i = 0; i < lesson.Words.Length; i++)
        {
            if (Chance(seed, i, 0) < noise.Hesitations)
            {
                heard.Add(("uh", TimeSpan.FromMilliseconds(Math.Round(at))));
                at += each;
            }

            times.Add(TimeSpan.FromMilliseconds(Math.Round(at)));
            heard.Add((Spoilt(lesson.Words[i], noise, seed, i), times[^1]));
            at += each * (0.6 + (lesson.Words[i].Length / 12.0));
            at += lesson.Words[i][^1] is '.' or '!' or '?' ? 350 : 0;
        }

        return (heard, times.ToImmutable(), TimeSpan.FromMilliseconds(Math.Round(at)));
    }

    private static string Written(List<(string Word, TimeSpan At)> heard, double end)
    {
        var text = new StringBuilder("WEBVTT\n");
        for (int i = 0; i < heard.Count; i += WordsInCue)
        {
            TimeSpan to = i + WordsInCue < heard.Count ? heard[i + WordsInCue].At : TimeSpan.FromMilliseconds(Math.Round(end));
            string words = string.Join(' ', heard.Skip(i).Take(WordsInCue).Select((w, k) => k == 0 ? w.Word : $"<{Time(w.At)}><c> {w.Word}</c>")).Replace(" <", "<", StringComparison.Ordinal);
            text.Append(CultureInfo.InvariantCulture, $"\n{Time(heard[i].At)} --> {Time(to)}\n{words}\n");
        }

        return text.ToString();
    }

    /// <summary>A time as WebVTT writes it.</summary>
    internal static string Time(TimeSpan time) => time.ToString(@"hh\:mm\:ss\.fff", CultureInfo.InvariantCulture);

    private static string Spoilt(string word, CaptionNoise noise, ulong seed, int at)
    {
        string bare = noise.Punctuation ? word : new string([.. word.Where(c => char.IsLetterOrDigit(c) || c is '\'' or '-')]).ToLowerInvariant();
        bare = bare.Length == 0 ? "uh" : bare;
        string plain = bare.Trim('.', ',', '!', '?', ':', ';').ToLowerInvariant();
        string? homophone = plain switch { "four" => "for", "two" => "to", "one" => "won", "eight" => "ate", _ => null };
        if (homophone is not null && Chance(seed, at, 1) < noise.Homophones)
        {
            return homophone;
        }

        if (Array.IndexOf(Numbers, plain) is var number and > 1 && Chance(seed, at, 2) < noise.Digits)
        {
            return bare.Replace(plain, number.ToString(CultureInfo.InvariantCulture), StringComparison.OrdinalIgnoreCase);
        }

        if (plain.Length > 3 && Chance(seed, at, 3) < noise.Plurals && Array.IndexOf(Numbers, plain) < 0)
        {
            return plain[^1] == 's' ? plain[..^1] : plain + "s";
        }

        return plain.Length > 5 && Chance(seed, at, 4) < noise.Letters ? plain[..2] + 'e' + plain[3..] : bare;
    }

    // Evenly spread over 0 to 1, a pure function of what is asked (SplitMix64, Steele, Lea and Flood 2014).
    private static double Chance(ulong seed, int word, int which)
    {
        ulong z = unchecked((seed * 0x9E3779B97F4A7C15UL) + ((ulong)word * 0xBF58476D1CE4E5B9UL) + ((ulong)which * 0x94D049BB133111EBUL) + 0x9E3779B97F4A7C15UL);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        return (z ^ (z >> 31)) / (double)ulong.MaxValue;
    }
}
