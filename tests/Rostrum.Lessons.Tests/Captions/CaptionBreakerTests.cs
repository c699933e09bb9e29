using System.Collections.Immutable;
using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Breaking;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Captions.Writing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>Captions broken after a guide.</summary>
public sealed class CaptionBreakerTests
{
    private static readonly CaptionGuide Guide = CaptionGuide.EnglishTemplate;

    private static readonly Gen<string> Word = Gen.OneOf(
        "the", "a", "jug", "two", "hundred", "and", "five", "of", "clay.", "glaze,", "fire?", "It", "stands", "on", "unfortunately", "12", "000", "p.", "5", "(an", "é石", "é", "🎲",
        "Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch");

    // Gaps, overlaps and times that run backwards.
    private static readonly Gen<ImmutableArray<TimedWord>> Spoken = Gen.Select(Word, Gen.OneOf(Gen.Int[-100, 600], Gen.Const(0), Gen.Int[1000, 9000]), Gen.Int[0, 700]).Array[0, 60].Select(Timed);

    // Words of one speed, as speech has them.
    private static readonly Gen<ImmutableArray<TimedWord>> Even = Gen.Select(Word, Gen.Int[150, 500]).Array[1, 60].Select(w => Timed([.. w.Select(p => (p.Item1, p.Item2, p.Item2))]));

    [Theory]
    [InlineData("Take one jug from the bench. Glaze it with the colour that you hold, and place it on the upper shelf.", "Take one jug from the bench.|Glaze it with the colour that you hold,/and place it on the upper shelf.")]
    [InlineData("You may place the finished jug on a shelf because the kiln has room.", "You may place the finished jug on a shelf/because the kiln has room.")]
    [InlineData("Everybody at the table scores exactly two hundred and five points", "Everybody at the table scores/exactly two hundred and five points")]
    [InlineData("Take it.", "Take it.")]
    public void Sentences_are_broken_where_people_would(string words, string captions) =>
        Assert.Equal(captions, string.Join('|', CaptionBreaker.Break(At(words, 330), Guide).Cues.Select(c => string.Join('/', c.Lines))));

    [Fact]
    public void Words_come_out_as_they_went_in() => Spoken.Hold(words =>
    {
        BrokenCaptions broken = CaptionBreaker.Break(words, Guide);

        Assert.Equal(words.Select(w => w.Text), broken.Cues.SelectMany(c => c.Lines).SelectMany(l => l.Split(' ')));
        Assert.Equal(words.Length, broken.Cues.Sum(c => c.WordCount));
    });

    [Fact]
    public void Lines_lengths_and_gaps_keep_the_guide() => Spoken.Hold(words =>
    {
        ImmutableArray<BrokenCue> cues = CaptionBreaker.Break(words, Guide).Cues;

        Assert.All(cues, c => Assert.InRange(c.Lines.Length, 1, 2));
        Assert.All(cues.SelectMany(c => c.Lines).Where(l => l.Contains(' ', StringComparison.Ordinal)), l => Assert.InRange(new System.Globalization.StringInfo(l).LengthInTextElements, 1, 42));
        Assert.All(cues, c => Assert.InRange(c.Duration, TimeSpan.FromMilliseconds(1), TimeSpan.FromSeconds(7)));
        Assert.All(cues.Zip(cues.Skip(1)), p => Assert.True((p.Second.Start - p.First.End).TotalMilliseconds >= 2000.0 / 24));
    });

    // A caption is too short or too fast only where the next one leaves no more time, or seven seconds are over.
    [Fact]
    public void Reading_speed_is_kept_wherever_speech_allows() => Even.Hold(words =>
    {
        BrokenCaptions broken = CaptionBreaker.Break(words, Guide);
        ImmutableArray<BrokenCue> cues = broken.Cues;

        Assert.All(cues, c => Assert.Equal(words[c.FirstWord].Start, c.Start));
        Assert.All(broken.TooFast.Concat(broken.TooShort).Select(c => cues.IndexOf(c)), i =>
            Assert.True(cues[i].Duration == Guide.Longest || (i + 1 < cues.Length && (cues[i + 1].Start - cues[i].End).TotalMilliseconds < 85)));
        Assert.All(cues.Except(broken.TooFast), c => Assert.InRange(c.CharactersPerSecond, 0, 17));
        Assert.All(cues.Except(broken.TooShort), c => Assert.InRange(c.Duration.TotalSeconds, 5.0 / 6, 7));
    });

    [Theory]
    [MemberData(nameof(Guides))]
    public void No_other_way_of_breaking_costs_less(CaptionGuide guide) => Gen.Select(Word, Gen.Int[0, 2000], Gen.Int[0, 700]).Array[1, 11].Select(Timed).Hold(words =>
    {
        var text = new BreakText(words);
        long least = Enumerable.Range(0, 1 << (words.Length - 1)).Min(ways => CostOf(text, ways, guide));

        Assert.Equal(least, CaptionBreaker.Break(words, guide).Cost);
    });

    public static TheoryData<CaptionGuide> Guides => [CaptionGuide.EnglishTemplate, CaptionGuide.Broadcast, CaptionGuide.Educational, CaptionGuide.EnglishTemplate with { CharactersPerLine = 20, Lines = 3 }];

    // Every way to set the words on lines, the widths and the raggedness counted anew; the fewest lines that hold them count.
    [Fact]
    public void No_other_way_of_setting_lines_costs_less() => Gen.Select(Word.Array[2, 9], Gen.Int[1, 3]).Hold((written, most) =>
    {
        CaptionGuide guide = Guide with { CharactersPerLine = 16, Lines = most };
        var text = new BreakText(At(string.Join(' ', written), 300));

        LineBreaks? found = LineBreaks.Of(text, 0, written.Length, guide);

        IEnumerable<int[]> fitting = Enumerable.Range(0, 1 << (written.Length - 1)).Select(ways => Ends(ways, written.Length)).Where(e => e.Length <= most && Widths(written, e).All(w => w <= 16));
        long[] costs = [.. fitting.GroupBy(e => e.Length).OrderBy(g => g.Key).Take(1).Select(g => g.Min(e => LineCost(text, written, e)))];
        Assert.Equal(costs, found is { } f ? [f.Cost] : []);
    });

    // Any two of these that belong together fit on a line.
    [Fact]
    public void Articles_keep_their_nouns_and_numbers_stay_whole() => Gen.OneOf("the jug", "a jug", "twenty five,", "12 000,", "stands", "of", "clay.", "unfortunately").Array[1, 40].Hold(written =>
    {
        BrokenCaptions broken = CaptionBreaker.Break(At(string.Join(' ', written), 400), Guide);

        string[] ends = [.. broken.Cues.SelectMany(c => c.Lines).Select(l => l.Split(' ')[^1])];
        Assert.Empty(ends.Intersect(["the", "a", "twenty", "12"]));
    });

    [Theory]
    [InlineData("", "the", "jug", "", 0, BreakCosts.Never)]
    [InlineData("", "(an", "egg", "", 2000, BreakCosts.Never)]
    [InlineData("", "twenty", "five", "", 0, BreakCosts.Never)]
    [InlineData("", "12", "000", "", 0, BreakCosts.Never)]
    [InlineData("", "hundred", "and", "five", 0, BreakCosts.Never)]
    [InlineData("hundred", "and", "five.", "", 0, BreakCosts.Never)]
    [InlineData("two", "hundred", "and", "jugs", 0, BreakCosts.BeforeConjunction)]
    [InlineData("", "two,", "three", "", 0, BreakCosts.Clause)]
    [InlineData("", "no", "five", "", 0, BreakCosts.Elsewhere)]
    [InlineData("", "shelf.", "Then", "", 0, BreakCosts.SentenceEnd)]
    [InlineData("", "shelf.”", "Then", "", 0, BreakCosts.SentenceEnd)]
    [InlineData("", "e.g.", "jugs", "", 0, BreakCosts.BehindSmallWord)]
    [InlineData("", "p.", "5", "", 0, BreakCosts.BehindSmallWord)]
    [InlineData("", "jug", "and", "bowl", 0, BreakCosts.BeforeConjunction)]
    [InlineData("", "jug", "of", "clay", 0, BreakCosts.BeforePreposition)]
    [InlineData("", "of", "clay", "", 0, BreakCosts.BehindSmallWord)]
    [InlineData("", "red", "jug", "", 0, BreakCosts.Elsewhere)]
    [InlineData("", "red", "jug", "", 500, BreakCosts.Clause)]
    public void A_break_costs_what_the_words_say(string before, string left, string right, string beyond, long pause, long cost) =>
        Assert.Equal(cost, BreakWords.Cost(before, left, right, beyond, pause));

    [Fact]
    public void Speech_that_is_too_fast_is_told_and_kept()
    {
        BrokenCaptions broken = CaptionBreaker.Break(At(string.Join(' ', Enumerable.Repeat("considerably", 30)), 300), Guide);

        Assert.Equal("4 of 5 captions must be read faster than the guide allows, because the words are spoken faster; the first at 0:00:00.", broken.Remarks[0]);
    }

    // 84 characters, two full lines, need 4.9 s at 17 a second; 30 words need 11.3 s at 160 a minute (worked out in the trade notes).
    [Fact]
    public void Reading_times_are_those_of_the_guides() => Assert.Equal(
        (4942, 11250),
        (CaptionGuide.EnglishTemplate.ReadingMilliseconds(84, 12), CaptionGuide.Educational.ReadingMilliseconds(84, 30)));

    [Fact]
    public void What_the_breaker_made_is_written_and_read_back() => Even.Hold(words =>
    {
        BrokenCaptions broken = CaptionBreaker.Break(words, Guide);

        foreach (CaptionFormat format in Enum.GetValues<CaptionFormat>())
        {
            CaptionFile read = CaptionReader.Read(new SourceText("a", CaptionWriter.Write(broken.ToFile(format))));
            Assert.Equal(words.Select(w => w.Text), SpokenWords.Of(read).Select(w => w.Text));
            Assert.Equal(broken.Cues.Select(c => (c.Start, c.End)), read.Cues.Select(c => (c.Start, c.End)));
            Assert.Empty(read.Problems);
        }
    });

    [Fact]
    public void Words_with_blanks_and_figures_that_contradict_each_other_are_refused()
    {
        Assert.Throws<ArgumentException>(() => CaptionBreaker.Break([new TimedWord("a b", default, default, 0, false)], Guide));
        Assert.Throws<ArgumentOutOfRangeException>(() => CaptionBreaker.Break([], Guide with { Longest = TimeSpan.Zero }));
        Assert.Throws<ArgumentOutOfRangeException>(() => CaptionBreaker.Break([], Guide with { Lines = 4 }));
        Assert.Empty(CaptionBreaker.Break([], Guide).Cues);
    }

    [Fact]
    public void Three_hours_of_speech_are_broken_in_seconds() =>
        Assert.Equal(30_000, CaptionBreaker.Break(At(string.Join(' ', Enumerable.Repeat("take a jug of clay, or", 5000)), 360), Guide).Cues.Sum(c => c.WordCount));

    // Each bit of 'ways' is a break behind a word.
    private static long CostOf(BreakText text, int ways, CaptionGuide guide)
    {
        long cost = 0;
        int from = 0;
        for (int to = 1; to <= text.Count; to++)
        {
            if (to == text.Count || (ways >> (to - 1) & 1) == 1)
            {
                if (CaptionPlan.CueCost(text, from, to, guide) is not { } one)
                {
                    return long.MaxValue;
                }

                cost += one;
                from = to;
            }
        }

        return cost;
    }

    private static int[] Ends(int ways, int count) => [.. Enumerable.Range(1, count).Where(to => to == count || (ways >> (to - 1) & 1) == 1)];

    private static IEnumerable<int> Widths(string[] words, int[] ends) =>
        ends.Select((to, i) => new System.Globalization.StringInfo(string.Join(' ', words[(i == 0 ? 0 : ends[i - 1])..to])).LengthInTextElements);

    // Half of what a caption's break costs, and one for each four characters by which the last two lines differ.
    private static long LineCost(BreakText text, string[] words, int[] ends) =>
        ends.SkipLast(1).Sum(e => text.BreakBehind(e - 1) / 2) + (ends.Length == 1 ? 0 : Math.Abs(Widths(words, ends).TakeLast(2).Aggregate((upper, lower) => upper - lower)) / 4);

    private static ImmutableArray<TimedWord> At(string words, int millisecondsPerWord) => Timed([.. words.Split(' ').Select(w => (w, millisecondsPerWord, millisecondsPerWord))]);

    private static ImmutableArray<TimedWord> Timed((string Word, int ToNext, int Length)[] words)
    {
        ImmutableArray<TimedWord>.Builder timed = ImmutableArray.CreateBuilder<TimedWord>();
        int at = 0;
        foreach ((string word, int toNext, int length) in words)
        {
            timed.Add(new TimedWord(word, TimeSpan.FromMilliseconds(at), TimeSpan.FromMilliseconds(at + length), 0, true));
            at = Math.Max(0, at + toNext);
        }

        return timed.ToImmutable();
    }
}
