using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>What only the course can answer: what was done and chosen before, what can be done, who starts, which turn it is.</content>
internal sealed partial class CourseCompiler
{
    private readonly List<(CanDoNode Node, ActionName Action, ImmutableArray<Node> Given)> _asked = [];

    // Steps that are only ever tried, to say what could be done.
    private void EmitAsked()
    {
        for (int i = 0; i < _asked.Count; i++)
        {
            (CanDoNode node, ActionName action, ImmutableArray<Node> given) = _asked[i];
            ActionPlan plan = _actions[action.Index];
            (CallAlternative call, FrameMap frame) = MakeCall(plan, [.. plan.Choices.Select((_, at) => at < given.Length ? given[at] : null)]);
            node.Call = call;
            EmitCall(call, frame);
            Add(new GoTo(_over));
        }
    }

    private Node? OfCourse(Term term, FrameMap frame)
    {
        switch (term)
        {
            case Term.Done done:
                return new DoneNode(MemoryOf(done.Action).Done(done.When, done.By is not null), done.By is null ? null : Compile(done.By, frame));
            case Term.LastChoice last:
                MemorySlot chosen = MemoryOf(last.Action).Chosen(last.Choice, last.Mine);
                return last.Sort.IsMany ? new LastSetNode(chosen, last.Mine) : new LastNode(chosen, last.Mine);
            case Term.CanDo can when SheetIndex.Of(_sheet).AsksItself(can.Action):
                throw new NotPlayableException($"Whether '{can.Action.Phrase.InWords}' can be done would have to be known in order to say whether it can be done.", can.Origin.At);
            case Term.CanDo can:
                var asked = new CanDoNode(Compile(can.Player, frame));
                _asked.Add((asked, can.Action, [.. can.Given.Select(g => Compile(g, frame))]));
                return asked;
            case Term.StartPlayer:
                return new StateNumber(Slots.Start);
            case Term.Counter counter:
                (_asksTurn, _asksRound) = (_asksTurn || counter.Kind == CounterKind.Turn, _asksRound || counter.Kind == CounterKind.Round);
                return new StateNumber(counter.Kind == CounterKind.Turn ? Slots.TurnNumber : Slots.Round);
            default:
                return null;
        }
    }

    private ActionMemory MemoryOf(ActionName action) => _actions[action.Index].Memory;

    // Behind everything else: what formulas ask of the past is known once all of them are compiled.
    private void LayOutMemory()
    {
        foreach (ActionMemory memory in _actions.Select(a => a.Memory))
        {
            foreach (MemorySlot done in memory.ByAnybody.Values.Concat(memory.BySeats.Values))
            {
                done.At = Number();
            }

            LayOut(memory, memory.Last, 1);
            LayOut(memory, memory.LastOfSeats, _layout.Seats);
        }
    }

    private void LayOut(ActionMemory memory, IEnumerable<KeyValuePair<int, MemorySlot>> chosen, int count)
    {
        foreach ((int choice, MemorySlot slot) in chosen)
        {
            Sort sort = memory.Facts.Choices[choice].Sort;
            bool isThing = (sort.Element ?? sort).Kind == SortKind.Thing;
            slot.At = sort.IsMany ? _sets : _numbers;
            for (int i = 0; i < count; i++)
            {
                int at = sort.IsMany ? Set(isThing) : Number(isThing);
                if (!sort.IsMany)
                {
                    _startAsNothing.Add(at);
                }
            }
        }
    }
}

/// <summary>Whether an action was done, by anybody or by one player.</summary>
internal sealed class DoneNode(MemorySlot slot, Node? by) : Node
{
    public override int Value(Run run)
    {
        int seats = slot.At < 0 ? 0 : run.State.Numbers[slot.At];
        if (by is null)
        {
            return seats != 0 ? 1 : 0;
        }

        int seat = by.Value(run);
        return seat != Nothing && (seats >> seat & 1) == 1 ? 1 : 0;
    }
}

/// <summary>What was chosen last, by anybody or by the player who is asked.</summary>
internal sealed class LastNode(MemorySlot slot, bool mine) : Node
{
    public override int Value(Run run) => slot.At < 0 ? Nothing : run.State.Numbers[mine ? slot.At + run.Me : slot.At];
}

/// <summary>The set that was chosen last.</summary>
internal sealed class LastSetNode(MemorySlot slot, bool mine) : ManyNode
{
    public override void Fill(Run run, Elements into) => into.AddRange(slot.At < 0 ? [] : run.State.Sets[mine ? slot.At + run.Me : slot.At] ?? []);
}

/// <summary>Whether a player has a legal option of an action.</summary>
internal sealed class CanDoNode(Node player) : Node
{
    /// <summary>The call whose options are looked for; set once every action is known.</summary>
    public CallAlternative? Call { get; set; }

    public override int Value(Run run)
    {
        int seat = player.Value(run);
        if (seat == Nothing)
        {
            return 0;
        }

        Machine asker = run.Ask();
        TableState state = run.State;
        int me = run.Me;
        int acting = state.Numbers[Slots.Me];
        state.Numbers[Slots.Me] = seat;
        asker.State = state;
        bool can = asker.Finder.HasOption(Call!);
        state.Numbers[Slots.Me] = acting;
        (run.State, run.Me) = (state, me);
        run.Answered(asker);
        return can ? 1 : 0;
    }
}
