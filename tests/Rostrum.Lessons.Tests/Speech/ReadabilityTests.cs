using System.Globalization;
using Rostrum.Lessons.Speech;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Speech;

/// <summary>The formulas against worked values: <c>Reference/readability_checks.csv</c>, where each value names its source.</summary>
public sealed class ReadabilityTests
{
    public static TheoryData<string, int, int, int, double, double> Worked => [.. TestFiles.Read("tests/Rostrum.Lessons.Tests/Reference/readability_checks.csv")
        .Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(Cells)
        .Select(c => (c[0], Whole(c[1]), Whole(c[2]), Whole(c[3]), Number(c[7]), Number(c[8])))];

    [Theory]
    [MemberData(nameof(Worked))]
    public void Ease_and_grade_are_the_worked_ones(string text, int words, int sentences, int syllables, double ease, double grade)
    {
        var counted = new Readability(words, sentences, syllables);

        Assert.Equal(ease, counted.Ease!.Value, 0.0001);
        Assert.Equal(grade, counted.Grade!.Value, 0.0001);
        Assert.NotEmpty(text);
    }

    [Theory]
    [InlineData("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.", 13, 1, 24)]
    [InlineData("The cat sat on the mat.", 6, 1, 6)]
    [InlineData("Take 35: it's yours. Or don't; e.g. on p. 5!", 10, 4, 10)]
    public void Words_sentences_and_syllables_are_counted(string text, int words, int sentences, int syllables) =>
        Assert.Equal(new Readability(words, sentences, syllables), Readability.Of(text));

    [Fact]
    public void Of_nothing_nothing_is_told() => Assert.Null(Readability.Of(" — ").Ease);

    // From the right: the text may hold commas.
    private static string[] Cells(string row)
    {
        string[] cells = row.TrimEnd('\r').Split(',');
        return [string.Join(',', cells[..^8]), .. cells[^8..]];
    }

    private static int Whole(string cell) => int.Parse(cell, CultureInfo.InvariantCulture);

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
