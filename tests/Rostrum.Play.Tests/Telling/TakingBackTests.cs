using Rostrum.Play.Players;
using Rostrum.Play.Tests.Outside;

namespace Rostrum.Play.Tests.Telling;

/// <summary>A player takes decisions back, as far as nothing stands between: chance, something newly seen, another player's decision, a final action.</summary>
public sealed class TakingBackTests
{
    private static readonly GameTable Leaves = TableOf.Written("""
        rule sheet: 1
        game: Leaves
        players: 2
        seats: [North, South]
        sources: {book: {title: Rulebook, pages: 4}}
        cards: {twig: {names: [birch]}, leaf: {plural: leaves, names: [ash, elm]}}
        dice: {die: {plural: dice, count: 1, faces: 1 to 6}}
        places:
          stump: {deck of: twig}
          pack: {deck of: leaf}
          tray: {heap of: die}
          hand: {hand of: twig, of: each player}
        set-up: move all dice from supply to tray
        turn:
          - stretch
          - one of: [toss, peek, seal, mix, point, wait]
          - stretch
        actions:
          stretch: {phrase: stretch (number), choose: {number: a number from 1 to 3}, do: nothing}
          toss: {phrase: toss, do: roll dice in tray}
          peek: {phrase: peek, do: deal 1 from stump to my hand}
          seal: {says: A seal is not broken., cite: book 4, phrase: seal, final: yes, do: nothing}
          mix: {phrase: mix, do: shuffle pack}
          point: {phrase: point, do: seal}
          wait: {phrase: wait, do: nothing}
        """);

    [Theory]
    [InlineData("Chance has come out since: rolled 4.", "North: stretch 1", "North: toss", "rolled: 4", "North: take back")]
    [InlineData("Birch was seen since.", "North: stretch 1", "North: peek", "North: take back")]
    [InlineData("South has chosen since.", "North: stretch 1", "North: wait", "North: stretch 2", "South: stretch 1", "North: take back")]
    [InlineData("The sheet says that 'seal' is final.", "North: stretch 1", "North: seal", "North: take back")]
    [InlineData("The sheet says that 'seal' is final.", "North: stretch 1", "North: seal", "North: stretch 2", "North: take back", "North: take back")]
    [InlineData("The sheet says that 'seal' is final.", "North: stretch 1", "North: point", "North: take back")]
    [InlineData("The pack was shuffled since.", "North: stretch 1", "North: mix", "North: take back")]
    [InlineData("North has decided nothing that could be taken back.", "North: take back")]
    [InlineData("North has decided nothing that could be taken back.", "North: stretch 1", "North: take back", "North: take back")]
    [InlineData("South has decided nothing that could be taken back.", "North: stretch 1", "South: take back")]
    public void What_stands_between_is_told(string because, params string[] lines)
    {
        TranscriptResult result = Transcript.Play(Leaves, lines);

        Assert.Equal((lines.Length - 1, because), (result.Refusal?.Line ?? -1, result.Refusal?.Why.Because ?? ""));
    }

    [Fact]
    public void A_final_action_is_told_with_its_page()
    {
        RefusedBy by = Assert.Single(Transcript.Play(Leaves, ["North: stretch 1", "North: seal", "North: take back"]).Refusal!.Why.By);

        Assert.Equal(("seal", "A seal is not broken.", "Rulebook, page 4"), (by.Clause, by.Says, by.Cite!.InWords));
    }

    [Theory]
    [InlineData("North: stretch 1", "North: take back", "North: stretch 2", "North: wait")]
    [InlineData("North: stretch 1", "North: wait", "North: take back", "North: take back", "North: stretch 2", "North: wait", "North: stretch 3")]
    [InlineData("North: stretch 1", "North: toss", "North: stretch 2", "North: take back", "North: stretch 3", "South: stretch 1")]
    [InlineData("North: stretch 1", "North: wait", "North: stretch 2", "South: stretch 1", "South: take back", "North: take back", "North: stretch 1", "South: stretch 2", "South: wait")]
    public void Play_goes_on_from_where_it_was(params string[] lines) => Assert.Null(Transcript.Play(Leaves, lines).Refusal);

    [Fact]
    public void A_game_that_plays_itself_can_be_taken_back()
    {
        var game = new PlayedGame(Leaves, [PlayerKind.Random], 5);
        using IEnumerator<PlayedMove> moves = game.Moves().GetEnumerator();
        Assert.Equal(0, game.MayTakeBack);
        Assert.True(moves.MoveNext());
        Assert.Equal(1, game.MayTakeBack);

        Assert.Null(game.TakeBack());
        Assert.Equal(0, game.MayTakeBack);
        Assert.NotNull(game.TakeBack());
        Assert.True(moves.MoveNext());
        Assert.StartsWith("stretch", moves.Current.Words, StringComparison.Ordinal);
        Assert.Equal(("North", 1), (moves.Current.Player, moves.Current.Turn));
    }
}
