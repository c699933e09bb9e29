using System.Numerics;
using Rostrum.Play.Formulas;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>What an end does when it comes: how many turns are left, who wins, who is out.</summary>
internal static class Ends
{
    /// <summary>Asks every end that is due, in the order of the sheet. An end that comes later may make the game shorter, never longer.</summary>
    public static void Ask(Machine machine, Func<EndPlan, bool> due)
    {
        for (int i = 0; i < machine.Plan.Ends.Length && machine.State.Numbers[Slots.TurnsLeft] != 0; i++)
        {
            EndPlan end = machine.Plan.Ends[i];
            if (end.If is { } condition && due(end) && !IsOut(machine, end) && machine.Holds(condition))
            {
                Come(machine, i);
            }
        }
    }

    /// <summary>An end comes.</summary>
    public static void Come(Machine machine, int index)
    {
        EndRule rule = machine.Plan.Ends[index].Rule;
        int[] numbers = machine.State.Numbers;
        if (rule.Follows == EndFollow.Out)
        {
            numbers[Slots.Out] |= 1 << numbers[Slots.Me];
            return;
        }

        int left = TurnsLeft(machine, rule.Follows);
        if (numbers[Slots.TurnsLeft] < 0 || left < numbers[Slots.TurnsLeft])
        {
            numbers[Slots.TurnsLeft] = left;
            numbers[Slots.End] = index;
            numbers[Slots.Winners] = Winners(machine, machine.Plan.Ends[index]);
        }
    }

    private static bool IsOut(Machine machine, EndPlan end) =>
        end.Rule.Follows == EndFollow.Out && (machine.State.Numbers[Slots.Out] >> machine.State.Numbers[Slots.Me] & 1) == 1;

    private static int TurnsLeft(Machine machine, EndFollow follows)
    {
        int[] numbers = machine.State.Numbers;
        int seats = machine.Plan.Layout.Seats;
        int order = (numbers[Slots.Turn] - numbers[Slots.Start] + seats) % seats;
        int playing = seats - BitOperations.PopCount((uint)numbers[Slots.Out]);
        int restOfRound = Enumerable.Range(order + 1, seats - 1 - order).Count(o => (numbers[Slots.Out] >> ((numbers[Slots.Start] + o) % seats) & 1) == 0);
        return follows switch
        {
            EndFollow.FinishTheRound => restOfRound,
            EndFollow.OneMoreRound => restOfRound + playing,
            EndFollow.EveryOtherPlayerOnceMore => playing - 1,
            _ => 0,
        };
    }

    private static int Winners(Machine machine, EndPlan end)
    {
        int me = machine.State.Numbers[Slots.Me];
        int everyone = (1 << machine.Plan.Layout.Seats) - 1;
        return end.Rule.Wins switch
        {
            EndWinner.Me => 1 << me,
            EndWinner.Opponent => everyone & ~(1 << me),
            EndWinner.Everyone => everyone,
            EndWinner.Nobody => 0,
            EndWinner.Given => Given(machine, end),
            _ => -1,
        };
    }

    private static int Given(Machine machine, EndPlan end)
    {
        if (end.Rule.WinnerTerm!.Sort.IsMany)
        {
            return machine.Elements(end.Winner!).Aggregate(0, (mask, seat) => mask | 1 << seat);
        }

        int seat = machine.Number(end.Winner!);
        return seat == Node.Nothing ? 0 : 1 << seat;
    }
}
