using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>What only the course can answer: what was done and chosen before, what can be done, who starts, which turn it is.</content>
internal sealed partial class CourseCompiler
{
    private readonly Dictionary<int, ActionMemory> _pendingMemory = [];
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
                return new DoneNode(Remembered(done.Action, null).Done + When(done.When), done.By is null ? null : Compile(done.By, frame));
            case Term.LastChoice last:
                return LastChoice(last);
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

    private static int When(DoneWhen when) => when switch
    {
        DoneWhen.ThisTurn => ActionDone.ThisTurn,
        DoneWhen.TurnBefore => ActionDone.TurnBefore,
        DoneWhen.ThisRound => ActionDone.ThisRound,
        DoneWhen.RoundBefore => ActionDone.RoundBefore,
        _ => ActionDone.Ever,
    };

    private Node LastChoice(Term.LastChoice last)
    {
        ActionMemory memory = Remembered(last.Action, last.Choice);
        int first = memory.Choices[last.Choice];
        return last.Sort.IsMany ? new LastSetNode(first, last.Mine) : new LastNode(first, last.Mine);
    }

    // The memory of an action, with one of its choices where that is asked; it grows as formulas ask for more.
    private ActionMemory Remembered(ActionName action, int? choice)
    {
        ActionMemory known = _actions.IsEmpty || _actions[action.Index].Memory == ActionMemory.None ? _pendingMemory.GetValueOrDefault(action.Index, ActionMemory.None) : _actions[action.Index].Memory;
        ActionFacts facts = _sheet.Actions[action.Index];
        ImmutableArray<int> choices = known.Choices.IsEmpty ? [.. facts.Choices.Select(_ => -1)] : known.Choices;
        int done = choice is null ? _memoryOf[action.Index].Number : known.Done;
        if (choice is { } asked && choices[asked] < 0)
        {
            choices = choices.SetItem(asked, Reserved(facts, asked));
        }

        var memory = new ActionMemory(done, choices);
        _pendingMemory[action.Index] = memory;
        if (!_actions.IsEmpty)
        {
            _actions[action.Index].Memory = memory;
        }

        return memory;
    }

    private int Reserved(ActionFacts facts, int choice)
    {
        bool isMany = facts.Choices[choice].Sort.IsMany;
        int before = facts.Choices.Take(choice).Count(c => c.Sort.IsMany == isMany) * (1 + _layout.Seats);
        (int number, int set) = _memoryOf[facts.Action.Index];
        int first = isMany ? set + before : number + ActionDone.Count + before;
        bool isThing = (facts.Choices[choice].Sort.Element ?? facts.Choices[choice].Sort).Kind == SortKind.Thing;
        for (int i = first; i <= first + _layout.Seats; i++)
        {
            if (!isMany)
            {
                _startAsNothing.Add(i);
            }

            if (isThing)
            {
                (isMany ? _thingSets : _thingNumbers).Add(i);
            }
        }

        return first;
    }
}

/// <summary>Whether an action was done, by anybody or by one player.</summary>
internal sealed class DoneNode(int slot, Node? by) : Node
{
    public override int Value(Run run)
    {
        int seats = run.State.Numbers[slot];
        if (by is null)
        {
            return seats != 0 ? 1 : 0;
        }

        int seat = by.Value(run);
        return seat != Nothing && (seats >> seat & 1) == 1 ? 1 : 0;
    }
}

/// <summary>What was chosen last, by anybody or by the player who is asked.</summary>
internal sealed class LastNode(int first, bool mine) : Node
{
    public override int Value(Run run) => run.State.Numbers[mine ? first + 1 + run.Me : first];
}

/// <summary>The set that was chosen last.</summary>
internal sealed class LastSetNode(int first, bool mine) : ManyNode
{
    public override void Fill(Run run, Elements into) => into.AddRange(run.State.Sets[mine ? first + 1 + run.Me : first] ?? []);
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
