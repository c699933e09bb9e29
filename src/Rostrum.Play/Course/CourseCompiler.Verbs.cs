using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>Steps that stand alone.</content>
internal sealed partial class CourseCompiler
{
    private void EmitVerb(Step step, FrameMap frame)
    {
        FrameMap own = frame.Inner();
        switch (step.Kind)
        {
            case StepKind.Move:
                Add(Move(step, own));
                break;
            case StepKind.Deal:
                EmitDeal(step, own);
                break;
            case StepKind.Change:
                Add(new ChangeThings(Compile(step.Terms[0], own), step.Terms[0].Sort.IsMany, Change(step.Terms[1], own), At(step)));
                break;
            case StepKind.Shuffle:
                Add(new Shuffle(Compile(step.Terms[0], own), At(step)));
                break;
            case StepKind.Roll:
                Add(new RollDice(Compile(step.Terms[0], own), step.Terms[0].Sort.IsMany, At(step)));
                break;
            case StepKind.Swap:
                EmitSwap(step, own);
                break;
            case StepKind.Push:
                EmitPush(step, own);
                break;
            case StepKind.Set or StepKind.Add or StepKind.Take:
                Add(ChangeMark(step, own));
                break;
            case StepKind.Do:
                EmitDo(step, own);
                break;
            case StepKind.Let:
                EmitLet(step, frame);
                break;
            case StepKind.Again:
                Add(new TurnAgain(At(step)));
                break;
            case StepKind.EndTurn:
                Add(new GoTo(_endOfTurn ?? _over));
                break;
            case StepKind.EndGame:
                Add(new EndGame(EndNamed(step), _over, At(step)));
                break;
            case StepKind.Show:
                Add(new ShowSomething(step.At));
                break;
            case StepKind.Nothing:
                break;
            default:
                throw new InvalidOperationException($"A step of an unknown form: {step.Kind}.");
        }
    }

    // Terms: amount (or nothing for all), what, from (or nothing), to, and face up where said.
    private Instruction Move(Step step, FrameMap frame)
    {
        if (step.Terms[3].Sort.Kind == SortKind.Fit)
        {
            return LayPiece(step, frame);
        }

        Target to = TargetOf(step.Terms[3], frame);
        bool? faceUp = FaceOf(step, 4);
        if (step.Terms[1] is Term.LookOf look)
        {
            return new MoveThings(ThingsFrom(step, look, frame), Amount(step.Terms[0], frame), to, faceUp, At(step));
        }

        Node what = Compile(step.Terms[1], frame);
        return step.Terms[1].Sort.IsMany ? new MoveThings(what, Amount(step.Terms[0], frame), to, faceUp, At(step)) : new MoveThing(what, to, faceUp, At(step));
    }

    private Node ThingsFrom(Step step, Term.LookOf look, FrameMap frame) =>
        Compile(new Term.Within(look.Look, step.Terms[2], Sort.SetOf(Sort.Thing), look.Origin), frame);

    private LayPiece LayPiece(Step step, FrameMap frame)
    {
        bool isLook = step.Terms[1] is Term.LookOf;
        Node pieces = step.Terms[1] is Term.LookOf look ? ThingsFrom(step, look, frame) : Compile(step.Terms[1], frame);
        return new LayPiece(pieces, isLook || step.Terms[1].Sort.IsMany, Compile(step.Terms[3], frame), _formulas.FitsKnown, At(step));
    }

    private Node? Amount(Term term, FrameMap frame) => term is Term.Nothing ? null : _formulas.Number(term, frame);

    private Target TargetOf(Term term, FrameMap frame) => new(Compile(term, frame), term.Sort.Kind == SortKind.Place);

    private static bool? FaceOf(Step step, int at) => step.Terms.Length > at && step.Terms[at] is Term.Truth face ? face.IsYes : null;

    // Terms: amount, from, to, and face up where said.
    private void EmitDeal(Step step, FrameMap frame)
    {
        (int left, int from) = (Number(), Number());
        var done = new Label();
        Add(new SetLocal(_formulas.Number(step.Terms[0], frame), left, false, At(step)));
        Add(new SetLocal(new FirstSpot(Compile(step.Terms[1], frame), _layout), from, false, At(step)));
        ActionName? whenShort = step.Terms[1] is Term.PlaceOf { Place: var place } ? _layout.Holders.First(h => ReferenceEquals(h.Place, place)).Facts?.WhenShort : null;
        Label? isShort = whenShort is null ? null : new Label();
        var loop = new Label();
        Mark(loop);
        Add(new DealOne(left, from, TargetOf(step.Terms[2], frame), FaceOf(step, 3), isShort, done, At(step)));
        Add(new GoTo(loop));
        if (isShort is not null)
        {
            Mark(isShort);
            EmitWhenShort(whenShort!, from, loop);
        }

        Mark(done);
        ForgetAll([left, from], []);
    }

    // What refills the place is tried once; where it brings nothing, dealing ends.
    private void EmitWhenShort(ActionName whenShort, int from, Label loop)
    {
        (CallAlternative call, FrameMap own) = MakeCall(_actions[whenShort.Index]);
        EmitAskedCall(call, own, whenShort.DeclaredAt);
        Add(new UnlessEmpty(from, loop));
    }

    private Action<Machine, int> Change(Term becomes, FrameMap frame)
    {
        switch (becomes)
        {
            case Term.Truth face:
                return (machine, thing) => Moves.Turn(machine.State, thing, face.IsYes);
            case Term.Nothing:
                return (machine, thing) => Moves.Turn(machine.State, thing, null);
        }

        Node value = Compile(becomes, frame);
        return becomes.Sort.Kind switch
        {
            SortKind.Player => (machine, thing) => SetState(machine, thing, a => a.HoldsPlayer, (_, v) => v, value),
            SortKind.Number => (machine, thing) => SetState(machine, thing, a => _layout.Values.IsNumeric(a.Attribute), (a, v) => a.Values.ToList().FindIndex(x => x.Number == v), value),
            _ => (machine, thing) => SetState(machine, thing, a => IsOf(a, machine.Number(value)), (a, v) => v - _layout.Values.First(a.Attribute), value),
        };
    }

    private bool IsOf(AttributeFacts attribute, int value) =>
        !attribute.HoldsPlayer && value >= _layout.Values.First(attribute.Attribute) && value < _layout.Values.First(attribute.Attribute) + attribute.Values.Length;

    private static void SetState(Machine machine, int thing, Func<AttributeFacts, bool> which, Func<AttributeFacts, int, int> index, Node value)
    {
        ThingClass of = machine.Plan.Layout.Class(thing);
        int becomes = machine.Number(value);
        for (int i = 0; i < of.States.Length; i++)
        {
            if (of.States[i].Attribute >= 0 && which(of.Kind.Attributes[of.States[i].Attribute]))
            {
                machine.State.SetState(thing, i, becomes == Node.Nothing ? TableState.None : index(of.Kind.Attributes[of.States[i].Attribute], becomes));
                return;
            }
        }
    }

    private void EmitSwap(Step step, FrameMap frame)
    {
        (SortKind one, SortKind other) = (step.Terms[0].Sort.Kind, step.Terms[1].Sort.Kind);
        if (one == SortKind.Player && other == SortKind.Player)
        {
            Add(ExchangePlayers(step, frame));
            return;
        }

        if (one == SortKind.Player || other == SortKind.Player || (one == SortKind.Thing) != (other == SortKind.Thing))
        {
            throw new NotPlayableException($"'{step.Sentence}' does not say which two things, places or players change places.", step.At);
        }

        Add(new Exchange(Spot(step.Terms[0], frame), Spot(step.Terms[1], frame), one == SortKind.Thing, At(step)));
    }

    private ExchangePlayers ExchangePlayers(Step step, FrameMap frame) => _sheet.Boards.FirstOrDefault(b => !b.Regions.IsEmpty) is { } board
        ? throw new NotPlayableException($"Players cannot change sides here, for parts of '{board.Place.Name}' belong to their seats.", step.At)
        : new ExchangePlayers(Compile(step.Terms[0], frame), Compile(step.Terms[1], frame), At(step));

    private Node Spot(Term term, FrameMap frame) => term.Sort.Kind == SortKind.Place ? new FirstSpot(Compile(term, frame), _layout) : Compile(term, frame);

    // Terms: line, direction, place (or nothing for round).
    private void EmitPush(Step step, FrameMap frame)
    {
        Node line = _formulas.SpacesIn(step.Terms[0], frame);
        Target? off = step.Terms[2] is Term.Nothing ? null : TargetOf(step.Terms[2], frame);
        Add(new PushLine(line, Compile(step.Terms[1], frame), _formulas.StepFrom, off, At(step)));
    }

    private Instruction ChangeMark(Step step, FrameMap frame)
    {
        int sign = step.Kind switch { StepKind.Add => 1, StepKind.Take => -1, _ => 0 };
        if (step.Terms[0] is Term.StartPlayer)
        {
            return new ChangeMark(Slots.Start, null, Compile(step.Terms[1], frame), sign, (null, null), At(step));
        }

        var of = (Term.MarkOf)step.Terms[0];
        Node value = of.Mark.Sort.Kind == SortKind.Number ? _formulas.Number(step.Terms[1], frame) : Compile(step.Terms[1], frame);
        int first = _markBase + _layout.MarkStart[of.Mark.Index];
        (int?, int?) limits = of.Mark.Sort.Kind == SortKind.Number ? ((int?)of.Mark.Lowest, (int?)of.Mark.Highest) : (null, null);
        return new ChangeMark(first, OwnerOf(of, step, frame), value, sign, limits, At(step));
    }

    private Func<Machine, int>? OwnerOf(Term.MarkOf of, Step step, FrameMap frame)
    {
        if (of.Owner is null || (!of.Mark.EachPlayer && of.Mark.EachSpaceOf is null))
        {
            return null;
        }

        Node owner = Compile(of.Owner, frame);
        int firstSpot = of.Mark.EachSpaceOf is { } board ? _layout.HolderOf(board, 0).First : 0;
        return machine => machine.Number(owner) is var number && number != Node.Nothing
            ? number - firstSpot
            : throw new NotPlayableException($"Nobody is named here whose '{of.Mark.Name}' it is.", step.At);
    }

    // The name stays for the steps that follow in the same block.
    private void EmitLet(Step step, FrameMap frame)
    {
        Term value = step.Terms[0];
        bool isMany = value.Sort.IsMany;
        bool isThing = (value.Sort.Element ?? value.Sort).Kind == SortKind.Thing;
        int slot = isMany ? Set(isThing) : Number(isThing);
        Add(new SetLocal(Compile(value, frame.Inner()), slot, isMany, At(step)));
        frame.Keep(step.Slot, slot, isMany);
    }

    private int EndNamed(Step step)
    {
        string name = ((Term.Text)step.Terms[0]).Words;
        int index = _sheet.Ends.ToList().FindIndex(e => string.Equals(e.Name, name, StringComparison.OrdinalIgnoreCase));
        return index >= 0 ? index : throw new NotPlayableException($"No end is called '{name}'.", step.At);
    }
}

/// <summary>The first spot of a place, or a space or slot as it is.</summary>
internal sealed class FirstSpot(Node holder, TableLayout layout) : Node
{
    public override int Value(Run run) => holder.Value(run) is var number && number == Nothing ? Nothing : layout.Holders[number].First;
}

/// <summary>Goes on elsewhere unless a spot is empty.</summary>
internal sealed class UnlessEmpty(int slot, Label target) : Instruction(null)
{
    public override int Do(Machine machine, int here) => machine.State.Count(machine.State.Numbers[slot]) > 0 ? target.At : here + 1;
}
