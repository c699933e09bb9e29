using System.Collections.Immutable;
using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Telling;
using Rostrum.Rulings.Verdicts;

namespace Rostrum.Play.Tests.Whole;

/// <summary>What play prints as an option, a ruling on the same position understands, and says the same of.</summary>
public sealed class ReadBackTests
{
    private const int Games = 3;
    private const int MostOptions = 40;
    private const int MostRefused = 20;

    // A power that asks how often it was used, which no position tells: a ruling on it is unsettled.
    private static readonly ImmutableHashSet<string> AskHowOften = ["free hand"];

    // The laws that ask what steps leave where players decide in them: a ruling on them is unsettled.
    private static readonly ImmutableHashSet<string> HangOnDecisions = ["never more luck"];

    // Their laws and choices leave nothing out in random play.
    private static readonly ImmutableHashSet<string> NothingIsRefused = ["third-bell-market", "traditional/pig"];

    public static TheoryData<string> Played => [.. RandomGames.Names];

    [Theory]
    [MemberData(nameof(Played))]
    public void Every_option_is_read_back_as_itself(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        var reader = new PhraseReader(plan);
        ForEachDecision(plan, (machine, decision, draws) =>
        {
            var phrases = new DecisionPhrases(plan, machine.State, decision.Options);
            return RandomGames.Some(decision.Options, MostOptions, draws)
                .Where(o => !ReferenceEquals(reader.Read(machine, decision.Options, phrases.Of(o)).Option, o))
                .Select(o => $"'{phrases.Of(o)}' is read as another option");
        });
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void What_play_offers_is_legal_by_ruling(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        ForEachDecision(plan, (machine, decision, draws) => RulingChecks.NotLegal(machine, decision, MostOptions, draws, (o, r) => r is Ruling.Unsettled && RulingChecks.AskedOf(o).Any(AskHowOften.Union(HangOnDecisions).Contains)));
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void What_play_refuses_is_never_legal_by_ruling(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        int left = MostRefused;
        ForEachDecision(plan, (machine, decision, draws) =>
        {
            Candidate[] refused = left <= 0 ? [] : [.. RulingChecks.Refused(machine, draws)];
            left -= refused.Length;
            return RulingChecks.LegalAfterAll(machine, decision, refused);
        });
        Assert.True(!RandomGames.Shipped.Contains(game) || NothingIsRefused.Contains(game) == (left == MostRefused), $"{MostRefused - left} were refused.");
    }

    private static void ForEachDecision(CoursePlan plan, Func<Machine, Moment.Decision, Draws, IEnumerable<string>> problems)
    {
        const int MostTold = 8;
        var found = new List<string>();
        for (ulong seed = 1; seed <= Games; seed++)
        {
            var draws = new Draws(seed, 1, 1);
            foreach ((Machine machine, Moment.Decision decision) in RandomGames.Decisions(plan, seed))
            {
                found.AddRange(problems(machine, decision, draws));
            }
        }

        Assert.True(found.Count == 0, $"{found.Count}: " + string.Join('\n', found.Distinct().Take(MostTold)));
    }
}
