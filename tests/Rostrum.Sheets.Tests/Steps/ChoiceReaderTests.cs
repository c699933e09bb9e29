using System.Globalization;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Tests.Steps;

/// <summary>What an action may choose.</summary>
public sealed class ChoiceReaderTests
{
    public static TheoryData<string, string> Domains => new()
    {
        { "a ware in my carried", "One 0 a ware" },
        { "one of bays of my field", "One 0 a line" },
        { "2 shelves in my field where it is not empty", "Exactly 2 a list of spaces" },
        { "up to 3 jugs in my carried", "UpTo 3 a list of things" },
        { "some ware in my carried", "Some 0 a list of things" },
        { "any fire dice", "AnyNumber 0 a list of things" },
        { "a number from 1 to 3", "One 0 a number" },
        { "yes or no", "One 0 a truth" },
        { "a player", "One 0 a player" },
        { "a player where it is not me", "One 0 a player" },
        { "a direction", "One 0 a direction" },
        { "2 + limit", "Given 0 a number" },
        { "count(my carried)", "Given 0 a number" },
        { "a stall in market", "One 0 a slot" },
    };

    [Theory]
    [MemberData(nameof(Domains))]
    public void Choice_has_its_amount_and_sort(string domain, string told)
    {
        StepBench bench = StepBench.OfChoices($"what: {domain}");

        ActionChoice choice = Assert.Single(bench.Choices);

        Assert.Empty(bench.Told);
        Assert.Equal(told, string.Create(CultureInfo.InvariantCulture, $"{choice.Amount} {choice.Number} {choice.Sort.InWords}"));
    }

    [Fact]
    public void Later_choice_may_use_an_earlier_one()
    {
        StepBench bench = StepBench.OfChoices("what: a ware in my carried\nspot: a shelf in my field where glaze of top of it is glaze of what");

        Assert.Empty(bench.Told);
        Assert.Equal([0, 1], bench.Choices.Select(c => c.Slot));
    }

    [Fact]
    public void Misspelt_domain_is_told_once()
    {
        StepBench bench = StepBench.OfChoices("what: a jgu in my carried\nspot: a shelf in my field where what is in my carried");

        Assert.Equal(["ROS0201 2,11 jgu"], bench.Told);
    }
}
