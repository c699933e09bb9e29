using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>Heads of steps: order, choice, repetition, other players.</content>
internal sealed partial class CourseCompiler
{
    private void Emit(ImmutableArray<Step> steps, FrameMap frame)
    {
        foreach (Step step in steps)
        {
            Emit(step, frame);
        }
    }

    private void Emit(Step step, FrameMap frame)
    {
        switch (step.Kind)
        {
            case StepKind.Call:
                EmitCallStep(step, frame);
                break;
            case StepKind.OneOf or StepKind.FirstPossible or StepKind.Must:
                EmitDecision(step, frame, null);
                break;
            case StepKind.May:
                EmitMay(step, frame);
                break;
            case StepKind.InAnyOrder:
                EmitOrder(step.Inner, step, frame, OrderName());
                break;
            case StepKind.If:
                EmitIf(step, frame);
                break;
            case StepKind.ForEach:
                EmitForEach(step, frame);
                break;
            case StepKind.EachPlayer:
                EmitEachPlayer(step, frame);
                break;
            case StepKind.Does:
                EmitDoes(step, frame);
                break;
            case StepKind.Repeat:
                EmitRepeat(step, frame);
                break;
            case StepKind.TakeTurns:
                EmitTakeTurns(step, frame);
                break;
            case StepKind.AllAtOnce:
                EmitAllAtOnce(step, frame);
                break;
            default:
                EmitVerb(step, frame);
                break;
        }
    }

    private void EmitIf(Step step, FrameMap frame)
    {
        var otherwise = new Label();
        var done = new Label();
        Add(new Unless(Compile(step.Terms[0], frame.Inner()), otherwise, At(step)));
        Emit(step.Inner, frame);
        if (!step.Otherwise.IsEmpty)
        {
            Add(new GoTo(done));
        }

        Mark(otherwise);
        Emit(step.Otherwise, frame);
        Mark(done);
    }

    private void EmitForEach(Step step, FrameMap frame)
    {
        Sort element = step.Terms[0].Sort.Element ?? Sort.Any;
        if (element.IsMany)
        {
            EmitForEachSet(step, element, frame);
            return;
        }

        bool isThing = element.Kind == SortKind.Thing;
        (int list, int index, int letter) = (Set(isThing), Number(), Number(isThing));
        FrameMap own = frame.Inner();
        int runLetter = own.Letter(step.Slot, element);
        Node domain = _formulas.Many(step.Terms[0], frame.Inner());
        Add(new BeginElements(domain, Optional(step.Terms[1], own), Optional(step.Terms[2], own), runLetter, list, index, At(step)));
        FrameMap inner = frame.Inner();
        inner.Keep(step.Slot, letter, false);
        (Label loop, Label done) = (new(), new());
        Mark(loop);
        bool isChosen = step.Terms[3] is Term.Truth { IsYes: true };
        if (isChosen)
        {
            var next = new NextAlternative(list, letter, element.Kind);
            Add(new DecideNext(next, list, done, At(step)));
            Mark(next.Entry);
        }
        else
        {
            Add(new NextElement(list, index, letter, false, done));
        }

        Emit(step.Inner, inner);
        Add(new GoTo(loop));
        Mark(done);
        ForgetAll([index, letter], [list]);
    }

    private void ForgetAll(ReadOnlySpan<int> numbers, ReadOnlySpan<int> sets)
    {
        foreach (int number in numbers)
        {
            Add(new Forget(number, 1, 0, 0));
        }

        foreach (int set in sets)
        {
            Add(new Forget(0, 0, set, 1));
        }
    }

    private Node? Optional(Term term, FrameMap frame) => term is Term.Nothing ? null : Compile(term, frame);

    // Terms: from, where, order, whether the player chooses the order, whether only the others.
    private void EmitEachPlayer(Step step, FrameMap frame)
    {
        (int list, int index, int kept, int letter) = (Set(), Number(), Number(), Number());
        FrameMap own = frame.Inner();
        int runLetter = own.Letter(step.Slot, Sort.Player);
        bool onlyOthers = step.Terms[4] is Term.Truth { IsYes: true };
        Node players = new SeatsFrom(Optional(step.Terms[0], frame.Inner()), onlyOthers);
        Add(new BeginElements(players, Optional(step.Terms[1], own), Optional(step.Terms[2], own), runLetter, list, index, At(step)) { AsMe = true });
        Add(new SetActing(null, kept, Slots.Me, At(step)));
        FrameMap inner = frame.Inner();
        inner.Keep(step.Slot, letter, false);
        (Label loop, Label done) = (new(), new());
        Mark(loop);
        Add(new NextElement(list, index, letter, true, done));
        Emit(step.Inner, inner);
        Add(new GoTo(loop));
        Mark(done);
        Add(new SetActing(null, -1, kept, At(step)));
        ForgetAll([index, kept, letter], [list]);
    }

    private void EmitDoes(Step step, FrameMap frame)
    {
        int kept = Number();
        Add(new SetActing(Compile(step.Terms[0], frame.Inner()), kept, 0, At(step)));
        Emit(step.Inner, frame.Inner());
        Add(new SetActing(null, -1, kept, At(step)));
        ForgetAll([kept], []);
    }

    // Terms: times, until, while.
    private void EmitRepeat(Step step, FrameMap frame)
    {
        (Label loop, Label done) = (new(), new());
        int counter = -1;
        if (Optional(step.Terms[0], frame.Inner()) is { } times)
        {
            counter = Number();
            Add(new SetLocal(times, counter, false, At(step)));
        }

        Mark(loop);
        if (counter >= 0)
        {
            Add(new CountDown(counter, done));
        }
        else if (Optional(step.Terms[2], frame.Inner()) is { } goesOn)
        {
            Add(new Unless(goesOn, done, At(step)));
        }

        Emit(step.Inner, frame.Inner());
        if (Optional(step.Terms[1], frame.Inner()) is { } until)
        {
            Add(new Unless(until, loop, At(step)));
        }
        else
        {
            Add(new GoTo(loop));
        }

        Mark(done);
        ForgetAll(counter >= 0 ? [counter] : [], []);
    }

    // Terms: from, among, until.
    private void EmitTakeTurns(Step step, FrameMap frame)
    {
        int kept = Number();
        FrameMap own = frame.Inner();
        int letter = own.Letter(step.Slot, Sort.Player);
        Node? among = Optional(step.Terms[1], own);
        Node? until = Optional(step.Terms[2], frame.Inner());
        (Label loop, Label next, Label done, Label over) = (new(), new(), new(), new());
        Add(new SetActing(null, kept, Slots.Me, At(step)));
        Add(new FindPlayer(Optional(step.Terms[0], frame.Inner()), true, among, letter, done, At(step)));
        Mark(loop);
        if (_sheet.Blocks.Any(b => b.Name == "course" && b.Steps.Contains(step)))
        {
            _turnStarts.Add(loop);
        }

        Label? outer = _endOfTurn;
        _endOfTurn = over;
        Emit(step.Inner, frame.Inner());
        _endOfTurn = outer;
        Mark(over);
        Add(new CloseTurn(_over));
        if (until is not null)
        {
            Add(new Unless(until, next, At(step)));
            Add(new GoTo(done));
        }

        Mark(next);
        Add(new FindPlayer(null, false, among, letter, done, At(step)));
        Add(new BetweenTurns());
        Add(new GoTo(loop));
        Mark(done);
        Add(new SetActing(null, -1, kept, At(step)));
        ForgetAll([kept], []);
    }
}

/// <summary>The players at the table, clockwise from one of them, without those who are out.</summary>
/// <param name="from">The first; null for the start player, or of the others the next one clockwise.</param>
/// <param name="onlyOthers">True where the one who acts is left out.</param>
internal sealed class SeatsFrom(Node? from, bool onlyOthers) : ManyNode
{
    public override void Fill(Run run, Elements into)
    {
        int seats = run.State.Layout.Seats;
        int first = from?.Value(run) ?? (onlyOthers ? run.Me : run.State.Numbers[Slots.Start]);
        if (first == Nothing)
        {
            return;
        }

        for (int i = 0; i < seats; i++)
        {
            int seat = (first + i) % seats;
            if ((run.State.Numbers[Slots.Out] >> seat & 1) == 0 && !(onlyOthers && seat == run.Me))
            {
                into.Add(seat);
            }
        }
    }
}

/// <summary>Finds whose turn it is where players take turns: the first of those who may.</summary>
/// <param name="from">Who is asked first; null for the start player.</param>
/// <param name="isFirst">True for the first turn; later the next one clockwise is asked first.</param>
/// <param name="among">Who may; null for everybody.</param>
/// <param name="letter">The run's letter by which <paramref name="among"/> names the player.</param>
/// <param name="none">Behind the turns.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class FindPlayer(Node? from, bool isFirst, Node? among, int letter, Label none, Rostrum.Text.SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int[] numbers = machine.State.Numbers;
        int seats = machine.Plan.Layout.Seats;
        int first = !isFirst ? (numbers[Slots.Turn] + 1) % seats : from is null ? numbers[Slots.Start] : machine.Number(from);
        for (int i = 0; i < seats && first != Node.Nothing; i++)
        {
            int seat = (first + i) % seats;
            if ((numbers[Slots.Out] >> seat & 1) == 0 && (among is null || machine.HoldsFor(among, letter, seat)))
            {
                numbers[Slots.Turn] = numbers[Slots.Me] = seat;
                numbers[Slots.TurnNumber] += machine.Plan.Counts.Turn ? 1 : 0;
                return here + 1;
            }
        }

        return none.At;
    }
}

/// <summary>A turn of players who take turns is over: ends are asked and memory moves on.</summary>
internal sealed class CloseTurn(Label over) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        Ends.Ask(machine, e => e.Rule.Moment == EndMoment.AfterEachTurn);
        Forgetting.AfterTurn(machine);
        return machine.State.Numbers[Slots.TurnsLeft] == 0 ? over.At : here + 1;
    }
}
