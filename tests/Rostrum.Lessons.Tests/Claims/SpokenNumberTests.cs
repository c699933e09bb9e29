using Rostrum.Lessons.Claims;

namespace Rostrum.Lessons.Tests.Claims;

public class SpokenNumberTests
{
    [Theory]
    [InlineData("35", 35)]
    [InlineData("1,200", 1200)]
    [InlineData("minus 2", -2)]
    [InlineData("-2", -2)]
    [InlineData("−2", -2)]
    [InlineData("minus two", -2)]
    [InlineData("Twelve", 12)]
    [InlineData("nineteen", 19)]
    [InlineData("twenty", 20)]
    [InlineData("thirty-five", 35)]
    [InlineData("thirty five", 35)]
    [InlineData("none", 0)]
    [InlineData("twice", 2)]
    [InlineData("a hundred", 100)]
    [InlineData("two hundred and five", 205)]
    [InlineData("three thousand", 3000)]
    [InlineData("two hundred thousand", 200000)]
    [InlineData("two hundred and one thousand and five", 201005)]
    [InlineData("4.", 4)]
    public void Digits_and_words_are_numbers(string words, long number) => Assert.Equal(number, SpokenNumber.Read(words));

    [Theory]
    [InlineData("a few")]
    [InlineData("twenty-twelve")]
    [InlineData("")]
    [InlineData("five twenty")]
    [InlineData("hundred")]
    [InlineData("some hundred")]
    [InlineData("two hundred three hundred")]
    [InlineData("minus minus 2")]
    public void Other_words_are_none(string words) => Assert.Null(SpokenNumber.Read(words));

    [Theory]
    [InlineData("minus ")]
    [InlineData("hundred ")]
    [InlineData("a thousand ")]
    public void A_word_said_a_million_times_is_no_number(string word) => Assert.Null(SpokenNumber.Read(string.Concat(Enumerable.Repeat(word, 1_000_000))));
}
