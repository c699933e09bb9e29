using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Positions;

/// <summary>Puts what a position says was done before into the memory of a state.</summary>
/// <param name="plan">The game.</param>
/// <param name="record">What was done.</param>
/// <param name="state">A state in which everything lies where it belongs, and in which nothing was done.</param>
internal sealed class RecordReader(CoursePlan plan, GameRecord record, TableState state)
{
    /// <summary>Puts the record of a position into a state; nothing where the position has none.</summary>
    /// <exception cref="NotPlayableException">The record leaves out something that the sheet asks.</exception>
    public static void Read(CoursePlan plan, Position position, TableState state)
    {
        if (position.Record is not { } record)
        {
            return;
        }

        var reader = new RecordReader(plan, record.StartedBy(state.Numbers[Slots.Start]), state);
        foreach (ActionPlan action in plan.Actions)
        {
            reader.ReadDone(action.Memory);
            reader.ReadLast(action.Memory);
        }
    }

    private void ReadDone(ActionMemory memory)
    {
        foreach ((DoneWhen when, MemorySlot slot) in memory.ByAnybody)
        {
            state.Numbers[slot.At] = Was(memory, when, null) ? 1 : 0;
        }

        foreach ((DoneWhen when, MemorySlot slot) in memory.BySeats)
        {
            state.Numbers[slot.At] = Enumerable.Range(0, plan.Layout.Seats).Where(s => Was(memory, when, s)).Sum(s => 1 << s);
        }
    }

    private bool Was(ActionMemory memory, DoneWhen when, int? by) => record.Was(memory.Facts.Action, when, by) switch
    {
        Kleene.Unknown => throw new NotPlayableException($"To play on, everything must be given: nobody says whether '{memory.Facts.Action.Name}' was done {DoneTimes.All.Single(t => t.When == when).Words}."),
        var was => was == Kleene.Yes,
    };

    private void ReadLast(ActionMemory memory)
    {
        foreach ((int choice, MemorySlot slot) in memory.Last)
        {
            Keep(memory, choice, slot.At, null);
        }

        foreach ((int choice, MemorySlot slot) in memory.LastOfSeats)
        {
            for (int seat = 0; seat < plan.Layout.Seats; seat++)
            {
                Keep(memory, choice, slot.At + seat, seat);
            }
        }
    }

    private void Keep(ActionMemory memory, int choice, int at, int? by)
    {
        Value value = record.Last(memory.Facts.Action, choice, by);
        if (!memory.Facts.Choices[choice].Sort.IsMany)
        {
            state.Numbers[at] = NumberOf(memory, choice, value);
        }
        else if (value is not Value.Nothing)
        {
            state.Sets[at] = value is Value.Many { IsCertain: true } many ? [.. many.Members.Select(m => NumberOf(memory, choice, m.Value))] : throw NotGiven(memory, choice);
        }
    }

    private int NumberOf(ActionMemory memory, int choice, Value value) => plan.Values.ToNumber(state, value) ?? throw NotGiven(memory, choice);

    private static NotPlayableException NotGiven(ActionMemory memory, int choice) =>
        new($"To play on, everything must be given: nobody says which '{memory.Facts.Choices[choice].Name}' the last '{memory.Facts.Action.Name}' had.");
}
