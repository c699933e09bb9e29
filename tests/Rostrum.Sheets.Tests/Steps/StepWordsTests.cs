using System.Text.RegularExpressions;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Sheets.Tests.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Steps;

/// <summary>The words with which steps begin: what pages say of them, and actions that are called so.</summary>
public sealed partial class StepWordsTests
{
    public static TheoryData<string> Begins => [.. StepWords.All];

    [Theory]
    [InlineData("docs/language.md", "Steps begin with these words")]
    [InlineData("docs/sheet.md", "An action has any name but those with which steps begin")]
    public void Pages_list_every_word_with_which_steps_begin(string page, string lead)
    {
        string text = TestFiles.Read(page);
        int start = text.IndexOf(lead, StringComparison.Ordinal);

        string[] told = [.. Quoted().Matches(text[start..text.IndexOf('.', start)]).Select(m => m.Groups[1].Value)];

        Assert.Equal(StepWords.All.Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Begins))]
    public void An_action_that_is_called_like_a_step_is_told_once_at_its_name(string step)
    {
        foreach (string phrase in (string[])["hit", step])
        {
            Diagnostic problem = Loaded.Problem($"pieces: {{stone: {{count: 3}}}}\nboards: {{path: {{squares: 3 across 1 up}}}}\nturn:\n  - {step}\nactions:\n  {step}: {{phrase: {phrase} (spot), choose: {{spot: a space in path}}, do: nothing}}\n");

            Assert.Equal(("ROS0196", step, 6), (problem.Id, problem.At.Text, problem.At.StartPosition.Line));
            Assert.StartsWith($"Steps begin with '{step}'", problem.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Another_name_is_offered_that_is_free()
    {
        string actions = "actions:\n  push: {do: nothing}\n";

        Assert.Contains("such as 'shove'", Loaded.Problem(actions).Hint, StringComparison.Ordinal);
        Assert.DoesNotContain("shove", Loaded.Problem(actions + "  shove: {do: nothing}\n").Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_offered_is_no_beginning_of_a_step_and_can_be_named() =>
        Assert.All(StepWords.All.Select(w => StepWords.Instead(w, [])).OfType<string>(), like =>
        {
            Assert.Null(StepWords.Named(like));
            Assert.Empty(Loaded.Of($"turn: {like}\nactions:\n  {like}: {{do: nothing}}\n").Reading.Problems);
        });

    [Fact]
    public void A_step_of_that_word_is_still_a_step() =>
        Assert.Equal(["ROS0196 1,11 roll"], Loaded.Of("actions: {roll: {do: roll the die in tray}}\ndice: {die: {count: 1, faces: 1 to 6}}\nplaces: {tray: {heap of: die}}\n").Told);

    [GeneratedRegex("`([a-z ]+)`")]
    private static partial Regex Quoted();
}
