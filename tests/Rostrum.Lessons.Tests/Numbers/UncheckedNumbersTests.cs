using System.Collections.Immutable;
using Rostrum.Lessons.Numbers;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Numbers;

/// <summary>Numbers of a lesson about Kiln Night that stand outside of a check.</summary>
public class UncheckedNumbersTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");

    [Theory]
    [InlineData("You need 2 to 4 players.", "2", "4")]
    [InlineData("You need 2–4 players.", "2", "4")]
    [InlineData("It costs three.", "three")]
    [InlineData("It costs thirty-five, or a hundred, or two hundred and five.", "thirty-five", "a hundred", "two hundred and five")]
    [InlineData("That is minus 2 of 1,200.", "minus 2", "1,200")]
    [InlineData("A twelve-sided die scores twice.", "twelve", "twice")]
    [InlineData("Give every bay four tiers, and each player two more.", "four", "two")]
    [InlineData("Take one drying board, and one more stick.", "one", "one")]
    [InlineData("Roll a 3: then a *five* and a **6**.", "3", "five", "6")]
    [InlineData("Those [three laws](https://example.org) hold.", "three")]
    [InlineData("- First.\n  - Then 6.\n\n> He takes 7.", "6", "7")]
    public void Numbers_that_count_something_are_found(string spoken, params string[] numbers) => Assert.Equal(numbers, In(spoken).Select(n => n.At.Text));

    [Theory]
    [InlineData("This one is mine. One by one they come, one after another, and no one knows which one cracks. One of you begins.")]
    [InlineData("First things first: the second printing, the 3rd, the 21st. Once it is done, at once.")]
    [InlineData("See page 5, pages 4 to 6, p. 8, tier 1, tiers 2 and 3, step two, Commission 12, Commissions 6 and 12, #3, B2 and 3D.")]
    [InlineData("Player 2 looks away in round 3. It came in 2019, on 3 March 2026, 2026-11-25, at 10:45.")]
    [InlineData("`seat 4` stands there.")]
    [InlineData("I taught it [seven](unchecked) times, or [nine](<unchecked: my own count>).")]
    [InlineData("There are **[five](fact:bays)** bays.")]
    [InlineData("1. Take it.\n2. Place it.")]
    [InlineData("![The 4 jugs](position:E1)\n\n### The 3 ways")]
    public void Names_dates_ordinals_and_what_is_checked_are_left_alone(string spoken) => Assert.Empty(In(spoken).Select(n => n.Said));

    [Theory]
    [InlineData("There are three glazes.", "[three](fact:glazes)")]
    [InlineData("Carry one drying board.", "[one](<fact:drying boards carried>)")]
    [InlineData("![](position:E1)\n\nBowls, 5.", "[5](tally:E1/bowls)")]
    [InlineData("![](position:E1)\n\nThis is worth 35 points.", "[35](tally:E1/total)")]
    public void A_check_is_proposed_where_value_and_words_name_exactly_one_thing(string spoken, string write) => Assert.Equal(write, Assert.Single(In(spoken)).Write);

    [Theory]
    [InlineData("There are four glazes.")]
    [InlineData("A drawing shows four shelves with a form.")]
    [InlineData("It gives three.")]
    [InlineData("Bowls, 5.")]
    [InlineData("You get 1.5 sticks.")]
    public void Nothing_is_proposed_where_value_or_words_are_others(string spoken) => Assert.Null(Assert.Single(In(spoken)).Write);

    [Fact]
    public void A_number_is_placed_behind_an_escaped_sign_and_over_a_line_end()
    {
        ImmutableArray<UncheckedNumber> numbers = In("It is \\*4, or twenty\nfive.");

        Assert.Equal([(3, 9), (3, 15)], numbers.Select(n => (n.At.StartPosition.Line, n.At.StartPosition.Column)));
        Assert.Equal("twenty five", numbers[1].Said);
    }

    // Each of these stopped the command, or kept it busy for minutes.
    [Theory]
    [InlineData("the quick brown fox ", 190_000, 0)]
    [InlineData("[1](fact:bayz) ", 100_000, 0)]
    [InlineData("![](position:E1)\n\n", 100_000, 0)]
    [InlineData("4 forms. ", 100_000, UncheckedNumbers.Most)]
    public void A_file_of_a_stranger_is_searched_in_seconds(string written, int times, int found) =>
        Assert.Equal(found, In(string.Concat(Enumerable.Repeat(written, times))).Length);

    [Fact]
    public void All_numbers_are_one_warning()
    {
        Diagnostic problem = Assert.Single(Check("Take 4.\nThen 5.\nThen 6.\nThen 7.\n").Problems);

        Assert.Equal((Severity.Warning, "ROS0609", "4"), (problem.Severity, problem.Id, problem.At.Text));
        Assert.Equal("4 numbers are said without a check: '4' in line 3, '5' in line 4, '6' in line 5 and 1 more.", problem.Message);
    }

    [Fact]
    public void The_shipped_lesson_says_no_number_without_a_check() => Assert.Empty(LessonCheck.Of(Kiln)!.Unchecked);

    // The shipped lesson is its own oracle: what its presenter checked must be found when the checks are gone, and proposed as it was. Five times
    // 'one' stands for a thing or at the end of a sentence; a '1.' at the beginning of a line becomes a list.
    [Fact]
    public void With_its_checks_taken_out_the_shipped_lesson_gives_them_back()
    {
        var bare = BareLesson.Of(TestFiles.Read("games/kiln-night/lesson.md"));

        ImmutableArray<UncheckedNumber> found = LessonCheck.Of(Kiln, bare.Text).Unchecked;

        Assert.Equal(bare.Numbers.Count - 6, found.Length);
        Assert.All(found, f => Assert.Contains(f.At.Start, bare.Numbers.Keys));
        Assert.All(found.Where(f => f.Target is not null), f => Assert.Equal(bare.Numbers[f.At.Start], f.Target));
        Assert.True(found.Count(f => f.Target is not null) >= 25);
    }

    private static ImmutableArray<UncheckedNumber> In(string spoken) => Check(spoken).Unchecked;

    private static LessonReport Check(string spoken) => LessonCheck.Of(Kiln, new SourceText("lesson.md", $"## A\n\n{spoken}\n"));
}
