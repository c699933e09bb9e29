using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>Makes a sheet ready for play: its steps become code, its laws, ends and scores become nodes.</summary>
/// <remarks>
/// No block calls itself, so every call is laid out where it stands, with positions of its own for its choices and names; a state needs no stack. Numbers of a
/// state, in order: those of every course (<see cref="Slots"/>), marks, uses of powers, choices and names of steps, memory of actions.
/// </remarks>
internal sealed partial class CourseCompiler
{
    private readonly Sheet _sheet;
    private readonly TableLayout _layout;
    private readonly LetterCounter _letters = new();
    private readonly FormulaCompiler _formulas;
    private readonly List<Instruction> _code = [];
    private readonly List<string> _blocks = [];
    private readonly HashSet<int> _thingNumbers = [];
    private readonly HashSet<int> _thingSets = [];
    private readonly List<int> _startAsNothing = [];
    private readonly HashSet<ActionName> _open = [];
    private readonly Label _over = new();
    private readonly Label _turnOver = new();
    private readonly List<Label> _turnStarts = [];
    private readonly int _markBase = Slots.Count;
    private ImmutableArray<FrameMap> _frames = [];
    private ImmutableArray<ActionPlan> _actions = [];
    private ImmutableArray<PowerPlan> _powers = [];
    private ImmutableArray<EndPlan> _ends = [];
    private int _numbers;
    private int _sets;
    private int _firstLocal;
    private int _firstSet;
    private bool _asksTurn;
    private bool _asksRound;

    private CourseCompiler(Sheet sheet, int seats, Func<Choice, int> readings)
    {
        _sheet = sheet;
        _layout = TableLayout.Of(sheet, seats);
        _formulas = new FormulaCompiler(_layout, _letters, readings) { OfCourse = OfCourse, MarkBase = _markBase };
        _readings = readings;
        _numbers = _markBase + _layout.MarkCount;
    }

    private readonly Func<Choice, int> _readings;

    /// <summary>The plan for a sheet, a number of players and the readings that are meant.</summary>
    /// <exception cref="NotPlayableException">The sheet does not say enough for whole games.</exception>
    public static CoursePlan Compile(Sheet sheet, int seats, Func<Choice, int> readings) => new CourseCompiler(sheet, seats, readings).Plan();

    private CoursePlan Plan()
    {
        NameActions();
        _powers = [.. _sheet.Powers.Select(ReadyPower)];
        _firstLocal = _numbers;
        _firstSet = _sets;
        _ends = [.. _sheet.Ends.Select(ReadyEnd)];
        foreach (ActionPlan action in _actions)
        {
            BindLaws(action, _powers);
        }

        EmitGame();

        // Formulas that ask what somebody can do are compiled before the calls of which they ask.
        ImmutableArray<ScorePlan> score = [.. _sheet.Score.Select(ReadyScore)];
        ImmutableArray<(TieBreak, Node?)> ties = [.. _sheet.TieBreaks.Select(t => (t, t.Number is null ? null : _formulas.Number(t.Number, _formulas.Frame())))];
        Node? next = _sheet.NextToPlay is { } follows ? _formulas.Compile(follows, _formulas.Frame()) : null;
        EmitAsked();
        (int lastLocal, int lastSet) = (_numbers, _sets);
        LayOutMemory();
        return new CoursePlan(_layout)
        {
            Locals = (_firstLocal..lastLocal, _firstSet..lastSet),
            Code = [.. _code],
            Blocks = [.. _blocks],
            MarkBase = _markBase,
            LineNames = [.. _layout.Holders.SelectMany(h => h.Board?.Families ?? []).SelectMany(f => f.Lines.Select(l => $"{f.Name} {l.Label}"))],
            DirectionName = _formulas.DirectionName,
            FitSpaces = _formulas.FitsKnown.Spaces,
            Values = new StateValues(_layout, _formulas.Boards, _formulas.Lines, _formulas.FitsKnown),
            Ends = _ends,
            Score = score,
            Ties = ties,
            NextToPlay = next,
            Actions = _actions,
            Resets = ([.. Resets("turn"), .. Uses(LimitPer.Turn)], [.. Resets("round"), .. Uses(LimitPer.Round)]),
            Counts = (_asksTurn, _asksRound),
            Blank = Blank(),
            ThingSlots = ([.. Enumerable.Range(0, _numbers).Select(_thingNumbers.Contains)], [.. Enumerable.Range(0, _sets).Select(_thingSets.Contains)]),
            TurnStart = _turnStarts is [var only] ? only.At : null,
            HasTurns = _sheet.Blocks.All(b => b.Name != "course"),
            Numbers = _numbers,
            Sets = _sets,
            Letters = _letters.Count,
        };
    }

    // The whole game: set-up, turns (or a course of its own), last steps of the end, closing.
    private void EmitGame()
    {
        // A course of its own may say itself when the table is set up; else that comes first.
        if (!_sheet.Blocks.Any(b => b.Name == "course" && b.Steps.SelectMany(s => s.All).Any(s => s.Block == "set-up")))
        {
            EmitBlock("set-up");
        }

        if (_sheet.Blocks.Any(b => b.Name == "course"))
        {
            EmitBlock("course");
            Add(new GoTo(_over));
        }
        else if (_sheet.Blocks.Any(b => b.Name == "turn"))
        {
            EmitTurns();
        }
        else
        {
            throw new NotPlayableException("The sheet does not say what a turn is; to play, write 'turn'.", _sheet.Tree.Span);
        }

        Mark(_turnOver);
        Mark(_over);
        EmitClosing();
    }

    private void EmitTurns()
    {
        Add(new FirstTurn());
        Add(new BetweenTurns());
        var turn = new Label();
        var over = new Label();
        Mark(turn);
        _turnStarts.Add(turn);
        Add(new BeginTurn());
        EmitBlock("turn", over);
        Mark(over);
        Add(new EndTurn(_over));
        Add(new BetweenTurns());
        Add(new GoTo(turn));
    }

    private void EmitClosing()
    {
        var closing = new Label();
        Add(new EndSteps(closing));
        foreach (EndPlan end in _ends.Where(e => !e.Rule.Steps.IsDefaultOrEmpty))
        {
            end.Steps = new Label();
            Mark(end.Steps);
            _block = end.Rule.Name;
            Emit(end.Rule.Steps, _formulas.Frame());
            Add(new GoTo(closing));
        }

        Mark(closing);
        EmitBlock("closing");
        Add(new Finish());
    }

    private Label? _endOfTurn;
    private string _block = "set-up";

    private void EmitBlock(string name, Label? endOfTurn = null)
    {
        (Label? outer, string block) = (_endOfTurn, _block);
        (_endOfTurn, _block) = (endOfTurn ?? outer, name);
        EmitHooked(name, null, null, () =>
        {
            foreach (Block steps in _sheet.Blocks.Where(b => b.Name == name))
            {
                Emit(steps.Steps, _formulas.Frame());
            }
        });
        (_endOfTurn, _block) = (outer, block);
    }

    // Hooks and ends that are asked before or after a block stand round its steps.
    private void EmitHooked(string name, ActionName? action, FrameMap? frame, Action steps)
    {
        EmitAsked(EndMoment.BeforeBlock, name);
        Hook[] hooks = [.. _sheet.Hooks.Where(h => action is null ? h.Action is null && h.Block == name : ReferenceEquals(h.Action, action))];
        EmitHooks(hooks, HookWhen.Before, frame);
        if (hooks.Any(h => h.When == HookWhen.InsteadOf))
        {
            EmitHooks(hooks, HookWhen.InsteadOf, frame);
        }
        else
        {
            steps();
        }

        EmitHooks(hooks, HookWhen.After, frame);
        EmitAsked(EndMoment.AfterBlock, name);
        foreach (MarkReset reset in Resets(name))
        {
            Add(new ResetMark(reset));
        }
    }

    private void EmitHooks(Hook[] hooks, HookWhen when, FrameMap? frame)
    {
        string block = _block;
        foreach (Hook hook in hooks.Where(h => h.When == when))
        {
            _block = hook.Key;
            Emit(hook.Steps, frame ?? _formulas.Frame());
        }

        _block = block;
    }

    private void EmitAsked(EndMoment moment, string block)
    {
        if (_sheet.Ends.Any(e => e.Moment == moment && e.Block == block))
        {
            Add(new AskEnds(e => e.Rule.Moment == moment && e.Rule.Block == block, _over));
        }
    }

    private int Add(Instruction instruction)
    {
        _code.Add(instruction);
        _blocks.Add(_block);
        return _code.Count - 1;
    }

    private void Mark(Label label) => label.At = _code.Count;

    private int Number(bool isThing = false)
    {
        if (isThing)
        {
            _thingNumbers.Add(_numbers);
        }

        return _numbers++;
    }

    private int Set(bool areThings = false)
    {
        if (areThings)
        {
            _thingSets.Add(_sets);
        }

        return _sets++;
    }

    private Node Compile(Term term, FrameMap frame) => _formulas.Compile(term, frame);

    private static SourceSpan At(Step step) => step.At;
}
