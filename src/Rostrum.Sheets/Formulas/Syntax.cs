using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>A formula as it was written, names found but sorts not yet known. Closed.</summary>
/// <param name="Span">Where it stands.</param>
internal abstract record Syntax(SourceSpan Span)
{
    internal sealed record Number(long Amount, SourceSpan Span) : Syntax(Span);

    /// <summary>A name with everything that it may mean.</summary>
    internal sealed record Name(string Words, ImmutableArray<NameSense> Senses, SourceSpan Span) : Syntax(Span);

    /// <summary>A word that nobody declared.</summary>
    internal sealed record Unknown(string Words, SourceSpan Span) : Syntax(Span);

    internal sealed record It(SourceSpan Span) : Syntax(Span);

    internal sealed record Me(SourceSpan Span) : Syntax(Span);

    internal sealed record Nothing(SourceSpan Span) : Syntax(Span);

    internal sealed record YesNo(bool IsYes, SourceSpan Span) : Syntax(Span);

    /// <summary>Words of a look: values, kinds, cards, adjectives, in a row.</summary>
    internal sealed record Looks(Owner Owner, ImmutableArray<Name> Parts, SourceSpan Span) : Syntax(Span);

    /// <summary><c>look in container</c>, or with <c>the</c>.</summary>
    internal sealed record PartOf(bool IsOnly, Looks Look, Syntax Container, SourceSpan Span) : Syntax(Span);

    /// <summary><c>noun [label] of argument</c>.</summary>
    internal sealed record Of(Name Noun, Token? Label, Syntax Argument, SourceSpan Span) : Syntax(Span);

    /// <summary><c>my chamber</c>, <c>their store</c>.</summary>
    internal sealed record Owned(Owner Owner, Name What, SourceSpan Span) : Syntax(Span);

    /// <summary><c>name(…)</c>.</summary>
    internal sealed record Call(Name Function, PickSyntax? Pick, ImmutableArray<Part> Parts, SourceSpan Span) : Syntax(Span);

    /// <summary><c>(value where truth)</c>.</summary>
    internal sealed record Filtered(Syntax Domain, Syntax Where, SourceSpan Span) : Syntax(Span);

    internal sealed record Listed(ImmutableArray<Syntax> Items, SourceSpan Span) : Syntax(Span);

    internal sealed record Range(Syntax Low, Syntax High, SourceSpan Span) : Syntax(Span);

    /// <summary>A sign between two: <c>+ - times except together with</c>.</summary>
    internal sealed record Binary(string Sign, Syntax Left, Syntax Right, SourceSpan Span) : Syntax(Span);

    internal sealed record Negative(Syntax Operand, SourceSpan Span) : Syntax(Span);

    /// <summary><c>subject is [not] tail</c>.</summary>
    internal sealed record Test(Syntax Subject, bool IsNegated, string Tail, ImmutableArray<Syntax> Operands, SourceSpan Span) : Syntax(Span);

    internal sealed record Shows(Syntax Subject, ImmutableArray<Syntax> Choices, bool IsNegated, SourceSpan Span) : Syntax(Span);

    /// <summary><c>player can action</c>, the action in the words of its phrase or its name, with formulas in its first gaps.</summary>
    internal sealed record Can(Syntax Subject, Model.ActionName Action, Model.ActionPhrase Phrase, ImmutableArray<Syntax> Given, SourceSpan Span) : Syntax(Span);

    /// <summary><c>action was done when [by player]</c>.</summary>
    internal sealed record Done(Name Action, bool IsNegated, string When, Syntax? By, SourceSpan Span) : Syntax(Span);

    /// <summary><c>choice of my last action</c>.</summary>
    internal sealed record OfLast(Name Choice, bool IsMine, Name Action, SourceSpan Span) : Syntax(Span);

    internal sealed record Logic(bool IsAnd, ImmutableArray<Syntax> Operands, SourceSpan Span) : Syntax(Span);

    internal sealed record Not(Syntax Operand, SourceSpan Span) : Syntax(Span);

    internal sealed record If(Syntax Then, Syntax Condition, Syntax Otherwise, SourceSpan Span) : Syntax(Span);

    /// <summary>Something that could not be read; the message has been given.</summary>
    internal sealed record Broken(SourceSpan Span) : Syntax(Span);
}

/// <summary>Whose, as written.</summary>
internal enum Owner
{
    /// <summary>Not said.</summary>
    None,

    /// <summary><c>my</c>.</summary>
    My,

    /// <summary><c>their</c>.</summary>
    Their,
}

/// <summary>What a call goes through.</summary>
/// <param name="Letter">The letter given to an element; null for <c>it</c>.</param>
/// <param name="Domain">What is gone through.</param>
/// <param name="Where">Which elements count; null for all.</param>
internal sealed record PickSyntax(LetterName? Letter, Syntax Domain, Syntax? Where);

/// <summary>A part of a call after the pick.</summary>
/// <param name="Lead">The words before it, such as <c>joined by</c>; null for none.</param>
/// <param name="Value">The formula or name; null for a flag that is only a word.</param>
/// <param name="Word">The bare word of a flag or measure; null otherwise.</param>
/// <param name="Span">Where it stands.</param>
internal sealed record Part(string? Lead, Syntax? Value, string? Word, SourceSpan Span);
