using Rostrum.Play.Layout;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Telling;

/// <summary>Transcripts whose lines do not fit the game say which line, and why.</summary>
public sealed class TranscriptTests
{
    private const string Draw = """
        rule sheet: 1
        game: Two Leaves
        players: 2
        seats: [North, South]
        cards: {leaf: {plural: leaves, names: [ash, elm, oak]}}
        dice: {die: {plural: dice, count: 2, faces: 1 to 6}}
        places:
          pack: {deck of: leaf}
          tray: {heap of: die}
          hand: {hand of: leaf, of: each player}
        set-up: move all dice from supply to tray
        turn:
          - roll dice in tray
          - gather
          - deal 1 from pack to my hand
        actions:
          gather: {phrase: gather (number), choose: {number: a number from 1 to 2}, do: nothing}
        end:
          empty: {says: The last leaf ends it., if: no(leaves in pack), winner: me}
        """;

    [Theory]
    [InlineData(1, "The dice that are rolled here cannot show 7 and 1.", "rolled: 7, 1", "North: gather 1")]
    [InlineData(1, "2 dice are rolled here, not 1.", "rolled: 3", "North: gather 1")]
    [InlineData(2, "No yew can be dealt from the pack here.", "dealt from pack: yew", "North: gather 1", "South: gather 1")]
    [InlineData(3, "Nothing happens by chance here that this could tell.", "North: gather 1", "South: gather 1", "rolled: 1, 2", "rolled: 3, 4")]
    [InlineData(0, "No place of the sheet is called 'bag'.", "dealt from bag: ash")]
    [InlineData(0, "'West' is nobody at the table; lines begin with a player, 'rolled', 'shuffled', 'dealt from', 'now' or 'over'.", "West: gather 1")]
    [InlineData(0, "It is North who decides here.", "South: gather 1")]
    [InlineData(0, "The game is not over: North decides next.", "over: North")]
    [InlineData(4, "The game is over and North has won.", "North: gather 1", "South: gather 1", "North: gather 1", "now: 1 is 1", "over: South")]
    [InlineData(3, "The last leaf ends it.", "North: gather 1", "South: gather 1", "North: gather 1", "South: gather 1")]
    [InlineData(2, "'ash is in hand of South' is not so: ", "shuffled pack: ash, elm, oak", "North: gather 1", "now: ash is in hand of South")]
    public void A_line_that_does_not_fit_is_told(int line, string because, params string[] lines)
    {
        TranscriptResult result = Transcript.Play(GameTable.Of(Sheet), lines);

        Assert.NotNull(result.Refusal);
        Assert.Equal(line, result.Refusal.Line);
        Assert.Contains(because, $"{result.Refusal.Why.Because} {string.Join(' ', result.Refusal.Why.By.Select(b => b.Says))}", StringComparison.Ordinal);
    }

    [Fact]
    public void Chance_comes_out_as_it_is_told()
    {
        TranscriptResult result = Transcript.Play(GameTable.Of(Sheet),
        [
            "shuffled pack: oak, ash", "rolled: 5, 2", "now: sum(dice in tray, face of it) is 7", "North: gather 1", "rolled: 1, 1",
            "now: oak is in hand of North", "South: gather 2", "North: gather 1", "now: ash is in hand of South", "over: North",
        ]);

        Assert.Null(result.Refusal?.Why.Because);
        Assert.Equal(10, result.Played);
        Assert.Equal("empty", result.Result?.End);
    }

    [Fact]
    public void A_game_that_only_passes_turns_is_given_up() =>
        Assert.Equal(
            "The game has gone on for 100,000 chance events and turns without a decision.",
            Assert.Throws<NotPlayableException>(() => Transcript.Play(GameTable.Of(Read("rule sheet: 1\ngame: Idle\nplayers: 2\nturn: nothing\n")), [])).Message);

    private static Sheet Sheet { get; } = Read(Draw);

    private static Sheet Read(string text)
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("leaves", [(SheetReader.FileName, text)]), ShippedGames.Idioms, []);
        Assert.Empty(reading.Problems.Select(p => p.Message));
        return reading.Sheet!;
    }
}
