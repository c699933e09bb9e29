using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>Words with their times.</summary>
public sealed class SpokenWordsTests
{
    // Invented, in the form that machine captions are exported in.
    private const string Rolling = """
        WEBVTT
        Kind: captions
        Language: en

        00:00:00.000 --> 00:00:02.000 align:start position:0%
         
        you<00:00:00.400><c> roll</c><00:00:00.900><c> two</c><00:00:01.300><c> dice</c>

        00:00:02.000 --> 00:00:02.010 align:start position:0%
        you roll two dice
         

        00:00:02.010 --> 00:00:04.000 align:start position:0%
        you roll two dice
        and<00:00:02.500><c> keep</c><00:00:03.000><c> one</c>
        """;

    private static readonly Gen<string> Word = Gen.OneOf("no", "no", "you", "roll", "dice,", "42", "&", "<b", "é石");

    public static TheoryData<string, string> Cues => new()
    {
        { "ab cdef gh", "ab 0-2; cdef 2-6; gh 6-8" },
        { "ab<00:04.000> cdef gh", "ab 0-4; cdef 4-6.667 timed; gh 6.667-8" },
        { "ab <00:04.000>cdef gh", "ab 0-4; cdef 4-6.667 timed; gh 6.667-8" },
        { "ab<00:03.000><00:05.000> cd", "ab 0-3; cd 5-8 timed" },
        { "a<00:04.000>b cd", "ab 0-5.333; cd 5.333-8" },
        { "ab<00:06.000> cd<00:04.000> ef<00:09.000> gh", "ab 0-6; cd 6-6.667 timed; ef 6.667-7.333; gh 7.333-8" },
        { "<00:00.000>ab<00:02.000> cd<00:08.000>", "ab 0-2 timed; cd 2-8 timed" },
        { "<i>a</i>b\ncd<ruby>e<rt>xyz</rt></ruby> &lt;", "ab 0-2.667; cde 2.667-6.667; < 6.667-8" },
        { " \n", "" },
    };

    [Theory]
    [MemberData(nameof(Cues))]
    public void Words_are_timed_by_their_marks_and_by_letters_between(string text, string told) =>
        Assert.Equal(told, Told(SpokenWords.Of(new Cue("", TimeSpan.Zero, TimeSpan.FromSeconds(8), CueSettings.None, text), CaptionFormat.WebVtt, 0)));

    [Fact]
    public void Captions_that_roll_give_each_word_once_with_its_own_time() => Assert.Equal(
        "you 0-0.4; roll 0.4-0.9 timed; two 0.9-1.3 timed; dice 1.3-2 timed; and 2.01-2.5; keep 2.5-3 timed; one 3-4 timed",
        Told(SpokenWords.Of(CaptionReader.Read(new SourceText("a.vtt", Rolling)))));

    [Fact]
    public void Captions_that_roll_are_read_without_a_warning() => Assert.Empty(CaptionReader.Read(new SourceText("a.vtt", Rolling)).Problems);

    [Theory]
    [InlineData("No.|No.", "No. No.")]
    [InlineData("No.|No.|Yes.", "No. No. Yes.")]
    [InlineData("One?\nNo.|No.\nTwo?|Two.|Three?|Four.", "One? No. No. Two? Two. Three? Four.")]
    public void What_people_say_twice_is_there_twice(string cues, string words) =>
        Assert.Equal(words, string.Join(' ', SpokenWords.Of(Plain(cues.Split('|'))).Select(w => w.Text)));

    [Fact]
    public void A_line_that_comes_again_after_a_pause_was_said_again() =>
        Assert.Equal("a b b c", string.Join(' ', SpokenWords.Of(CaptionFile.Of(CaptionFormat.WebVtt, [Seen(0, 1, "a\nb"), Seen(2, 3, "b\nc")])).Select(w => w.Text)));

    [Fact]
    public void Cues_out_of_order_are_said_in_the_order_of_their_times()
    {
        CaptionFile file = CaptionFile.Of(CaptionFormat.SubRip, [Seen(4, 5, "c"), Seen(0, 1, "a b"), Seen(3, 2, "x")]);

        Assert.Equal("a 0-0.5 b 0.5-1 x 3-3 c 4-5", Told(SpokenWords.Of(file)).Replace(";", "", StringComparison.Ordinal));
        Assert.Equal([1, 1, 2, 0], SpokenWords.Of(file).Select(w => w.CueIndex));
    }

    // The machine's way: each line is shown with its words timed, for ten milliseconds alone, and again above the next.
    [Fact]
    public void Rolled_lines_give_back_the_words_from_which_they_were_made() => Word.Array[1, 6].Array[3, 8].Hold(lines =>
    {
        var cues = new List<Cue>();
        string above = " ";
        for (int i = 0; i < lines.Length; i++)
        {
            string line = string.Concat(lines[i].Select((w, k) => (k == 0 ? "" : $"<00:00:{10 + i}.{100 * k:000}> ") + Escaped(w)));
            string plain = Escaped(string.Join(' ', lines[i]));
            cues.Add(new Cue("", TimeSpan.FromMilliseconds(10_000 + (1000 * i)), TimeSpan.FromMilliseconds(10_990 + (1000 * i)), CueSettings.None, $"{above}\n{line}"));
            cues.Add(new Cue("", TimeSpan.FromMilliseconds(10_990 + (1000 * i)), TimeSpan.FromMilliseconds(11_000 + (1000 * i)), CueSettings.None, $"{plain}\n "));
            above = plain;
        }

        ImmutableArray<TimedWord> words = SpokenWords.Of(CaptionFile.Of(CaptionFormat.WebVtt, cues));

        Assert.Equal(lines.SelectMany(l => l), words.Select(w => w.Text));
        Assert.Equal(lines.SelectMany((l, i) => l.Select((_, k) => 10_000.0 + (1000 * i) + (100 * k))), words.Select(w => w.Start.TotalMilliseconds));
    });

    [Fact]
    public void Words_of_any_file_lie_in_their_cues_and_follow_each_other() => CaptionGen.WebVtt.Hold(file =>
    {
        ImmutableArray<TimedWord> words = SpokenWords.Of(file);

        Assert.All(words, w => Assert.InRange(w.Start, file.Cues[w.CueIndex].Start, w.End));
        Assert.All(words.Zip(words.Skip(1)).Where(p => p.First.CueIndex == p.Second.CueIndex), p => Assert.True(p.First.End <= p.Second.Start));
    });

    [Fact]
    public void A_cue_of_a_stranger_is_timed_in_seconds() => Assert.Equal(
        600_000,
        SpokenWords.Of(new Cue("", TimeSpan.Zero, TimeSpan.FromSeconds(8), CueSettings.None, string.Concat(Enumerable.Repeat("a<00:01.000> b<00:01.000> ", 300_000))), CaptionFormat.WebVtt, 0).Length);

    private static CaptionFile Plain(string[] cues) => CaptionFile.Of(CaptionFormat.WebVtt, cues.Select((c, i) => Seen(i, i + 1, c)));

    private static Cue Seen(int from, int to, string text) => new("", TimeSpan.FromSeconds(from), TimeSpan.FromSeconds(to), CueSettings.None, text);

    private static string Escaped(string words) => words.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal);

    private static string Told(ImmutableArray<TimedWord> words) => string.Join("; ", words.Select(w => $"{w.Text} {Seconds(w.Start)}-{Seconds(w.End)}{(w.IsTimed ? " timed" : "")}"));

    private static string Seconds(TimeSpan time) => time.TotalSeconds.ToString("0.###", CultureInfo.InvariantCulture);
}
