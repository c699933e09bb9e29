using System.Collections.Immutable;
using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Play.Positions;
using Rostrum.Play.Telling;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Model;

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
        string start = Things(plan.Start());
        for (ulong seed = 1; seed <= Games; seed++)
        {
            Assert.All(RandomGames.Decisions(plan, seed, s => Assert.Equal(start, Things(s))), _ => { });
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
                if (Mix(other.State, decision.Seat, draws))
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

    // Every thing where its spot says, counted by what it looks like apart from its states; a piece larger than a space has all its feet on a board, else one.
    private static string Things(TableState state)
    {
        int[] counts = new int[state.Layout.Classes.Length];
        for (int spot = 0; spot < state.Layout.Spots; spot++)
        {
            int count = 0;
            for (int foot = state.Bottom(spot); foot != TableState.None; foot = state.Above(foot), count++)
            {
                int thing = state.Layout.ThingOfFoot[foot];
                Assert.Equal(spot, state.Spot(foot));
                Assert.Equal(state.Layout.SpotHolder[spot].Board is null ? 1 : state.Layout.Class(thing).Feet, state.SpotsOf(thing).Distinct().Count());
                counts[state.Layout.ClassOf[thing]] += foot == thing ? 1 : 0;
            }

            Assert.Equal(count, state.Count(spot));
        }

        return string.Join(' ', counts);
    }

    private static string Told(GameTable table, ulong seed)
    {
        var game = new PlayedGame(table, [PlayerKind.Random], seed);
        string moves = string.Join('\n', game.Moves().Take(400).Select(m => $"{m.Turn} {m.Player}: {m.Words} ({m.Options})"));
        return $"{moves}\n{game.Result?.End} {string.Join(' ', game.Result?.Seats ?? [])}";
    }

    // Exchanges things in other hands, bags and unknown parts of decks; false where a seat sees everything.
    private static bool Mix(TableState state, int seat, Draws draws)
    {
        int[] hidden = [.. Enumerable.Range(0, state.Layout.Things).Where(t => IsHidden(state, t, seat))];
        bool isMixed = false;
        foreach (int thing in hidden)
        {
            int other = hidden[draws.Below((uint)hidden.Length)];
            (ThingClass a, ThingClass b) = (state.Layout.Class(thing), state.Layout.Class(other));
            if (state.Spot(thing) != state.Spot(other) && ReferenceEquals(a.Kind, b.Kind) && a.Owner == b.Owner)
            {
                state.ExchangeThings(thing, other);
                isMixed = true;
            }
        }

        return isMixed;
    }

    private static bool IsHidden(TableState state, int thing, int seat)
    {
        Holder holder = state.Layout.SpotHolder[state.Spot(thing)];
        return holder.Form == PlaceForm.Bag || (holder.Form == PlaceForm.Hand && holder.Seat != seat) || (holder.Form == PlaceForm.Deck && state.Known(state.Spot(thing)) == 0);
    }
}
