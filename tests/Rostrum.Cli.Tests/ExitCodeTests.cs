namespace Rostrum.Cli.Tests;

public class ExitCodeTests
{
    private static string Kiln => TempGame.KilnNight;

    [Fact]
    public void Sound_game_with_a_warning_is_fine() => Assert.Equal(0, Told.By("check", Kiln).Code);

    [Fact]
    public void Sheet_with_an_error_is_a_finding()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly.Replace("count(my", "count(mine")));

        Assert.Equal(1, Told.By("check", game.Folder).Code);
    }

    [Theory]
    [InlineData("E1", "Commission 12 is met", 0)]
    [InlineData("E1", "Commission 6 is met", 1)]
    [InlineData("E1", "place ash bowl on E2", 0)]
    [InlineData("E1", "place copper jug on B3", 1)]
    [InlineData("glaze-not-given", "Commission 7 is met", 1)]
    [InlineData("glaze-not-given", "place copper bowl on B2", 1)]
    public void Ruling_tells_by_its_code_whether_it_is_yes(string position, string words, int code) =>
        Assert.Equal(code, Told.By("rule", Kiln, position, words).Code);

    [Theory]
    [InlineData("check", "no-such-game")]
    [InlineData("frobnicate")]
    [InlineData]
    [InlineData("tally", "{kiln}")]
    [InlineData("tally", "{kiln}", "no such position")]
    [InlineData("tally", "{kiln}", "E1", "--seat", "2")]
    [InlineData("tally", "{kiln}", "E1", "--seat", "zero")]
    [InlineData("tally", "{kiln}", "E1", "--variant", "moonlight")]
    [InlineData("tally", "{kiln}", "E1", "E2")]
    [InlineData("check", "{kiln}", "--jsn")]
    [InlineData("read", "{kiln}", "--section", "Nowhere")]
    [InlineData("rule", "{kiln}", "E1", "sing a song")]
    [InlineData("rule", "{kiln}", "E1", "")]
    [InlineData("draw", "{kiln}", "E1")]
    [InlineData("draw", "{kiln}", "E1", "-o", "picture.bmp")]
    [InlineData("pack", "{kiln}")]
    public void Wrong_usage_is_2_and_writes_no_data(params string[] args)
    {
        Told told = Told.By([.. args.Select(a => a.Replace("{kiln}", Kiln, StringComparison.Ordinal))]);

        Assert.Equal(2, told.Code);
        Assert.Empty(told.Output);
        Assert.NotEmpty(told.Talk);
    }

    [Fact]
    public void Fault_of_ours_is_3_and_told_calmly()
    {
        Told told = Told.With(new BrokenReader(), ["tally", Kiln, "-"], TestContext.Current.CancellationToken);

        Assert.Equal(3, told.Code);
        Assert.Contains("Rostrum itself is at fault here, and your files are as they were: the pipe is upside down", told.Talk);
        Assert.Contains("Report it", told.Talk);
        Assert.DoesNotContain("   at ", told.Talk);
    }

    [Fact]
    public void Fault_of_ours_is_told_with_its_place_on_request() =>
        Assert.Contains("   at ", Told.With(new BrokenReader(), ["tally", Kiln, "-", "--trace"], TestContext.Current.CancellationToken).Talk);

    [Fact]
    public void Stopped_command_is_130()
    {
        Told told = Told.With(TextReader.Null, ["check", Kiln], new CancellationToken(canceled: true));

        Assert.Equal(130, told.Code);
        Assert.Equal("rostrum: stopped\n", told.Talk);
    }

    [Fact]
    public void Output_that_takes_nothing_is_2()
    {
        using var talk = new StringWriter();

        int code = RostrumCommand.Run(["tally", Kiln, "E1"], TextReader.Null, new FullWriter(), talk, stop: TestContext.Current.CancellationToken);

        Assert.Equal(2, code);
        Assert.Contains("The answer cannot be written to the output: the disk is full.", talk.ToString());
    }

    private sealed class BrokenReader : TextReader
    {
        public override int ReadBlock(char[] buffer, int index, int count) => throw new InvalidOperationException("the pipe is upside down");
    }

    private sealed class FullWriter : StringWriter
    {
        public override void Write(string? value) => throw new IOException("No space left on device", hresult: 28);
    }
}
