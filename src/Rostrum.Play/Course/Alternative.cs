using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>Something that may stand at a decision. Closed: the classes below and no more.</summary>
internal abstract class Alternative
{
    /// <summary>Where its steps begin.</summary>
    public Label Entry { get; } = new();

    /// <summary>Where play goes on once it is chosen, if that is not where its steps begin: a secret choice is carried out later.</summary>
    public Label Chosen { get; } = new();

    /// <summary>Adds its legal options.</summary>
    /// <returns>True where it has one.</returns>
    public abstract bool Collect(OptionFinder finder, List<Option> into);

    /// <summary>The calls of actions that are at hand now, whether or not the laws leave them an option.</summary>
    public virtual IEnumerable<CallAlternative> Calls(OptionFinder finder) => [];
}

/// <summary>A call of an action: the gaps that are given, and where the choices are kept for its steps.</summary>
/// <param name="action">The action.</param>
/// <param name="given">By choice: the value that the call gives; null where it is chosen.</param>
/// <param name="slots">By choice: where its steps find it.</param>
internal sealed class CallAlternative(ActionPlan action, ImmutableArray<Node?> given, ImmutableArray<FrameMap.Spot> slots) : Alternative
{
    /// <summary>The action.</summary>
    public ActionPlan Action => action;

    /// <summary>By choice: the value that the call gives; null where it is chosen.</summary>
    public ImmutableArray<Node?> Given => given;

    /// <summary>By choice: where its steps find it.</summary>
    public ImmutableArray<FrameMap.Spot> Slots => slots;

    /// <summary>Behind its last step: what it leaves is asked here.</summary>
    public Label Leave { get; } = new();

    /// <summary>By power of <see cref="ActionPlan.Powers"/>: where its price is paid.</summary>
    public ImmutableArray<Label> Prices { get; set; } = [];

    /// <summary>Where the prices are paid, one after the other, before the steps follow.</summary>
    public Label Pay { get; } = new();

    /// <summary>The number slot that tells which powers are still to be paid for, one bit each; -1 where no power is for the action.</summary>
    public int Unpaid { get; set; } = -1;

    public override bool Collect(OptionFinder finder, List<Option> into) => finder.Collect(this, into);

    public override IEnumerable<CallAlternative> Calls(OptionFinder finder) => [this];
}

/// <summary>A step that is no call, told by its own words.</summary>
/// <param name="step">The step.</param>
internal sealed class StepAlternative(Step step) : Alternative
{
    /// <summary>The step.</summary>
    public Step Step => step;

    public override bool Collect(OptionFinder finder, List<Option> into)
    {
        into.Add(Option.Of(this));
        return true;
    }
}

/// <summary>One of several.</summary>
internal sealed class AnyAlternative(ImmutableArray<Alternative> among) : Alternative
{
    public override bool Collect(OptionFinder finder, List<Option> into)
    {
        bool any = false;
        foreach (Alternative alternative in among)
        {
            any |= alternative.Collect(finder, into);
        }

        return any;
    }

    public override IEnumerable<CallAlternative> Calls(OptionFinder finder) => among.SelectMany(a => a.Calls(finder));
}

/// <summary>The first of several that has a legal option.</summary>
internal sealed class FirstAlternative(ImmutableArray<Alternative> among) : Alternative
{
    public override bool Collect(OptionFinder finder, List<Option> into)
    {
        foreach (Alternative alternative in among)
        {
            if (alternative.Collect(finder, into))
            {
                return true;
            }
        }

        return false;
    }

    public override IEnumerable<CallAlternative> Calls(OptionFinder finder) => among.FirstOrDefault(a => a.Collect(finder, []))?.Calls(finder) ?? [];
}

/// <summary>Alternatives under a condition.</summary>
internal sealed class IfAlternative(Node condition, Alternative then, Alternative otherwise) : Alternative
{
    public override bool Collect(OptionFinder finder, List<Option> into) => (finder.Holds(condition) ? then : otherwise).Collect(finder, into);

    public override IEnumerable<CallAlternative> Calls(OptionFinder finder) => (finder.Holds(condition) ? then : otherwise).Calls(finder);
}

/// <summary>Alternatives that are at hand while a counter is below a limit.</summary>
/// <param name="inner">The alternatives.</param>
/// <param name="counter">The number slot that counts how often one was taken; -1 where there is no limit.</param>
/// <param name="most">How often; null for any number of times.</param>
/// <param name="isDuty">True where the order cannot be ended while one of them is possible and none was taken.</param>
internal sealed class CountedAlternative(Alternative inner, int counter, Node? most, bool isDuty) : Alternative
{
    /// <summary>True where the order cannot be ended while one of them is possible and none was taken.</summary>
    public bool IsDuty => isDuty;

    public override bool Collect(OptionFinder finder, List<Option> into) => IsAtHand(finder) && inner.Collect(finder, into);

    public override IEnumerable<CallAlternative> Calls(OptionFinder finder) => IsAtHand(finder) ? inner.Calls(finder) : [];

    private bool IsAtHand(OptionFinder finder) => most is null || finder.Count(counter) < finder.Number(most);
}

/// <summary>Declining what may be done, or ending a free order.</summary>
/// <param name="words">The phrase: <c>no</c> or <c>done</c>.</param>
/// <param name="of">What is declined or ended, in words.</param>
internal sealed class EndingAlternative(string words, string of) : Alternative
{
    /// <summary>The phrase.</summary>
    public string Words => words;

    /// <summary>What is declined or ended, in words.</summary>
    public string Of => of;

    public override bool Collect(OptionFinder finder, List<Option> into)
    {
        into.Add(Option.Of(this));
        return true;
    }
}

/// <summary>Which element of a loop comes next, where the player chooses the order.</summary>
/// <param name="list">The set slot of the elements that are left.</param>
/// <param name="letter">The number slot that gets the element.</param>
/// <param name="sort">What the elements are; things that look alike are one option.</param>
internal sealed class NextAlternative(int list, int letter, SortKind sort) : Alternative
{
    /// <summary>The set slot of the elements that are left.</summary>
    public int List => list;

    /// <summary>The number slot that gets the element.</summary>
    public int Letter => letter;

    /// <summary>What the elements are.</summary>
    public SortKind Sort => sort;

    /// <summary>True where the elements are things.</summary>
    public bool IsThing => sort == SortKind.Thing;

    public override bool Collect(OptionFinder finder, List<Option> into) => finder.Collect(this, into);
}

/// <summary>Which set of a loop through sets comes next, where the player chooses the order.</summary>
/// <param name="kept">Where the sets are kept.</param>
/// <param name="sort">What the elements of the sets are.</param>
internal sealed class NextSetAlternative(KeptSets kept, SortKind sort) : Alternative
{
    /// <summary>Where the sets are kept.</summary>
    public KeptSets Kept => kept;

    /// <summary>What the elements of the sets are.</summary>
    public SortKind Sort => sort;

    public override bool Collect(OptionFinder finder, List<Option> into) => finder.Collect(this, into);
}
