using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Positions;

/// <summary>The record that a state keeps of its game: what formulas of the sheet ask is known, all else is not given.</summary>
/// <param name="plan">The game.</param>
/// <param name="state">A state that nobody changes any more.</param>
internal sealed class KeptRecord(CoursePlan plan, TableState state) : GameRecord
{
    /// <inheritdoc />
    internal override Kleene Was(ActionName action, DoneWhen when, int? by)
    {
        ActionMemory memory = plan.Actions[action.Index].Memory;
        if (memory.BySeats.TryGetValue(when, out MemorySlot? seats))
        {
            int did = state.Numbers[seats.At];
            return (by is { } seat ? did >> seat & 1 : did) != 0 ? Kleene.Yes : Kleene.No;
        }

        if (memory.ByAnybody.TryGetValue(when, out MemorySlot? any))
        {
            return state.Numbers[any.At] == 0 ? Kleene.No : by is null ? Kleene.Yes : Kleene.Unknown;
        }

        return Kleene.Unknown;
    }

    /// <inheritdoc />
    internal override Value Last(ActionName action, int choice, int? by)
    {
        ActionMemory memory = plan.Actions[action.Index].Memory;
        if (!(by is null ? memory.Last : memory.LastOfSeats).TryGetValue(choice, out MemorySlot? slot))
        {
            return new Value.Unknown(NotGiven);
        }

        Sort sort = memory.Facts.Choices[choice].Sort;
        int at = slot.At + (by ?? 0);
        return sort.IsMany
            ? state.Sets[at] is { } set ? plan.Values.ToMany(state, set, sort) : Value.None
            : plan.Values.ToValue(state, state.Numbers[at], sort);
    }
}
