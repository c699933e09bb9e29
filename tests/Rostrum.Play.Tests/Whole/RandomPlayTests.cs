using System.Collections.Immutable;
using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Play.Positions;
using Rostrum.Play.Telling;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;

namespace Rostrum.Play.Tests.Whole;

/// <summary>What holds in every game, whatever is played.</summary>
public sealed class RandomPlayTests
{
    private const ulong Games = 3;

    // Games in which players see different things.
    private static readonly ImmutableHashSet<string> HasSecrets = ["traditional/tricks", "12-follow-suit", "14-in-secret", "24-seven-cards"];

    public static TheoryData<string> Played => [.. RandomGames.Names];

    [Theory]
    [MemberData(nameof(Played))]
    public void Nothing_is_ever_made_or_lost(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        string start = TableChecks.Things(plan.Start());
        for (ulong seed = 1; seed <= Games; seed++)
        {
            Assert.All(RandomGames.Decisions(plan, seed, s => Assert.Equal(start, TableChecks.Things(s))), _ => { });
        }
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void A_game_of_the_same_seed_is_the_same_game(string game)
    {
        GameTable table = RandomGames.Table(game);
        for (ulong seed = 1; seed <= Games; seed++)
        {
            Assert.Equal(Told(table, seed), Told(table, seed));
        }

        Assert.True(!RandomGames.Shipped.Contains(game) || Told(table, 1) != Told(table, 2), "Another seed is the same game too.");
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void A_state_is_read_back_from_its_key(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        var keys = new StateKey(plan);
        var phrases = new PhraseWriter(plan);
        foreach ((Machine machine, Moment.Decision decision) in RandomGames.Decisions(plan, 4))
        {
            byte[] key = keys.Write(machine.State).ToArray();
            var again = new Machine(plan) { State = keys.Read(key) };

            Assert.Equal(key, keys.Write(again.State).ToArray());
            Moment.Decision same = Assert.IsType<Moment.Decision>(again.Advance());
            Assert.Equal(decision.Seat, same.Seat);
            Assert.Equal(phrases.All(machine.State, decision.Options), phrases.All(again.State, same.Options));
        }
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void What_a_player_cannot_see_does_not_change_what_they_may_do(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        var phrases = new PhraseWriter(plan);
        bool isMixed = false;
        for (ulong seed = 1; seed <= Games; seed++)
        {
            var draws = new Draws(seed, 2, 2);
            foreach ((Machine machine, Moment.Decision decision) in RandomGames.Decisions(plan, seed))
            {
                var other = new Machine(plan) { State = machine.State.Copy() };
                if (TableChecks.Mix(other.State, decision.Seat, draws))
                {
                    isMixed = true;
                    Moment.Decision same = Assert.IsType<Moment.Decision>(other.Advance());
                    Assert.Equal(phrases.All(machine.State, decision.Options).Order(), phrases.All(other.State, same.Options).Order());
                }
            }
        }

        Assert.True(isMixed || !HasSecrets.Contains(game), "Nothing was hidden.");
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void A_game_is_reckoned_as_the_tally_of_its_last_position_says(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        for (ulong seed = 1; seed <= Games && !plan.Score.IsEmpty; seed++)
        {
            Machine machine = RandomGames.Played(plan, seed);
            Position position = StateWriter.Write(plan, machine.State, game, 0);

            Assert.Equal(
                Enumerable.Range(0, plan.Layout.Seats).Select(s => (long?)Reckoning.Total(machine, s)),
                Enumerable.Range(0, plan.Layout.Seats).Select(s => Tally.Of(position, s).Total.Certain));
        }
    }

    private static string Told(GameTable table, ulong seed)
    {
        var game = new PlayedGame(table, [PlayerKind.Random], seed);
        string moves = string.Join('\n', game.Moves().Take(400).Select(m => $"{m.Turn} {m.Player}: {m.Words} ({m.Options})"));
        return $"{moves}\n{game.Result?.End} {string.Join(' ', game.Result?.Seats ?? [])}";
    }
}
