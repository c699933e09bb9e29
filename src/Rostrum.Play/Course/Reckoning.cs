using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>How a game came out.</summary>
/// <param name="Totals">By seat: the points of all scoring clauses.</param>
/// <param name="Winners">The seats that win, 0-based; empty where nobody does.</param>
/// <param name="Ranks">By seat: 1 for the first; equal ones share a rank and the next is left out.</param>
/// <param name="End">The position of the end that came, in <see cref="Sheet.Ends"/>; null where the course was simply done.</param>
/// <param name="TieBreak">The tie-break that decided, in the author's words; null where none was needed.</param>
internal sealed record Result(ImmutableArray<int> Totals, ImmutableArray<int> Winners, ImmutableArray<int> Ranks, int? End, string? TieBreak);

/// <summary>Reckons a game that is over: totals, tie-breaks, who wins.</summary>
internal static class Reckoning
{
    /// <summary>The result of a state in which the game is over.</summary>
    public static Result Of(Machine machine)
    {
        CoursePlan plan = machine.Plan;
        int seats = plan.Layout.Seats;
        ImmutableArray<int> totals = [.. Enumerable.Range(0, seats).Select(s => Total(machine, s))];
        int end = machine.State.Numbers[Slots.End];
        int given = machine.State.Numbers[Slots.Winners];
        if (given >= 0)
        {
            ImmutableArray<int> named = [.. Enumerable.Range(0, seats).Where(s => (given >> s & 1) == 1)];
            return new Result(totals, named, [.. Enumerable.Range(0, seats).Select(s => named.Contains(s) ? 1 : named.Length + 1)], end < 0 ? null : end, null);
        }

        (int[] ranks, string? tie) = Rank(machine, totals);
        return new Result(totals, Winners(plan, totals, ranks), [.. ranks], end < 0 ? null : end, tie);
    }

    /// <summary>The points of a seat.</summary>
    public static int Total(Machine machine, int seat) => machine.Plan.Score.Sum(c => Ask(machine, c.Points, seat));

    /// <summary>The points of a seat by one clause.</summary>
    public static int Points(Machine machine, ScorePlan clause, int seat) => Ask(machine, clause.Points, seat);

    private static int Ask(Machine machine, Node node, int seat)
    {
        Run run = machine.Run;
        (run.State, run.Me) = (machine.State, seat);
        int mark = run.Mark;
        int value = node.Value(run);
        run.Release(mark);
        return value == Node.Nothing ? 0 : value;
    }

    private static ImmutableArray<int> Winners(CoursePlan plan, ImmutableArray<int> totals, int[] ranks) => plan.Sheet.Aim.Kind switch
    {
        AimKind.AtLeast => [.. Enumerable.Range(0, totals.Length).Where(s => totals[s] >= plan.Sheet.Aim.Target)],
        AimKind.MoreThan => [.. Enumerable.Range(0, totals.Length).Where(s => totals[s] > plan.Sheet.Aim.Target)],
        _ when plan.Score.IsEmpty => [],
        _ => [.. Enumerable.Range(0, totals.Length).Where(s => ranks[s] == 1)],
    };

    // Each seat's sort keys: the total first, then the tie-breaks; the better the greater. Seats of a team share the sum of its totals.
    private static (int[] Ranks, string? TieBreak) Rank(Machine machine, ImmutableArray<int> totals)
    {
        CoursePlan plan = machine.Plan;
        int sign = plan.Sheet.Aim.Kind == AimKind.LowestTotal ? -1 : 1;
        int[][] keys = [.. totals.Select((_, s) => Keys(machine, s, sign * TeamTotal(plan, totals, s)))];
        int[] ranks = [.. keys.Select(k => 1 + keys.Count(other => Compare(other, k) > 0))];
        int[][] best = [.. keys.Where(k => k[0] == keys.Max(o => o[0])).Distinct(SameKeys.Instance)];
        string? tie = best.Length < 2 ? null
            : Enumerable.Range(1, keys[0].Length - 1).Where(i => best.Select(k => k[i]).Distinct().Count() > 1).Select(i => plan.Ties[i - 1].Tie.Words).FirstOrDefault();
        return (ranks, tie);
    }

    private static int TeamTotal(CoursePlan plan, ImmutableArray<int> totals, int seat) =>
        plan.Sheet.Teams.FirstOrDefault(t => t.Seats.Contains(seat)) is { } team ? team.Seats.Where(s => s < totals.Length).Sum(s => totals[s]) : totals[seat];

    private static int[] Keys(Machine machine, int seat, int total) =>
        [total, .. machine.Plan.Ties.TakeWhile(t => t.Number is not null).Select(t => (t.Tie.HigherWins ? 1 : -1) * Ask(machine, t.Number!, seat))];

    private static int Compare(int[] one, int[] other) => one.AsSpan().SequenceCompareTo(other);

    private sealed class SameKeys : IEqualityComparer<int[]>
    {
        public static SameKeys Instance { get; } = new();

        public bool Equals(int[]? one, int[]? other) => one!.AsSpan().SequenceEqual(other);

        public int GetHashCode(int[] keys) => keys[0];
    }
}
