using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Steps;

/// <summary>A step, or the head of one, as it was written: names found but sorts not yet known.</summary>
/// <param name="Kind">Which kind.</param>
/// <param name="Parts">Its formulas in the order of the grammar; null where an optional one was left out.</param>
/// <param name="Span">Where it stands.</param>
internal sealed record StepSyntax(StepKind Kind, ImmutableArray<Syntax?> Parts, SourceSpan Span)
{
    /// <summary>The action of a call; null otherwise.</summary>
    public ActionName? Action { get; init; }

    /// <summary>The block of a call; null otherwise.</summary>
    public string? Block { get; init; }

    /// <summary>What <c>for each</c> goes through; null otherwise.</summary>
    public PickSyntax? Pick { get; init; }

    /// <summary>The name that <c>let</c> gives; null otherwise.</summary>
    public LetterName? Named { get; init; }

    /// <summary>The name of an end; null otherwise.</summary>
    public string? End { get; init; }

    /// <summary>Where the name of an end stands.</summary>
    public SourceSpan? EndAt { get; init; }

    /// <summary>True for face up, false for face down, null where the step does not say.</summary>
    public bool? FaceUp { get; init; }

    /// <summary>In which order elements or players come.</summary>
    public StepOrder Order { get; init; } = StepOrder.None;

    /// <summary>True for <c>each other player</c>, for <c>otherwise</c>, and for <c>any number of times</c>.</summary>
    public bool IsOther { get; init; }

    /// <summary>True for the head of a step that holds other steps.</summary>
    public bool IsHead => Kind >= StepKind.OneOf;
}

/// <summary>In which order elements or players come.</summary>
/// <param name="By">The number asked of each; null for the element itself or none.</param>
/// <param name="Kind">Lowest or highest first, or as the player chooses.</param>
internal sealed record StepOrder(Syntax? By, StepOrderKind Kind)
{
    /// <summary>As they stand.</summary>
    public static StepOrder None { get; } = new(null, StepOrderKind.AsTheyStand);
}

/// <summary>The ways to put elements in order.</summary>
internal enum StepOrderKind
{
    /// <summary>As they stand.</summary>
    AsTheyStand,

    /// <summary>The lowest number first.</summary>
    LowestFirst,

    /// <summary>The highest number first.</summary>
    HighestFirst,

    /// <summary>The player who acts chooses.</summary>
    AsChosen,
}

/// <summary>What may be chosen, as it was written.</summary>
/// <param name="Amount">One, several, any number, or a value that follows.</param>
/// <param name="Number">How many, where the amount says so; 0 otherwise.</param>
/// <param name="Form">What is chosen among.</param>
/// <param name="From">The elements, the value, or the lowest number; null where the form says all.</param>
/// <param name="Highest">The highest number; null otherwise.</param>
/// <param name="Where">Which elements count; null for all.</param>
internal sealed record DomainSyntax(ChoiceAmount Amount, long Number, DomainForm Form, Syntax? From, Syntax? Highest, Syntax? Where);

/// <summary>What a choice is made among.</summary>
internal enum DomainForm
{
    /// <summary>The elements of a formula.</summary>
    Elements,

    /// <summary>The players.</summary>
    Players,

    /// <summary>The directions of the board.</summary>
    Directions,

    /// <summary>The numbers from one to another.</summary>
    Numbers,

    /// <summary>Yes and no.</summary>
    YesOrNo,

    /// <summary>Nothing is chosen: the value follows.</summary>
    Value,
}
