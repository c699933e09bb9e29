namespace Rostrum.Cli.Tests;

public class UsageTests
{
    private static string Kiln => TempGame.KilnNight;

    [Fact]
    public void Misspelt_option_is_told_as_such() =>
        Assert.Contains("'--jsno' is no option here. Did you mean '--json'?", Told.By("tally", Kiln, "--jsno", "E1").Talk);

    [Fact]
    public void Misspelt_option_with_a_value_is_told_as_such() =>
        Assert.Contains("'--saet' is no option here. Did you mean '--seat'?", Told.By("tally", Kiln, "E1", "--saet=1").Talk);

    [Fact]
    public void Option_like_nothing_known_gets_the_list() =>
        Assert.Contains("'--fast' is no option here. There are --published, --variant, --json, --help and --trace.", Told.By("check", Kiln, "--fast").Talk);

    [Fact]
    public void Words_behind_two_hyphens_are_no_options() =>
        Assert.Contains("There is no position '--jsno'.", Told.By("tally", Kiln, "--", "--jsno").Talk);

    [Fact]
    public void Misspelt_command_gets_the_nearest() => Assert.Contains("There is no command 'taly'. Did you mean 'tally'?", Told.By("taly", Kiln, "E1").Talk);

    [Fact]
    public void Missing_words_are_named() => Assert.Contains("'rostrum rule' needs <position> and <words> as well.", Told.By("rule", Kiln).Talk);

    [Fact]
    public void Words_without_quotes_are_told_as_such() =>
        Assert.Contains("'copper' is one word too many. Put words that belong together between quotes.", Told.By("rule", Kiln, "E1", "place", "copper", "jug").Talk);

    [Fact]
    public void Misspelt_position_gets_the_nearest() => Assert.Contains("Did you mean 'copper-ash'?", Told.By("tally", Kiln, "coper-ash").Talk);

    [Fact]
    public void Misspelt_game_gets_the_nearest() => Assert.Contains("kiln-night'?", Told.By("check", Kiln + "s").Talk);

    [Fact]
    public void Folder_above_the_games_gets_one_of_them() => Assert.Contains("holds no sheet.yaml", Told.By("check", Path.GetDirectoryName(Kiln)!).Talk);

    [Fact]
    public void Misspelt_variant_gets_the_nearest() => Assert.Contains("Did you mean 'Climbing Chamber'?", Told.By("read", Kiln, "--variant", "Climbing Chambre").Talk);

    [Fact]
    public void Misspelt_section_gets_the_nearest() => Assert.Contains("Did you mean 'Scoring'?", Told.By("read", Kiln, "--section", "Scorin").Talk);

    [Fact]
    public void Misspelt_space_in_a_question_gets_a_hint_and_a_place()
    {
        string talk = Told.By("rule", Kiln, "E1", "place copper jug on Z9").Talk;

        Assert.Contains("There is no shelf 'Z9'", talk);
        Assert.Contains("question(1,21)", talk);
        Assert.Contains("are A1 to E4", talk);
    }

    [Fact]
    public void Path_of_the_sheet_names_the_game() => Assert.Equal(0, Told.By("tally", Path.Combine(Kiln, "sheet.yaml"), "E1").Code);

    [Theory]
    [InlineData("check")]
    [InlineData("read")]
    [InlineData("tally")]
    [InlineData("rule")]
    [InlineData("draw")]
    [InlineData("lesson")]
    [InlineData("pack")]
    public void Help_of_each_command_has_an_example_with_the_demo_game(string command)
    {
        Told told = Told.By(command, "--help");

        Assert.Equal(0, told.Code);
        Assert.Contains($"Example:\n  rostrum {command} games/kiln-night", told.Output);
        Assert.Contains("--json", told.Output);
        Assert.All(told.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Help_of_new_has_an_example()
    {
        Told told = Told.By("new", "--help");

        Assert.Equal(0, told.Code);
        Assert.Contains("Example:\n  rostrum new lamp-market", told.Output);
        Assert.All(told.Output.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Version_is_told() => Assert.Equal(0, Told.By("--version").Code);

    [Fact]
    public void Shell_is_told_the_commands() => Assert.Contains("tally", Told.By("[suggest:10]", "rostrum ta").Output);

    [Fact]
    public void Shell_is_told_the_positions()
    {
        string line = $"./rostrum tally {Kiln} swap-l";

        string[] offered = Told.By($"[suggest:{line.Length}]", line).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

        Assert.Equal(["swap-lamp", "swap-lamp-near"], offered);
    }
}
