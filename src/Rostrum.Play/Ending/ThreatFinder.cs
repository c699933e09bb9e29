using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Ending;

/// <summary>Finds for each seat whether it can end the game with its next turn, and how many turns everybody has after that.</summary>
internal sealed class ThreatFinder(CoursePlan plan)
{
    // After an end the game is over within two rounds; turns that are given again come on top.
    private const int MostTurnsLeft = 100;

    /// <summary>An answer for each seat, in order.</summary>
    /// <exception cref="NotPlayableException">The position leaves something out, or the sheet does.</exception>
    public Threats Of(Position position)
    {
        var assumed = new List<string>();
        TableState table = Laid(position, assumed);
        string? over = Over(table);
        return new Threats(over, over is null ? [.. Enumerable.Range(0, plan.Layout.Seats).Select(s => Of(table, s))] : [], [.. assumed.Distinct()]);
    }

    // An end that holds whoever had the last turn.
    private string? Over(TableState table)
    {
        var machine = new Machine(plan) { State = table.Copy() };
        foreach (EndPlan end in plan.Ends.Where(e => e is { If: not null, Rule: { Moment: EndMoment.AfterEachTurn, Follows: EndFollow.AtOnce } }))
        {
            for (int seat = 0; seat < plan.Layout.Seats; seat++)
            {
                (machine.State.Numbers[Slots.Turn], machine.State.Numbers[Slots.Me]) = (seat, seat);
                if (machine.Holds(end.If!))
                {
                    return end.Rule.Name;
                }
            }
        }

        return null;
    }

    // Between two turns. What the position does not tell is as at the beginning: nothing was done before, the first seat started.
    private TableState Laid(Position position, List<string> assumed)
    {
        if (plan.TurnStart is not { } start)
        {
            throw new NotPlayableException("The course of this game has no one place where turns begin, so no turn can be played from a position.", plan.Sheet.Tree.Find("course")?.Key.Span);
        }

        var state = new TableState(plan.Layout, plan.Numbers, plan.Sets);
        plan.Blank.CopyTo(state.Numbers);
        StateReader.Read(plan.Layout, position, state, plan.MarkBase, assumed: assumed);
        RecordReader.Read(plan, position, state);
        state.Numbers[Slots.Step] = start;
        state.Numbers[Slots.Round] = plan.Counts.Round ? 1 : 0;
        return state;
    }

    private SeatThreat Of(TableState table, int seat)
    {
        TableState state = table.Copy();
        (state.Numbers[Slots.Turn], state.Numbers[Slots.Me]) = (seat, seat);
        Finding found = new TurnSearch(plan, seat).Of(state);
        int end = found.State?.Numbers[Slots.End] ?? -1;
        return new SeatThreat(
            seat, found.CanEnd, [.. Phrases.All(found.Line)], end < 0 ? null : plan.Sheet.Ends[end].Name, found.State is null ? [] : TurnsLeft(found.State, found.IsTurnOver))
        {
            ExtraTurns = found.ExtraTurns,
        };
    }

    // Plays on by first options; how many turns are left does not hang on what is decided in them.
    private ImmutableArray<int> TurnsLeft(TableState state, bool isTurnOver)
    {
        int[] turns = new int[plan.Layout.Seats];
        var machine = new Machine(plan) { State = state.Copy(), StopsAfterTurns = true };
        int counted = 0;
        bool isOver = machine.State.Numbers[Slots.Over] == 1;
        if (isTurnOver)
        {
            turns[machine.State.Numbers[Slots.Turn]]++;
        }

        while (!isOver && counted < MostTurnsLeft)
        {
            switch (machine.Advance())
            {
                case Moment.Decision decision:
                    machine.Choose(decision.Options[0]);
                    break;
                case Moment.Chance chance:
                    machine.Choose(chance.Event, 0);
                    break;
                case Moment.TurnOver:
                    turns[machine.State.Numbers[Slots.Turn]]++;
                    counted++;
                    break;
                default:
                    isOver = true;
                    break;
            }
        }

        return [.. turns];
    }
}
