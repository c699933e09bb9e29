namespace Rostrum.Cli.Tests;

/// <summary>What <c>rostrum check</c> tells about whole games.</summary>
public sealed class WholeGameCheckTests
{
    private const string Sheet = """
        rule sheet: 1
        game: Bowl
        pieces: {seed: {count: 9}}
        places: {bowl: {heap of: seed}}
        turn:
          - move a seed from supply to bowl

        """;

    [Fact]
    public void A_game_without_an_end_is_warned_of()
    {
        using var game = new TempGame(("sheet.yaml", Sheet));

        Told told = Told.By("check", game.Folder);

        Assert.Equal(ExitCode.Fine, told.Code);
        Assert.Contains("warning ROS0424", told.Output + told.Talk);
    }

    [Fact]
    public void What_only_a_variant_brings_is_told_with_its_name()
    {
        using var game = new TempGame(("sheet.yaml", Sheet + "end: {sown: {if: count(seeds in bowl) is 9}}\nvariants: {long: {end: {sown: {if: count(seeds in bowl) is 12}}}}\n"));

        Told told = Told.By("check", game.Folder);

        Assert.Contains("With long: The end 'sown' never comes: 'count(seeds in bowl)' is 9 at the most.", (told.Output + told.Talk).Replace("\n", " ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_game_that_cannot_be_played_is_a_warning_only()
    {
        using var game = new TempGame(("sheet.yaml", Sheet.Replace("seed: {count: 9}", "seed: {}", StringComparison.Ordinal) + "end: {sown: {if: count(seeds in bowl) is 9}}\n"));

        Assert.Contains("warning ROS0901", Told.By("check", game.Folder) is var told ? told.Output + told.Talk : "");
    }
}
