using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Course;

/// <summary>Play that cannot go on says why, with the line of the sheet.</summary>
public sealed class RefusalTests
{
    private const string Bowl = """
        rule sheet: 1
        game: Bowl
        pieces: {seed: {count: 9}}
        places: {bowl: {heap of: seed}}
        marks: {lifted: {holds: 0 to 9}}
        end: {sown: {if: count(seeds in bowl) is 9}}

        """;

    [Fact]
    public void A_loop_that_never_ends_is_told_where_it_stands()
    {
        NotPlayableException why = Refused("turn:\n  - repeat until lifted is 3: move a seed from supply to bowl\n");

        Assert.Equal("The course goes on and on here without a decision: it never ends.", why.Message);
        Assert.StartsWith("repeat until lifted is 3", Line(why));
    }

    [Fact]
    public void A_part_that_is_not_modelled_is_told_where_it_stands()
    {
        NotPlayableException why = Refused("turn:\n  - move seeds wanted seeds from supply to bowl\nwords: {seeds wanted: not modelled}\n");

        Assert.Contains("not modelled", why.Message, StringComparison.Ordinal);
        Assert.NotNull(why.At);
    }

    [Fact]
    public void An_action_that_calls_itself_is_told_where_it_is_declared() =>
        Assert.Equal("sow: [move a seed from supply to bowl, sow]", Line(Refused("turn: sow\nactions:\n  sow: [move a seed from supply to bowl, sow]\n")));

    [Fact]
    public void A_law_that_asks_whether_its_own_action_can_be_done_is_told_where_it_asks() =>
        Assert.Equal("me can sow", Line(Refused("turn: sow\nactions:\n  sow: {do: move a seed from supply to bowl}\nlaws:\n  first come: {binds: sow, forbids: me can sow}\n")).TrimEnd('}'));

    [Fact]
    public void A_game_that_only_passes_turns_is_given_up() =>
        Assert.Equal("The game has not ended after 100,000 decisions, chance events and turns.", Refused("turn: nothing\n").Message);

    private static NotPlayableException Refused(string rest) => Assert.Throws<NotPlayableException>(() =>
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("bowl", ("sheet.yaml", Bowl + rest)), ShippedGames.Idioms, []);
        Assert.True(reading.IsSound, string.Join('\n', reading.Problems.Select(p => p.Message)));
        return new PlayedGame(GameTable.Of(reading.Sheet!), [PlayerKind.Random], 1).Moves().Count();
    });

    // The rest of the line of the sheet to which a refusal points.
    private static string Line(NotPlayableException why) => why.At!.Value.Source.Content[why.At.Value.Start..].Split('\n')[0];
}
