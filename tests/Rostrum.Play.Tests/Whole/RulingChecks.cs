using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Positions;
using Rostrum.Play.Telling;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;

namespace Rostrum.Play.Tests.Whole;

/// <summary>Holds what play offers and refuses against rulings on the same position, written out.</summary>
internal static class RulingChecks
{
    /// <summary>The options of a decision that a ruling does not call legal, in words.</summary>
    /// <param name="machine">Waits at the decision.</param>
    /// <param name="decision">The decision.</param>
    /// <param name="most">How many options are asked.</param>
    /// <param name="draws">Chooses them.</param>
    /// <param name="mayDiffer">True for an option and a ruling that cannot say more: what it asks, no position tells.</param>
    public static IEnumerable<string> NotLegal(Machine machine, Moment.Decision decision, int most, Draws draws, Func<Option, Ruling, bool> mayDiffer)
    {
        var phrases = new DecisionPhrases(machine.Plan, machine.State, decision.Options);
        Position position = StateWriter.Write(machine.Plan, machine.State, "random", decision.Seat);
        return RandomGames.Some([.. decision.Options.Where(o => o.Alternative is CallAlternative)], most, draws)
            .Select(o => (o, NotLegal(position, phrases.Of(o with { Powers = [] }), o, mayDiffer)))
            .Where(r => r.Item2 is not null).Select(r => $"{((CallAlternative)r.o.Alternative).Action.Facts.Action.Name}: {r.Item2}");
    }

    private static string? NotLegal(Position position, string phrase, Option option, Func<Option, Ruling, bool> mayDiffer)
    {
        RulingAnswer answer = Ruling.On(position, phrase);
        return answer.Ruling switch
        {
            Ruling.Legal => null,
            { } other when mayDiffer(option, other) => null,
            { } other => $"'{phrase}' is {other.Verdict}: {other.Reason(b => $"{b.Clause}, {b.Because}")}",
            null => $"'{phrase}' is not understood: {string.Join(' ', answer.Problems.Select(p => p.Message))}",
        };
    }

    /// <summary>The names of the laws and powers on which an option hangs.</summary>
    public static IEnumerable<string> AskedOf(Option option) =>
        [.. ((CallAlternative)option.Alternative).Action.Laws.Select(l => l.Law.Name), .. option.Powers.Select(p => p.Power.Name)];

    /// <summary>Refused candidates of a decision that a ruling calls legal, in words.</summary>
    /// <param name="machine">Waits at the decision.</param>
    /// <param name="decision">The decision.</param>
    /// <param name="refused">The candidates.</param>
    public static IEnumerable<string> LegalAfterAll(Machine machine, Moment.Decision decision, IReadOnlyList<Candidate> refused)
    {
        var phrases = new DecisionPhrases(machine.Plan, machine.State, [.. decision.Options, .. refused.Select(r => r.Option)]);
        Position position = StateWriter.Write(machine.Plan, machine.State, "random", decision.Seat);
        HashSet<string> byPower = [.. decision.Options.Select(o => phrases.Of(o with { Powers = [] }))];
        return refused.Where(r => !byPower.Contains(phrases.Of(r.Option)) && Ruling.On(position, phrases.Of(r.Option)).Ruling is Ruling.Legal)
            .Select(r => $"'{phrases.Of(r.Option)}' is legal by ruling, and refused by {string.Join(", ", r.Broken.Select(l => l.Law.Name))}");
    }

    /// <summary>A few candidates of a decision that are refused.</summary>
    public static IEnumerable<Candidate> Refused(Machine machine, Draws draws)
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
}
