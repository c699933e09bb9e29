using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>Carries a game's course out on a state, from one decision or chance event to the next. One for each thread.</summary>
internal sealed class Machine
{
    /// <summary>How many instructions follow each other without a decision or chance at the most; beyond that the course never ends.</summary>
    public const int MostSteps = 1_000_000;

    private readonly OptionFinder _finder;

    /// <summary>A machine for a plan.</summary>
    public Machine(CoursePlan plan)
        : this(plan, new Run(plan.Letters))
    {
    }

    /// <summary>A machine that shares the letters of another, to try something.</summary>
    public Machine(CoursePlan plan, Run run)
    {
        (Plan, Run) = (plan, run);
        _finder = new OptionFinder(this);
        run.Host ??= this;
    }

    /// <summary>The game.</summary>
    public CoursePlan Plan { get; }

    /// <summary>The letters and lists of formulas.</summary>
    public Run Run { get; }

    /// <summary>The state that is played on; the machine changes it in place.</summary>
    public TableState State { get; set; } = null!;

    /// <summary>True where play also waits between two turns.</summary>
    public bool StopsAfterTurns { get; set; }

    /// <summary>True where play also waits where only one thing can be dealt.</summary>
    public bool StopsAtEveryDeal { get; set; }

    /// <summary>Told when a deck is shuffled, with its spot; null for nobody.</summary>
    public Action<int>? Shuffled { get; set; }

    /// <summary>Told when something is shown to somebody; null for nobody.</summary>
    public Action? Shown { get; set; }

    /// <summary>Told when an action is done; null for nobody.</summary>
    public Action<ActionFacts>? Finished { get; set; }

    /// <summary>Told of each decision that had to be made and in which nothing was possible; null where nobody wants to know.</summary>
    public Action<Instruction>? Impossible { get; set; }

    /// <summary>Told of each move that found fewer things than its number says, with how many there were; null where nobody wants to know.</summary>
    public Action<Instruction, int>? Short { get; set; }

    /// <summary>Why play waits.</summary>
    public Moment? Moment { get; set; }

    /// <summary>Finds options in the state.</summary>
    public OptionFinder Finder
    {
        get
        {
            Bind();
            return _finder;
        }
    }

    /// <summary>Goes on to the next decision, chance event or end.</summary>
    /// <exception cref="NotPlayableException">The sheet leaves out what comes next, or the course never comes to a decision again.</exception>
    public Moment Advance()
    {
        Moment = null;
        RunTo(-1);
        return Moment!;
    }

    /// <summary>Goes on until play waits or an instruction is due.</summary>
    /// <returns>True where the instruction is due.</returns>
    public bool RunTo(int instruction)
    {
        for (int steps = 0; steps < MostSteps; steps++)
        {
            int here = State.Numbers[Slots.Step];
            if (here == instruction)
            {
                return true;
            }

            int next = Plan.Code[here].Do(this, here);
            if (next == Instruction.Wait)
            {
                return false;
            }

            State.Numbers[Slots.Step] = next;
        }

        SourceSpan? at = Plan.Code[State.Numbers[Slots.Step]].At;
        throw new NotPlayableException("The course goes on and on here without a decision: it never ends.", at);
    }

    /// <summary>Takes an option of the decision that is due.</summary>
    public void Choose(Option option, bool isTrial = false)
    {
        int[] numbers = State.Numbers;
        switch (option.Alternative)
        {
            case CallAlternative call:
                for (int i = 0; i < call.Slots.Length; i++)
                {
                    Keep(call.Slots[i], option.Chosen[i], option.Sets[i]);
                }

                break;
            case NextSetAlternative next:
                next.Kept.Take(State, option.Chosen[0]);
                break;
            case NextAlternative next:
                numbers[next.Letter] = option.Chosen[0];
                State.Sets[next.List] = Without(State.Sets[next.List]!, option.Chosen[0]);
                break;
        }

        Label entry = option.Powers.IsEmpty ? option.Alternative.Entry : PayFor((CallAlternative)option.Alternative, option.Powers);
        numbers[Slots.Step] = option.Alternative.Chosen.At >= 0 && !isTrial ? option.Alternative.Chosen.At : entry.At;
    }

    private Label PayFor(CallAlternative call, ImmutableArray<PowerPlan> powers)
    {
        State.Numbers[call.Unpaid] = powers.Aggregate(0, (bits, p) => bits | 1 << call.Action.Powers.IndexOf(p));
        return call.Pay;
    }

    /// <summary>Lets chance come out in one way.</summary>
    public void Choose(ChanceEvent chance, int outcome)
    {
        chance.Carry(State, outcome);
        State.Numbers[Slots.Step]++;
    }

    /// <summary>True where a truth holds in the state, for the seat that acts.</summary>
    public bool Holds(Node truth)
    {
        Bind();
        int mark = Run.Mark;
        bool holds = truth.Holds(Run);
        Run.Release(mark);
        return holds;
    }

    /// <summary>A single value in the state.</summary>
    public int Number(Node node)
    {
        Bind();
        int mark = Run.Mark;
        int value = node.Value(Run);
        Run.Release(mark);
        return value;
    }

    /// <summary>The elements of a set or list in the state.</summary>
    public int[] Elements(Node many)
    {
        Bind();
        int mark = Run.Mark;
        Elements list = Run.Rent();
        many.Fill(Run, list);
        int[] elements = list.Span.ToArray();
        Run.Return(list);
        Run.Release(mark);
        return elements;
    }

    /// <summary>The sets of a set or list of sets in the state.</summary>
    public int[][] Sets(Node many)
    {
        Bind();
        int mark = Run.Mark;
        Elements list = Run.Rent();
        many.Fill(Run, list);
        int[][] sets = new int[list.Count][];
        for (int i = 0; i < sets.Length; i++)
        {
            sets[i] = list[i] == Node.Nothing ? [] : Run.List(list[i]).Span.ToArray();
        }

        Run.Return(list);
        Run.Release(mark);
        return sets;
    }

    /// <summary>True where a truth holds of an element.</summary>
    public bool HoldsFor(Node truth, int letter, int element)
    {
        Run.Letters[letter] = element;
        return Holds(truth);
    }

    /// <summary>A number of an element.</summary>
    public int NumberFor(Node number, int letter, int element)
    {
        Run.Letters[letter] = element;
        return Number(number);
    }

    /// <summary>A number of a set.</summary>
    public int NumberFor(Node number, int letter, int[] set)
    {
        int mark = Run.Mark;
        Elements list = Run.Rent();
        list.AddRange(set);
        Run.Letters[letter] = Run.Keep(list);
        int value = Number(number);
        Run.Release(mark);
        return value;
    }

    /// <summary>True where a power can be used by the seat that acts.</summary>
    public bool IsAtHand(PowerPlan power) =>
        (power.If is null || Holds(power.If))
        && (power.Used < 0 || State.Numbers[power.Used + State.Numbers[Slots.Me]] < (power.Power.LimitTimes ?? int.MaxValue));

    private void Bind()
    {
        Run.State = State;
        Run.Me = State.Numbers[Slots.Me];
    }

    private void Keep(FrameMap.Spot slot, int value, int[]? set)
    {
        if (slot.IsMany)
        {
            State.Sets[slot.At] = set;
        }
        else
        {
            State.Numbers[slot.At] = value;
        }
    }

    private static int[] Without(int[] elements, int element)
    {
        int at = Array.IndexOf(elements, element);
        return [.. elements.Where((_, i) => i != at)];
    }
}
