using Rostrum.Play.Counting;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Course;

/// <summary>What an action leaves, and what its laws and the table say of that. Games that random sheets have found, as small as they are.</summary>
public sealed class LawsAfterTests
{
    private const string Row = """
        rule sheet: 1
        game: Row
        players: 1
        pieces: {stone: {count: 4}}
        boards: {row: {squares: 3 across 1 up, holds: 1}}
        turn: lay
        actions:
          lay: {phrase: lay on (spot), choose: {spot: a space in row}, do: move a stone from supply to spot}

        """;

    [Fact]
    public void Unless_is_asked_before_the_steps_as_in_rulings() =>
        Assert.Equal(["bare"], Refused(Row.Replace("turn: lay", "turn: [{one of: [lay, rest]}]", StringComparison.Ordinal) + "  rest: {phrase: rest, do: nothing}\nlaws: {bare: {binds: lay, must leave: no(stones in row), unless: any(stones in row)}}\n", "lay on A1"));

    // A1 holds two from the set-up on, which no player has done.
    [Fact]
    public void What_was_too_much_before_forbids_nothing_elsewhere() =>
        Assert.Equal((UInt128)2, GameTable.Of(Read(Row + "set-up:\n  - move 2 stones from supply to A1\n")).Count(1).Last().Lines);

    [Fact]
    public void A_law_that_is_broken_before_and_after_is_one_law() =>
        Assert.Equal(
            (UInt128)3,
            GameTable.Of(Read(Row + "laws: {bare: {binds: lay, needs: no(row where it is empty), must leave: no(stones in row)}}\npowers: {Mason: {lifts: any one law, for: lay}}\n")).Count(1).Last().Lines);

    [Fact]
    public void A_swap_does_not_bring_more_than_a_space_holds() =>
        Assert.Equal(["trade"], Refused(
            """
            rule sheet: 1
            game: Two tracks
            players: 1
            pieces: {stone: {count: 4}}
            boards: {tall: {track: 1, holds: 2}, low: {track: 1, holds: 1}}
            set-up: move 2 stones from supply to item(1, spaces of tall)
            turn:
              - one of: [trade, rest]
            actions:
              trade: {phrase: trade with (spot), choose: {spot: a space in low}, do: swap spot and item(1, spaces of tall)}
              rest: {phrase: rest, do: nothing}
            """,
            "trade with 1"));

    [Theory]
    [InlineData("red")]
    [InlineData("red, blue")]
    public void More_is_never_dealt_than_a_space_holds(string colours) =>
        Assert.Equal(["fill"], Refused(
            $$$"""
            rule sheet: 1
            game: Bag
            players: 1
            pieces: {stone: {attributes: {colour: [{{{colours}}}]}, count of each colour: 2}}
            boards: {row: {squares: 2 across 1 up, holds: 1}}
            places: {sack: {bag of: stone}}
            turn: [{one of: [fill, rest]}]
            actions:
              fill: {phrase: fill (spot) with (many), choose: {spot: a space in row, many: a number from 1 to 2}, do: deal many from sack to spot}
              rest: {phrase: rest, do: nothing}
            """,
            "fill A1 with 2"));

    // The bag holds stones of one colour only: what is dealt is certain, and what may be done is the same as if it were not.
    [Theory]
    [InlineData("red")]
    [InlineData("red, blue")]
    public void What_a_law_asks_behind_a_deal_does_not_hang_on_what_is_in_the_bag(string colours) =>
        Assert.Equal(
            (UInt128)colours.Split(',').Length,
            GameTable.Of(Read(
                $$$"""
                rule sheet: 1
                game: Bag
                players: 1
                pieces: {stone: {attributes: {colour: [{{{colours}}}]}, count of each colour: 2}}
                places: {sack: {bag of: stone}, dish: {heap of: stone}}
                turn: dip
                actions:
                  dip: {phrase: dip, do: deal 1 from sack to dish}
                laws:
                  bare: {binds: dip, must leave: no(stones in dish)}
                """)).Count(1).Last().Lines);

    [Theory]
    [InlineData("send guest of North home", 1)]
    [InlineData("send guest of South home", 0)]
    public void Pieces_of_several_players_in_one_place_are_told_by_their_owner(string words, int left)
    {
        TranscriptResult result = Transcript.Play(
            GameTable.Of(Read(
                """
                rule sheet: 1
                game: Inn
                players: 2
                seats: [North, South]
                pieces: {guest: {each player: 2}}
                places: {inn: {heap of: guest}}
                set-up:
                  - each player: move a guest from my supply to inn
                turn: send
                actions:
                  send: {phrase: send (what) home, choose: {what: a guest in inn}, do: move what to box}
                """)),
            [$"North: {words}", $"now: count(g in guests in inn where owner of g is South) is {left}"]);

        Assert.Null(result.Refusal?.Why.Because);
    }

    private static IEnumerable<string> Refused(string sheet, string words) =>
        Transcript.Play(GameTable.Of(Read(sheet)), [$"seat 1: {words}"]).Refusal?.Why.By.Select(b => b.Clause) ?? [];

    private static Sheet Read(string text)
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("row", (SheetReader.FileName, text)), ShippedGames.Idioms, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => p.Message));
        return reading.Sheet!;
    }
}
