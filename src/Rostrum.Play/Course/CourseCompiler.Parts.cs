using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>Actions with their choices and laws, powers, ends, scores, marks.</content>
internal sealed partial class CourseCompiler
{
    private void NameActions()
    {
        _frames = [.. _sheet.Actions.Select(_ => _formulas.Frame())];
        var plans = ImmutableArray.CreateBuilder<ActionPlan>();
        foreach ((ActionFacts action, FrameMap frame) in _sheet.Actions.Zip(_frames))
        {
            foreach (ActionChoice choice in action.Choices)
            {
                frame.Letter(choice.Slot, choice.Sort);
            }

            plans.Add(new ActionPlan(action, []));
        }

        _actions = plans.ToImmutable();
        _actions = [.. _actions.Zip(_frames).Select(p => p.First with { Choices = [.. p.First.Facts.Choices.Select(c => Ready(c, p.Second))] })];
    }

    // The letters of a choice's own formula may use the frame position that is the choice's afterwards.
    private ChoicePlan Ready(ActionChoice choice, FrameMap frame)
    {
        Node domain = choice.Amount == ChoiceAmount.Given ? Compile(choice.From, frame.Inner()) : _formulas.Many(choice.From, frame.Inner());
        return new ChoicePlan(choice, frame.Of(choice.Slot).At, domain, choice.Sort.IsMany);
    }

    private void BindLaws(ActionPlan action, ImmutableArray<PowerPlan> powers)
    {
        FrameMap frame = _frames[action.Facts.Action.Index];
        action.Laws = [.. _sheet.Laws.Where(l => l.Binds.Contains(action.Facts.Action)).Select(l => Ready(l, action, frame))];
        action.Powers = [.. powers.Where(p => (p.Power.For is null || ReferenceEquals(p.Power.For, action.Facts.Action)) && (p.Power.Lifts.IsEmpty || action.Laws.Any(l => p.Power.Lifts.Contains(l.Law.Name))))];
        action.MayOverfill = !_layout.Limited.IsEmpty && !action.Facts.Choices.IsEmpty && MovesThings(action.Facts, []);
    }

    // Whether steps, or those that they call, may lay something anywhere.
    private bool MovesThings(ActionFacts action, HashSet<ActionName> asked) => asked.Add(action.Action) && action.Steps.Any(s => MovesThings(s, asked));

    private bool MovesThings(Step step, HashSet<ActionName> asked) =>
        step.Kind is StepKind.Move or StepKind.Deal or StepKind.Do or StepKind.Swap or StepKind.Push
        || (step.Action is { } called && MovesThings(_sheet.Actions[called.Index], asked))
        || step.Inner.Concat(step.Otherwise).Any(s => MovesThings(s, asked));

    private LawPlan Ready(Law law, ActionPlan action, FrameMap frame)
    {
        LawBody body = law.Bodies[law.Choice is null ? 0 : _readings(law.Choice)][law.Binds.IndexOf(action.Facts.Action)];
        HashSet<int> asked = [];
        FrameMap own = frame.Inner(asked);
        var before = ImmutableArray.CreateBuilder<(Node, bool)>();
        var after = ImmutableArray.CreateBuilder<(Node, bool)>();
        foreach (LawDemand demand in body.Demands)
        {
            bool isAfter = demand.Kind is DemandKind.MustLeave or DemandKind.MustNotLeave;
            (isAfter ? after : before).Add((Compile(demand.Truth, own), demand.Kind is DemandKind.Needs or DemandKind.MustLeave));
        }

        Node? unless = body.Unless is null ? null : Compile(body.Unless, own);
        int choices = action.Choices.Length;
        while (choices > 0 && !asked.Contains(action.Choices[choices - 1].Letter))
        {
            choices--;
        }

        return new LawPlan(law, before.ToImmutable(), after.ToImmutable(), unless) { Choices = choices };
    }

    private PowerPlan ReadyPower(Power power)
    {
        int used = -1;
        if (power.LimitTimes is not null)
        {
            used = _numbers;
            _numbers += _layout.Seats;
        }

        FrameMap frame = power.For is null ? _formulas.Frame() : _frames[power.For.Index].Inner();
        return new PowerPlan(power, power.If is null ? null : Compile(power.If, frame), used);
    }

    // What counts the uses of powers that come back with a turn or a round.
    private IEnumerable<MarkReset> Uses(LimitPer per) => _powers.Where(p => p.Used >= 0 && p.Power.LimitPer == per).Select(p => new MarkReset(p.Used, _layout.Seats, 0));

    private EndPlan ReadyEnd(EndRule rule)
    {
        FrameMap frame = _formulas.Frame();
        return new EndPlan(rule, rule.If is null ? null : Compile(rule.If, frame), rule.WinnerTerm is null ? null : Compile(rule.WinnerTerm, frame));
    }

    private ScorePlan ReadyScore(ScoreClause clause)
    {
        ScoreBody body = clause.Bodies[clause.Choice is null ? 0 : _readings(clause.Choice)];
        FrameMap frame = _formulas.Frame();
        Node points = _formulas.Points(body, frame);
        return new ScorePlan(clause, points);
    }

    // Marks begin as the sheet says; things that are not chosen yet are no thing; memory of single values begins as nothing.
    private ImmutableArray<int> Blank()
    {
        int[] blank = new int[_numbers];
        foreach (Mark mark in _sheet.Marks)
        {
            Array.Fill(blank, StartOf(mark), _markBase + _layout.MarkStart[mark.Index], _layout.MarkSize(mark));
        }

        foreach (int thing in _thingNumbers)
        {
            blank[thing] = TableState.None;
        }

        foreach (int slot in _startAsNothing)
        {
            blank[slot] = Node.Nothing;
        }

        (blank[Slots.TurnsLeft], blank[Slots.End], blank[Slots.Winners]) = (-1, -1, -1);
        return [.. blank];
    }

    private MarkFacts? FactsOf(Mark mark) => _sheet.MarkFacts.FirstOrDefault(f => ReferenceEquals(f.Mark, mark));

    private int StartOf(Mark mark)
    {
        if (FactsOf(mark)?.Starts is { } starts)
        {
            Node first = Compile(starts, _formulas.Frame());
            return first.Value(new Run(_letters.Count) { State = new TableState(_layout, _numbers, _sets) });
        }

        return mark.Sort.Kind switch
        {
            SortKind.Number => (int)(mark.Lowest ?? 0),
            SortKind.Truth => 0,
            _ => Node.Nothing,
        };
    }

    private ImmutableArray<MarkReset> Resets(string block) =>
        [.. _sheet.Marks.Where(m => FactsOf(m)?.Lasts == block).Select(m => new MarkReset(_markBase + _layout.MarkStart[m.Index], _layout.MarkSize(m), StartOf(m)))];
}

/// <summary>A mark forgets at the end of a block.</summary>
internal sealed class ResetMark(MarkReset reset) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        Forgetting.Reset(machine, [reset]);
        return here + 1;
    }
}

/// <summary>The first turn is due: the start player's.</summary>
internal sealed class FirstTurn : Instruction
{
    public FirstTurn()
        : base(null)
    {
    }

    public override int Do(Machine machine, int here)
    {
        int[] numbers = machine.State.Numbers;
        Forgetting.SetUp(machine);
        numbers[Slots.Turn] = numbers[Slots.Start];
        numbers[Slots.Round] = machine.Plan.Counts.Round ? 1 : 0;
        return here + 1;
    }
}
