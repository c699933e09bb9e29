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
    [InlineData("4.", 4)]
    public void Digits_and_words_are_numbers(string words, long number) => Assert.Equal(number, SpokenNumber.Read(words));

    [Theory]
    [InlineData("a few")]
    [InlineData("twenty-twelve")]
    [InlineData("")]
    [InlineData("five twenty")]
    [InlineData("hundred")]
    [InlineData("some hundred")]
    public void Other_words_are_none(string words) => Assert.Null(SpokenNumber.Read(words));
}
