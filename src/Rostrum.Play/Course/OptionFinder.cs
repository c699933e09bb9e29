using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>Finds every legal option of a decision: goes through the choices of an action, later ones after earlier ones, and asks the laws.</summary>
internal sealed partial class OptionFinder(Machine machine)
{
    private readonly Trial _trial = new(machine);

    /// <summary>True where a truth holds in the state, for the seat that acts.</summary>
    public bool Holds(Node truth) => machine.Holds(truth);

    /// <summary>A number in the state.</summary>
    public int Number(Node number) => machine.Number(number);

    /// <summary>A counter of the state.</summary>
    public int Count(int slot) => machine.State.Numbers[slot];

    /// <summary>Adds the legal options of a call.</summary>
    public bool Collect(CallAlternative call, List<Option> into)
    {
        int before = into.Count;
        Try(new Search(call, into, OnlyOne: false), 0);
        return into.Count > before;
    }

    /// <summary>True where a call has a legal option.</summary>
    public bool HasOption(CallAlternative call)
    {
        var found = new List<Option>();
        return Try(new Search(call, found, OnlyOne: true), 0) || found.Count > 0;
    }

    /// <summary>Adds an option for each element of a loop that is left, those that look alike once.</summary>
    public bool Collect(NextAlternative next, List<Option> into)
    {
        var seen = new HashSet<(int, int)>();
        foreach (int element in machine.State.Sets[next.List]!)
        {
            if (!next.IsThing || seen.Add(Likeness(element)))
            {
                into.Add(new Option(next, [element], [null]));
            }
        }

        return seen.Count > 0 || !next.IsThing;
    }

    private readonly record struct Search(CallAlternative Call, List<Option> Into, bool OnlyOne)
    {
        public ActionPlan Action => Call.Action;

        /// <summary>Where candidates go that the laws may refuse; null where only legal options are looked for.</summary>
        public List<Candidate>? Candidates { get; init; }

        /// <summary>Which candidates are wanted.</summary>
        public Func<Option, bool>? Wanted { get; init; }
    }

    // True where the search may stop.
    private bool Try(Search search, int at)
    {
        ActionPlan action = search.Action;
        if (action.Powers.IsEmpty && search.Candidates is null && !IsKeptAt(action, at))
        {
            return false;
        }

        if (at == action.Choices.Length)
        {
            return Judge(search);
        }

        ChoicePlan choice = action.Choices[at];
        Run run = machine.Run;
        int mark = run.Mark;
        bool stop = search.Call.Given[at] is { } given ? TryGiven(search, at, given)
            : choice.Facts.Amount == ChoiceAmount.Given ? TryValue(search, at, choice.Domain)
            : TryElements(search, at, choice);
        run.Release(mark);
        return stop;
    }

    private bool TryValue(Search search, int at, Node value)
    {
        machine.Run.Letters[search.Action.Choices[at].Letter] = value.Value(machine.Run);
        return Try(search, at + 1);
    }

    // What a call gives must be among what may be chosen.
    private bool TryGiven(Search search, int at, Node given)
    {
        ChoicePlan choice = search.Action.Choices[at];
        int value = given.Value(machine.Run);
        if (value == Node.Nothing || (!choice.IsMany && choice.Facts.Amount == ChoiceAmount.One && !IsAmong(choice, value)))
        {
            return false;
        }

        machine.Run.Letters[choice.Letter] = value;
        return Try(search, at + 1);
    }

    private bool IsAmong(ChoicePlan choice, int value)
    {
        Elements domain = machine.Run.Rent();
        choice.Domain.Fill(machine.Run, domain);
        bool isThere = domain.Contains(value);
        machine.Run.Return(domain);
        return isThere;
    }

    private bool TryElements(Search search, int at, ChoicePlan choice)
    {
        int[] domain = Domain(choice);
        if (choice.Facts.Amount != ChoiceAmount.One)
        {
            return TrySets(search, at, choice, domain);
        }

        foreach (int element in domain)
        {
            machine.Run.Letters[choice.Letter] = element;
            if (Try(search, at + 1))
            {
                return true;
            }
        }

        return false;
    }

    // The elements that may be chosen; of things in one spot without an order, those that look alike are one.
    private int[] Domain(ChoicePlan choice)
    {
        Elements domain = machine.Run.Rent();
        choice.Domain.Fill(machine.Run, domain);
        int[] elements = domain.Span.ToArray();
        machine.Run.Return(domain);
        if (choice.Facts.Amount != ChoiceAmount.One || choice.Facts.From.Sort.Element?.Kind != SortKind.Thing)
        {
            return elements;
        }

        var seen = new HashSet<(int, int)>();
        return [.. elements.Where(e => seen.Add(Likeness(e)))];
    }

    private (int, int) Likeness(int thing)
    {
        TableState state = machine.State;
        int spot = state.Spot(thing);
        return state.Layout.SpotHolder[spot].IsOrdered ? (spot, -1 - thing) : (spot, state.LookCode(thing));
    }

    // A law is asked as soon as all choices are made that stand in it: where it is broken, no later choice mends that.
    private bool IsKeptAt(ActionPlan action, int choices)
    {
        foreach (LawPlan law in action.Laws)
        {
            if (law.Choices == choices && !IsKeptBefore(law))
            {
                return false;
            }
        }

        return true;
    }

    private bool Judge(Search search)
    {
        if (search.Candidates is not null)
        {
            Weigh(search, search.Candidates);
            return false;
        }

        List<LawPlan>? broken = search.Action.Powers.IsEmpty ? null : Broken(search.Action);
        Option option = Made(search);
        if (search.Action.IsTried)
        {
            broken = _trial.Breaks(search.Call, option, broken, out bool isImpossible);
            if (isImpossible)
            {
                return false;
            }
        }

        if (broken is null)
        {
            search.Into.Add(option);
        }
        else
        {
            AddWithPowers(search, option, broken);
        }

        return search.OnlyOne && search.Into.Count > 0;
    }

    // With powers, which laws are broken decides which power helps.
    private List<LawPlan>? Broken(ActionPlan action)
    {
        List<LawPlan>? broken = null;
        foreach (LawPlan law in action.Laws)
        {
            if (!IsKeptBefore(law))
            {
                (broken ??= []).Add(law);
            }
        }

        return broken;
    }

    /// <summary>True where a law is kept by the choices that stand in the letters, as far as it is asked before the action.</summary>
    public bool IsKeptBefore(LawPlan law)
    {
        Run run = machine.Run;
        foreach ((Node truth, bool wanted) in law.Before)
        {
            if (truth.Holds(run) != wanted)
            {
                return law.Unless is not null && law.Unless.Holds(run);
            }
        }

        return true;
    }

    private Option Made(Search search)
    {
        ImmutableArray<ChoicePlan> choices = search.Action.Choices;
        Run run = machine.Run;
        if (choices.IsEmpty)
        {
            return Option.Of(search.Call);
        }

        int[] chosen = new int[choices.Length];
        int[]?[] sets = new int[]?[choices.Length];
        for (int i = 0; i < choices.Length; i++)
        {
            int value = run.Letters[choices[i].Letter];
            if (choices[i].IsMany)
            {
                sets[i] = run.List(value).Span.ToArray();
            }
            else
            {
                chosen[i] = value;
            }
        }

        return new Option(search.Call, ImmutableCollectionsMarshal.AsImmutableArray(chosen), [.. sets]);
    }
}
