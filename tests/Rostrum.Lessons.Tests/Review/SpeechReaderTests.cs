using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Review;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>Words and numbers of what was heard.</summary>
public sealed class SpeechReaderTests
{
    [Theory]
    [InlineData("you take 2 sticks", 2)]
    [InlineData("you take two sticks.", 2)]
    [InlineData("there are seventy two ware", 72)]
    [InlineData("there are seventy-two ware", 72)]
    [InlineData("one hundred and five beans", 105)]
    [InlineData("it costs minus two points", -2)]
    [InlineData("it costs -2 points", -2)]
    public void A_number_is_one_token_in_words_and_in_digits(string said, long number) => Assert.Equal([number], Amounts(said));

    [Fact]
    public void Every_number_up_to_a_million_that_is_said_in_words_is_read_back()
    {
        foreach (long number in new[] { 0L, 7, 13, 20, 21, 99, 100, 101, 110, 999, 1000, 1001, 12_345, 999_999 })
        {
            string words = Words(number);
            SpokenToken token = Assert.Single(Read(words));

            Assert.Equal((number, number), (token.Number, SpokenNumber.Read(words)));
        }
    }

    [Theory]
    [InlineData("you take three no wait make that two sticks", 2)]
    [InlineData("three, sorry, two sticks", 2)]
    [InlineData("nine, I mean eight cards", 8)]
    [InlineData("it is not three but two", 2)]
    [InlineData("two instead of three", 2)]
    public void What_is_taken_back_does_not_count(string said, long number) => Assert.Equal([number], Amounts(said));

    [Theory]
    [InlineData("two sticks and three ware")]
    [InlineData("two or three")]
    public void What_is_not_taken_back_counts(string said) => Assert.Equal([2, 3], Amounts(said));

    [Theory]
    [InlineData("your third storm", 3)]
    [InlineData("the 12th bell", 12)]
    public void A_place_in_an_order_is_no_amount(string said, long number)
    {
        Assert.Empty(Amounts(said));
        Assert.Equal([number], Read(said).Where(t => t.IsOrdinal).Select(t => t.Number!.Value));
    }

    [Fact]
    public void Hesitations_are_left_out_and_words_that_sound_like_numbers_may_be_some()
    {
        ImmutableArray<SpokenToken> tokens = Read("uh take um for sticks");

        Assert.Equal(["take", "for", "sticks"], tokens.Select(t => t.Text));
        Assert.Equal(4, tokens[1].Homophone);
    }

    [Theory]
    [InlineData("scores", "scoring")]
    [InlineData("dice", "die")]
    [InlineData("swapped", "swaps")]
    [InlineData("shelves", "shelf")]
    [InlineData("adjacent", "beside")]
    public void Words_of_one_idea_have_one_stem(string one, string other) => Assert.Equal(Stems.Of(one), Stems.Of(other));

    [Fact]
    public void A_long_pause_between_timed_words_ends_a_sentence()
    {
        string[] words = [.. Enumerable.Repeat("bowls plates lamps sticks jugs".Split(' '), 6).SelectMany(w => w)];
        int pause = 12;
        var timed = words.Select((w, i) => new TimedWord(w, TimeSpan.FromMilliseconds((i * 400) + (i > pause ? 600 : 0)), TimeSpan.FromMilliseconds((i + 1) * 400), 0, true)).ToList();

        Assert.Equal([pause], SpeechReader.Read(timed).Select((t, i) => (t, i)).Where(t => t.t.EndsSentence).Select(t => t.i));
    }

    private static long[] Amounts(string said) => [.. Read(said).Select(t => t.Amount).OfType<long>()];

    private static ImmutableArray<SpokenToken> Read(string said) =>
        SpeechReader.Read([.. said.Split(' ').Select(w => new TimedWord(w, TimeSpan.Zero, TimeSpan.Zero, 0, false))]);

    private static string Words(long number)
    {
        string[] small = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"];
        string[] tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
        return number switch
        {
            < 20 => small[number],
            < 100 => tens[number / 10] + (number % 10 == 0 ? "" : " " + small[number % 10]),
            < 1000 => Words(number / 100) + " hundred" + (number % 100 == 0 ? "" : " and " + Words(number % 100)),
            _ => Words(number / 1000) + " thousand" + (number % 1000 == 0 ? "" : " " + Words(number % 1000)),
        };
    }
}
