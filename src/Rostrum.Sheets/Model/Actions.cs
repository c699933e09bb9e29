using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>An action or another named block of steps.</summary>
public sealed class ActionName(string name, ActionPhrase phrase, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>Its one spelling, with gaps for the choices.</summary>
    public ActionPhrase Phrase { get; } = phrase;

    /// <summary>0-based among the actions and blocks of the sheet.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => "an action";
}

/// <summary>The phrase of an action, cut at its gaps: <c>place (what) on (spot)</c>.</summary>
/// <param name="Parts">Words and gaps in order.</param>
public sealed record ActionPhrase(ImmutableArray<PhrasePart> Parts)
{
    /// <summary>The phrase as it is written in a sheet.</summary>
    public string InWords => string.Join(' ', Parts.Select(p => p.IsGap ? $"({p.Words})" : p.Words));
}

/// <summary>Some words of a phrase, or a gap for a choice.</summary>
/// <param name="Words">The words, or the name of the choice.</param>
/// <param name="IsGap">True for a gap.</param>
public sealed record PhrasePart(string Words, bool IsGap);

/// <summary>Everything a sheet says of an action.</summary>
/// <param name="Action">Its name and phrase.</param>
/// <param name="Choices">What is chosen, in order; later ones may use earlier ones.</param>
/// <param name="Steps">What happens.</param>
/// <param name="FrameSize">How many frame positions choices and steps need.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
public sealed record ActionFacts(ActionName Action, ImmutableArray<ActionChoice> Choices, ImmutableArray<Step> Steps, int FrameSize, string? Says, Citation? Cite)
{
    /// <summary>The action whose free order this one joins, or null.</summary>
    public string? Joins { get; init; }

    /// <summary>True where neither it nor anything before it can be taken back once it is done.</summary>
    public bool IsFinal { get; init; }
}

/// <summary>A named list of steps of the sheet itself: <c>set-up</c>, <c>turn</c>, <c>course</c>, <c>closing</c>.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Steps">What happens.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="FrameSize">How many frame positions the steps need.</param>
public sealed record Block(string Name, ImmutableArray<Step> Steps, Citation? Cite, int FrameSize);

/// <summary>Steps that are done before, after or instead of an action or a block.</summary>
/// <param name="When">Before, after or instead.</param>
/// <param name="Block">The name of the action or block.</param>
/// <param name="Action">The action; null for a block. Its choices stand in the frame positions that they have in the action.</param>
/// <param name="Steps">What happens.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="FrameSize">How many frame positions choices and steps need.</param>
public sealed record Hook(HookWhen When, string Block, ActionName? Action, ImmutableArray<Step> Steps, Citation? Cite, int FrameSize)
{
    /// <summary>The key of the sheet under which it stands, such as <c>before lay</c>.</summary>
    public string Key => $"{When switch { HookWhen.Before => "before", HookWhen.After => "after", _ => "instead of" }} {Block}";
}

/// <summary>When a hook is done.</summary>
public enum HookWhen
{
    /// <summary>Before it, once its choices are made.</summary>
    Before,

    /// <summary>After it.</summary>
    After,

    /// <summary>In its place.</summary>
    InsteadOf,
}

/// <summary>A choice of an action.</summary>
/// <param name="Name">As the gap names it.</param>
/// <param name="Slot">Its frame position.</param>
/// <param name="Amount">One, several, any number.</param>
/// <param name="Number">How many, for <see cref="ChoiceAmount.Exactly"/> and <see cref="ChoiceAmount.UpTo"/>.</param>
/// <param name="From">What may be chosen.</param>
/// <param name="Sort">What the choice stands for in formulas.</param>
/// <param name="Words">The domain as written.</param>
/// <param name="At">Where it stands.</param>
public sealed record ActionChoice(string Name, int Slot, ChoiceAmount Amount, long Number, Term From, Sort Sort, string Words, SourceSpan At);

/// <summary>How many are chosen.</summary>
public enum ChoiceAmount
{
    /// <summary>One.</summary>
    One,

    /// <summary>So many, as a list in the order they were named.</summary>
    Exactly,

    /// <summary>From none to so many.</summary>
    UpTo,

    /// <summary>One or more.</summary>
    Some,

    /// <summary>None or more.</summary>
    AnyNumber,

    /// <summary>Nothing is chosen: the value follows.</summary>
    Given,
}

/// <summary>The kinds of steps.</summary>
public enum StepKind
{
    /// <summary>Another action: terms are the values for its first gaps; or a block, see <see cref="Step.Block"/>.</summary>
    Call,

    /// <summary>Things go from one place to another: terms are amount (or nothing for all), things or look, from (or nothing), to.</summary>
    Move,

    /// <summary>Unseen things go from a bag or deck: terms are amount, from, to.</summary>
    Deal,

    /// <summary>A state or a face changes: terms are the thing and the value.</summary>
    Change,

    /// <summary>A place is shuffled.</summary>
    Shuffle,

    /// <summary>Dice are rolled.</summary>
    Roll,

    /// <summary>Two change places.</summary>
    Swap,

    /// <summary>A line is pushed.</summary>
    Push,

    /// <summary>Something is shown to somebody.</summary>
    Show,

    /// <summary>A mark, or the start player, gets a value: terms are the mark (or <see cref="Term.StartPlayer"/>) and the value.</summary>
    Set,

    /// <summary>A number is added to a mark.</summary>
    Add,

    /// <summary>A number is taken from a mark.</summary>
    Take,

    /// <summary>A name for a value, for the steps that follow: the term is the value.</summary>
    Let,

    /// <summary>The steps that a value names.</summary>
    Do,

    /// <summary>The same player has another turn.</summary>
    Again,

    /// <summary>The turn is over.</summary>
    EndTurn,

    /// <summary>The game ends by a named end.</summary>
    EndGame,

    /// <summary>Nothing happens.</summary>
    Nothing,

    /// <summary>One of several.</summary>
    OneOf,

    /// <summary>The first of several that is possible.</summary>
    FirstPossible,

    /// <summary>All of several, in any order.</summary>
    InAnyOrder,

    /// <summary>A duty among several.</summary>
    Must,

    /// <summary>An option.</summary>
    May,

    /// <summary>Steps under a condition.</summary>
    If,

    /// <summary>Everybody at once.</summary>
    AllAtOnce,

    /// <summary>Another player does the steps.</summary>
    Does,

    /// <summary>Steps for each element.</summary>
    ForEach,

    /// <summary>Steps for each player.</summary>
    EachPlayer,

    /// <summary>Steps again and again.</summary>
    Repeat,

    /// <summary>Players take turns.</summary>
    TakeTurns,
}

/// <summary>A step, understood: its names are found and its formulas have sorts. Play carries out all of them; a ruling on a position only the simple ones.</summary>
/// <param name="Kind">Which kind.</param>
/// <param name="Sentence">As it reads back.</param>
/// <param name="Terms">Its formulas, in the order that <see cref="StepKind"/> says.</param>
/// <param name="Inner">The steps inside it; for <see cref="StepKind.If"/> those of `then`.</param>
/// <param name="Otherwise">The steps of `otherwise`.</param>
/// <param name="At">Where it stands.</param>
public sealed record Step(StepKind Kind, string Sentence, ImmutableArray<Term> Terms, ImmutableArray<Step> Inner, ImmutableArray<Step> Otherwise, SourceSpan At)
{
    /// <summary>The action of a call; null otherwise.</summary>
    public ActionName? Action { get; init; }

    /// <summary>The block of a call, such as <c>set-up</c>; null for a call of an action and for other steps.</summary>
    public string? Block { get; init; }

    /// <summary>The frame position that the step gives a value to (a letter, a name of `let`); -1 for none.</summary>
    public int Slot { get; init; } = -1;

    /// <summary>The step and every step inside it.</summary>
    public IEnumerable<Step> All => Inner.Concat(Otherwise).SelectMany(s => s.All).Prepend(this);

    /// <summary>True where a ruling on a position carries the step out; an action with any other step is judged to its end by play only.</summary>
    public bool IsCarriedOut => Kind is StepKind.Move or StepKind.Swap or StepKind.Change or StepKind.Set or StepKind.Add or StepKind.Take
            or StepKind.Let or StepKind.Do or StepKind.Nothing or StepKind.Again or StepKind.EndTurn or StepKind.Show or StepKind.If or StepKind.ForEach
        && Inner.Concat(Otherwise).All(s => s.IsCarriedOut) && !Terms.Any(NeedsRecord);

    // A position does not hold what was done before.
    private static bool NeedsRecord(Term? term) =>
        term is Term.Done or Term.LastChoice or Term.Counter or Term.NotYet || (term is Term.Apply apply && apply.Arguments.Any(NeedsRecord));
}
