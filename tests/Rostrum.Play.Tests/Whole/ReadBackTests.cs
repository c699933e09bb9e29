using System.Collections.Immutable;
using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Positions;
using Rostrum.Play.Telling;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

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
        ForEachDecision(plan, (machine, decision, draws) =>
        {
            var phrases = new DecisionPhrases(plan, machine.State, decision.Options);
            Position position = StateWriter.Write(plan, machine.State, game, decision.Seat);
            return RandomGames.Some([.. decision.Options.Where(o => o.Alternative is CallAlternative)], MostOptions, draws)
                .Select(o => (o, NotLegal(position, phrases.Of(o with { Powers = [] }), o)))
                .Where(r => r.Item2 is not null).Select(r => $"{((CallAlternative)r.o.Alternative).Action.Facts.Action.Name}: {r.Item2}");
        });
    }

    [Theory]
    [MemberData(nameof(Played))]
    public void What_play_refuses_is_never_legal_by_ruling(string game)
    {
        CoursePlan plan = RandomGames.Plan(game);
        int left = MostRefused;
        ForEachDecision(plan, (machine, decision, draws) =>
        {
            Candidate[] refused = left <= 0 ? [] : [.. Refused(machine, draws)];
            left -= refused.Length;
            var phrases = new DecisionPhrases(plan, machine.State, [.. decision.Options, .. refused.Select(r => r.Option)]);
            Position position = StateWriter.Write(plan, machine.State, game, decision.Seat);
            HashSet<string> byPower = [.. decision.Options.Select(o => phrases.Of(o with { Powers = [] }))];
            return refused.Where(r => !byPower.Contains(phrases.Of(r.Option)) && Ruling.On(position, phrases.Of(r.Option)).Ruling is Ruling.Legal)
                .Select(r => $"'{phrases.Of(r.Option)}' is legal by ruling, and refused by {string.Join(", ", r.Broken.Select(l => l.Law.Name))}");
        });
        Assert.True(!RandomGames.Shipped.Contains(game) || NothingIsRefused.Contains(game) == (left == MostRefused), $"{MostRefused - left} were refused.");
    }

    // A few candidates of the decision that are refused.
    private static IEnumerable<Candidate> Refused(Machine machine, Draws draws)
    {
        const int Most = 3;
        CallAlternative[] calls = [.. machine.Plan.Code[machine.State.Numbers[Slots.Step]].Alternatives.SelectMany(a => a.Calls(machine.Finder))];
        foreach (CallAlternative call in calls)
        {
            int all = 0;
            machine.Finder.Candidates(call, _ => all++ < 0);
            HashSet<int> wanted = [.. Enumerable.Range(0, Math.Min(all, 10)).Select(_ => (int)draws.Below((uint)all))];
            int at = 0;
            foreach (Candidate candidate in machine.Finder.Candidates(call, _ => wanted.Contains(at++)).Where(c => !c.Broken.IsEmpty || c.IsOverfull).Take(Most))
            {
                yield return candidate;
            }
        }
    }

    private static string? NotLegal(Position position, string phrase, Option option)
    {
        RulingAnswer answer = Ruling.On(position, phrase);
        return answer.Ruling switch
        {
            Ruling.Legal => null,
            Ruling.Unsettled when AskedOf(option).Any(AskHowOften.Union(HangOnDecisions).Contains) => null,
            { } other => $"'{phrase}' is {other.Verdict}: {other.Reason(b => $"{b.Clause}, {b.Because}")}",
            null => $"'{phrase}' is not understood: {string.Join(' ', answer.Problems.Select(p => p.Message))}",
        };
    }

    private static IEnumerable<string> AskedOf(Option option) =>
        [.. ((CallAlternative)option.Alternative).Action.Laws.Select(l => l.Law.Name), .. option.Powers.Select(p => p.Power.Name)];

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
