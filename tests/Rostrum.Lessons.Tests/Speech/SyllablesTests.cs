using System.Globalization;
using Rostrum.Lessons.Speech;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Speech;

/// <summary>The syllable counter against <c>Reference/syllables.csv</c>: words of the project's rulebooks, lessons and docs with the syllables that the
/// CMU Pronouncing Dictionary gives them.</summary>
public sealed class SyllablesTests(ITestOutputHelper output)
{
    private const double LeastOfWords = 0.93;
    private const double LeastOfSpeech = 0.97;

    [Fact]
    public void Most_words_are_counted_as_they_are_spoken()
    {
        (string Word, int Syllables, int Spoken)[] words = [.. TestFiles.Read("tests/Rostrum.Lessons.Tests/Reference/syllables.csv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1)
            .Select(l => l.Split(',')).Select(c => (c[0], Whole(c[1]), Whole(c[2])))];
        (string Word, int Syllables, int Spoken)[] right = [.. words.Where(w => Syllables.Of(w.Word) == w.Syllables)];

        double ofWords = (double)right.Length / words.Length;
        double ofSpeech = (double)right.Sum(w => w.Spoken) / words.Sum(w => w.Spoken);
        double inAll = (double)words.Sum(w => w.Spoken * Syllables.Of(w.Word)) / words.Sum(w => w.Spoken * w.Syllables);
        output.WriteLine($"{ofWords:P1} of {words.Length} words, {ofSpeech:P1} as often as they are spoken, {inAll:P1} of all syllables; wrong: {string.Join(' ', words.Except(right).Take(150).Select(w => $"{w.Word}:{w.Syllables}/{Syllables.Of(w.Word)}"))}");

        Assert.True(ofWords >= LeastOfWords && ofSpeech >= LeastOfSpeech, $"{ofWords:P1} of words, {ofSpeech:P1} of speech");
        Assert.InRange(inAll, 0.98, 1.02);
    }

    [Theory]
    [InlineData("35", 1)]
    [InlineData("face-up", 2)]
    [InlineData("Jugs'", 1)]
    [InlineData("", 1)]
    public void Figures_signs_and_hyphens_are_counted_by_the_rules_of_the_formulas(string word, int syllables) => Assert.Equal(syllables, Syllables.Of(word));

    private static int Whole(string cell) => int.Parse(cell, CultureInfo.InvariantCulture);
}
