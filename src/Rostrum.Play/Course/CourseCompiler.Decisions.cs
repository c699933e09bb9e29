using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <content>Calls of actions and decisions among several.</content>
internal sealed partial class CourseCompiler
{
    private readonly Stack<ActionName> _inside = [];

    /// <summary>An alternative with the code of its steps, which is laid out behind the decision.</summary>
    private sealed record Leaf(Alternative Alternative, Action Emit);

    private string OrderName() => _inside.TryPeek(out ActionName? action) ? action.Name : "turn";

    private (CallAlternative Call, FrameMap Frame) MakeCall(ActionPlan plan, ImmutableArray<Node?> given)
    {
        FrameMap frame = _formulas.Frame();
        var slots = ImmutableArray.CreateBuilder<FrameMap.Spot>();
        foreach (ActionChoice choice in plan.Facts.Choices)
        {
            bool isThing = (choice.Sort.Element ?? choice.Sort).Kind == SortKind.Thing;
            int at = choice.Sort.IsMany ? Set(isThing) : Number(isThing);
            frame.Keep(choice.Slot, at, choice.Sort.IsMany);
            slots.Add(frame.Of(choice.Slot));
        }

        return (new CallAlternative(plan, given, slots.ToImmutable()), frame);
    }

    private (CallAlternative Call, FrameMap Frame) MakeCall(ActionPlan plan) => MakeCall(plan, [.. plan.Choices.Select(_ => (Node?)null)]);

    private (CallAlternative Call, FrameMap Frame) MakeCall(Step step, FrameMap frame)
    {
        ActionPlan plan = _actions[step.Action!.Index];
        return MakeCall(plan, Given(step, plan, frame.Inner()));
    }

    // A call gives values to the first gaps of the phrase; the choices without a gap follow from the others.
    private ImmutableArray<Node?> Given(Step step, ActionPlan plan, FrameMap frame)
    {
        string[] gaps = [.. plan.Facts.Action.Phrase.Parts.Where(p => p.IsGap).Select(p => p.Words)];
        Node?[] given = new Node?[plan.Choices.Length];
        for (int i = 0; i < step.Terms.Length; i++)
        {
            int choice = i < gaps.Length ? plan.Facts.Choices.IndexOf(plan.Facts.Choices.First(c => c.Name == gaps[i])) : i;
            given[choice] = Compile(step.Terms[i], frame);
        }

        return [.. given];
    }

    private void EmitCallStep(Step step, FrameMap frame)
    {
        if (step.Block is { } block)
        {
            EmitBlock(block);
            return;
        }

        (CallAlternative call, FrameMap own) = MakeCall(step, frame);
        EmitAskedCall(call, own, At(step));
    }

    // A call by itself: a player decides what is open, the laws are asked, and where nothing is legal it does nothing.
    private void EmitAskedCall(CallAlternative call, FrameMap own, SourceSpan? at)
    {
        var done = new Label();
        bool isOpen = call.Action.Choices.Where((c, i) => call.Given[i] is null && c.Facts.Amount != ChoiceAmount.Given).Any();
        bool isBound = call.Action.Choices.Length > 0 || _sheet.Laws.Any(l => l.Binds.Contains(call.Action.Facts.Action));
        if (isOpen)
        {
            Add(new Decide(call, null, _isSecret, done, at));
        }
        else if (isBound)
        {
            Add(new TakeOnly(call, done, at));
        }

        EmitCall(call, own);
        Mark(done);
    }

    // The steps of a call, from where an option leads to where it is done.
    private void EmitCall(CallAlternative call, FrameMap frame)
    {
        ActionName action = call.Action.Facts.Action;
        if (!_open.Add(action))
        {
            throw new NotPlayableException($"'{action.Name}' calls itself: {string.Join(", ", _inside.Reverse().Select(a => a.Name).Append(action.Name))}.", action.DeclaredAt);
        }

        string block = _block;
        _block = action.Name;
        _inside.Push(action);
        EmitPrices(call, frame);
        Mark(call.Entry);
        EmitHooked(action.Name, action, frame, () => Emit(call.Action.Facts.Steps, frame));
        Mark(call.Leave);
        Add(new Remember(call));

        foreach (FrameMap.Spot slot in call.Slots)
        {
            Add(slot.IsMany ? new Forget(0, 0, slot.At, 1) : new Forget(slot.At, 1, 0, 0));
        }

        if (call.Action.Choices.Length > 0)
        {
            EmitAsked(EndMoment.AfterEachAction);
        }

        _block = block;
        _inside.Pop();
        _open.Remove(action);
    }

    private void EmitAsked(EndMoment moment)
    {
        if (_sheet.Ends.Any(e => e.Moment == moment))
        {
            Add(new AskEnds(e => e.Rule.Moment == moment, _over));
        }
    }

    // The price of each power that is used; from each, the next is due, until all are paid.
    private void EmitPrices(CallAlternative call, FrameMap frame)
    {
        if (call.Action.Powers.IsEmpty)
        {
            return;
        }

        call.Unpaid = Number();
        call.Prices = [.. call.Action.Powers.Select(_ => new Label())];
        Mark(call.Pay);
        Add(new PayNext(call));
        for (int i = 0; i < call.Prices.Length; i++)
        {
            Mark(call.Prices[i]);
            Add(new UsePower(call.Action.Powers[i]));
            Emit(call.Action.Powers[i].Power.Price, frame.Inner());
            Add(new GoTo(call.Pay));
        }
    }

    private void EmitDecision(Step step, FrameMap frame, EndingAlternative? declining)
    {
        var leaves = new List<Leaf>();
        Alternative among = step.Kind is StepKind.OneOf or StepKind.FirstPossible or StepKind.If ? Build(step, frame, leaves) : Any(step.Inner, frame, leaves);
        var done = new Label();
        Add(new Decide(among, declining, _isSecret, done, At(step)));
        if (declining is not null)
        {
            Mark(declining.Entry);
            Add(new GoTo(done));
        }

        EmitLeaves(leaves, done);
        Mark(done);
    }

    private void EmitLeaves(List<Leaf> leaves, Label done)
    {
        foreach (Leaf leaf in leaves)
        {
            leaf.Emit();
            Add(new GoTo(done));
        }
    }

    private void EmitMay(Step step, FrameMap frame)
    {
        if (step.Terms[0] is Term.Number { Amount: 1 })
        {
            EmitDecision(step, frame, new EndingAlternative("no", Said(step)));
        }
        else
        {
            EmitOrder([step], step, frame, null);
        }
    }

    private static string Said(Step step) => string.Join(" or ", step.Inner.Select(s => s.Action?.Name ?? s.Sentence.TrimEnd('.')));

    // A free order: each member so often; other actions may join it by the name of the action in which it stands.
    private void EmitOrder(ImmutableArray<Step> members, Step step, FrameMap frame, string? name)
    {
        var leaves = new List<Leaf>();
        var counted = ImmutableArray.CreateBuilder<CountedAlternative>();
        var counters = new List<int>();
        (Label loop, Label done) = (new(), new());
        foreach (Step member in members)
        {
            counted.Add(Counted(member, frame, leaves, counters));
        }

        foreach (ActionPlan joining in _actions.Where(a => name is not null && a.Facts.Joins == name))
        {
            counted.Add(Joining(joining, leaves));
        }

        var ending = new EndingAlternative("done", name ?? Said(step));
        Mark(loop);
        Add(new DecideOrder(counted.ToImmutable(), ending, done, At(step)));
        Mark(ending.Entry);
        Add(new GoTo(done));
        EmitLeaves(leaves, loop);
        Mark(done);
        ForgetAll([.. counters], []);
    }

    // What may be taken any number of times is not counted: how often it was taken makes no difference.
    private CountedAlternative Counted(Step member, FrameMap frame, List<Leaf> leaves, List<int> counters)
    {
        var own = new List<Leaf>();
        bool isMay = member.Kind == StepKind.May;
        Alternative inner = isMay || member.Kind == StepKind.Must ? Any(member.Inner, frame, own) : Build(member, frame, own);
        Node? most = isMay ? Optional(member.Terms[0], frame.Inner()) : new Constant(1);
        if (most is null)
        {
            leaves.AddRange(own);
            return new CountedAlternative(inner, -1, null, false);
        }

        int counter = Number();
        counters.Add(counter);
        leaves.AddRange(own.Select(l => l with { Emit = () => EmitCounted(l.Emit, counter) }));
        return new CountedAlternative(inner, counter, most, !isMay);
    }

    private CountedAlternative Joining(ActionPlan joining, List<Leaf> leaves)
    {
        (CallAlternative call, FrameMap frame) = MakeCall(joining);
        leaves.Add(new Leaf(call, () => EmitCall(call, frame)));
        return new CountedAlternative(call, -1, null, false);
    }

    private void EmitCounted(Action steps, int counter)
    {
        steps();
        Add(new CountTaken(counter));
    }

    private Alternative Any(ImmutableArray<Step> steps, FrameMap frame, List<Leaf> leaves) =>
        steps.Length == 1 ? Build(steps[0], frame, leaves) : new AnyAlternative([.. steps.Select(s => Build(s, frame, leaves))]);

    private Alternative Build(Step step, FrameMap frame, List<Leaf> leaves)
    {
        switch (step.Kind)
        {
            case StepKind.Call when step.Action is not null:
                (CallAlternative call, FrameMap own) = MakeCall(step, frame);
                leaves.Add(new Leaf(call, () => EmitCall(call, own)));
                return call;
            case StepKind.OneOf or StepKind.Must:
                return new AnyAlternative([.. step.Inner.Select(s => Build(s, frame, leaves))]);
            case StepKind.FirstPossible:
                return new FirstAlternative([.. step.Inner.Select(s => Build(s, frame, leaves))]);
            case StepKind.If:
                return new IfAlternative(Compile(step.Terms[0], frame.Inner()), Any(step.Inner, frame, leaves), Any(step.Otherwise, frame, leaves));
            default:
                var alone = new StepAlternative(step);
                leaves.Add(new Leaf(alone, () =>
                {
                    Mark(alone.Entry);
                    Emit(step, frame);
                }));
                return alone;
        }
    }
}
