using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Sheets.Tests.Loading;
using Rostrum.Testing;

namespace Rostrum.Sheets.Tests.ReadBack;

/// <summary>What a variant leaves as it is: whatever is written differently is told, one way or the other.</summary>
public sealed class ReadRestTests
{
    public static TheoryData<string, string> Variants => [.. ShippedGames.Names.SelectMany(n => Read(n).Variants.Select(v => (n, v.Name)))];

    [Theory]
    [MemberData(nameof(Variants))]
    public void Whatever_a_variant_of_a_shipped_game_writes_differently_is_told(string game, string variant)
    {
        (Sheet sheet, Sheet with) = (Read(game), Read(game, variant));

        ReadRest rest = ReadRest.Of(sheet, with, SheetReadBack.Differences(sheet, with));

        Assert.Empty(rest.Untold);
        Assert.True(rest.Same > 0);
    }

    [Theory]
    [InlineData("pieces: {ware: {count: 3, colours: sand}}", "pieces: {ware: {count: 3, colours: ash}}", "pieces, ware")]
    [InlineData("turn: nothing\nend: {full: {if: 1 is 1}}", "turn: end turn\nend: {full: {if: 1 is 1}}", null)]
    [InlineData("end: {full: {says: F., if: 1 is 1, then: at once}}", "end: {full: {says: F., if: 1 is 1, then: finish the round}}", null)]
    [InlineData("marks: {coins: 0 to 3}", "marks: {coins: {holds: 0 to 3, starts: 2}}", null)]
    [InlineData("boards: {field: {squares: 3 across 3 up}}", "boards: {field: {squares: 3 across 3 up, wraps: yes}}", null)]
    [InlineData("aim: lowest total\nscore: {a: 1}", "aim: at least 3\nscore: {a: 1}", null)]
    [InlineData("before turn: nothing\nturn: nothing", "before turn: end turn\nturn: nothing", null)]
    [InlineData("next to play: me\nturn: nothing", "next to play: start player\nturn: nothing", null)]
    public void A_change_that_no_clause_tells_is_named(string one, string other, string? untold)
    {
        const string Common = "rule sheet: 1\nactions: {lay: nothing}\n";
        (Sheet sheet, Sheet with) = (Loaded.Of(Common + one).Sheet, Loaded.Of(Common + other).Sheet);

        ReadRest rest = ReadRest.Of(sheet, with, SheetReadBack.Differences(sheet, with));

        Assert.Equal(untold is null ? [] : [untold], rest.Untold);
        Assert.True(rest.Same > 0);
    }

    private static Sheet Read(string game, params string[] variants) => SheetReader.Read(ShippedGames.Folder($"games/{game}"), ShippedGames.Idioms, variants).Sheet!;
}
