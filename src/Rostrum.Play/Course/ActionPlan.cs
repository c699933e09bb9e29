using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>An action made ready: what may be chosen, and which laws bind it. The choices that are being tried stand in letters of the run.</summary>
/// <param name="Facts">The action.</param>
/// <param name="Choices">Its choices, in order.</param>
internal sealed record ActionPlan(ActionFacts Facts, ImmutableArray<ChoicePlan> Choices)
{
    /// <summary>The laws that bind it, in the order of the sheet; filled once every action is known.</summary>
    public ImmutableArray<LawPlan> Laws { get; set; } = [];

    /// <summary>The powers that may lift some of them.</summary>
    public ImmutableArray<PowerPlan> Powers { get; set; } = [];

    /// <summary>True where its steps may lay one thing too many on a spot with a limit, so that they must be tried.</summary>
    public bool MayOverfill { get; set; }

    /// <summary>What a state remembers of it.</summary>
    public ActionMemory Memory { get; } = new(Facts);

    /// <summary>True where something must be asked of what its steps leave.</summary>
    public bool IsTried => MayOverfill || Laws.Any(l => l.IsAskedAfter);
}

/// <summary>A choice made ready.</summary>
/// <param name="Facts">As the sheet says it.</param>
/// <param name="Letter">The run's letter in which it stands while it is tried.</param>
/// <param name="Domain">What may be chosen; for a given one its value.</param>
/// <param name="IsMany">True where several are chosen, or where the given value is a set.</param>
internal sealed record ChoicePlan(ActionChoice Facts, int Letter, Node Domain, bool IsMany);

/// <summary>A law made ready for one action.</summary>
/// <param name="Law">The law.</param>
/// <param name="Before">What is asked before the action, with the answer that is wanted.</param>
/// <param name="After">What is asked of what the steps leave.</param>
/// <param name="Unless">Where it does not hold; null for none.</param>
internal sealed record LawPlan(Law Law, ImmutableArray<(Node Truth, bool Wanted)> Before, ImmutableArray<(Node Truth, bool Wanted)> After, Node? Unless)
{
    /// <summary>True where something is asked of what the steps leave.</summary>
    public bool IsAskedAfter => !After.IsEmpty;

    /// <summary>How many choices, from the first on, must be made before the law can be asked: no later one stands in its formulas.</summary>
    public int Choices { get; init; }
}

/// <summary>A power made ready for one action.</summary>
/// <param name="Power">The power.</param>
/// <param name="If">When it is at hand; null for always.</param>
/// <param name="Used">Where the state counts its uses, by seat; -1 where it has no limit.</param>
internal sealed record PowerPlan(Power Power, Node? If, int Used);
