using System.Collections.Immutable;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Idioms;

/// <summary>A parameter of an idiom.</summary>
/// <param name="Name">The key under which a clause gives it.</param>
/// <param name="Form">What may stand there.</param>
/// <param name="As">The name by which the meaning speaks of it.</param>
/// <param name="Plural">The plural of that name; null where the meaning needs none.</param>
/// <param name="Otherwise">What holds where the clause does not give it: words as a clause would give them, the name of another parameter,
/// <c>the only board</c>, or <c>the only one chosen</c>; null where it must be given.</param>
public sealed record IdiomParameter(string Name, ParameterForm Form, string As, string? Plural, OutlineScalar? Otherwise)
{
    /// <summary>For <see cref="ParameterForm.OneOf"/>, the words that may stand there; the meaning knows them by their number, from 1.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>True for words that tell things of every player, because the meaning compares the players: nobody's <c>my</c> may stand before them.</summary>
    public bool IsOfAnybody { get; init; }

    /// <summary>What may stand there, in words: <c>a table</c>.</summary>
    public string Wanted => Form switch
    {
        ParameterForm.Look => "words that tell a thing, such as 'red stone'",
        ParameterForm.Lines => "the name of lines of a board",
        ParameterForm.Printed => "a number that is printed on spaces",
        ParameterForm.Table => "the name of a table",
        ParameterForm.Board => "a board",
        ParameterForm.Place => "a place, such as 'my hand'",
        ParameterForm.Number => "a number",
        ParameterForm.Column => "a column of cards",
        ParameterForm.Word => "a word that is said of one thing",
        ParameterForm.PairWord => "a word that is said of two",
        ParameterForm.SetWord => "a word that is said of a set",
        ParameterForm.Worth => "a column, an attribute or a word that gives each thing a number",
        ParameterForm.Amount => "a number or what is counted, such as 'my coins' or 'stones in my hand'",
        ParameterForm.Amounts => "a list of what is counted, such as '[red stones in my hand, blue stones in my hand]'",
        ParameterForm.Standing => "what every player has, such as 'my coins' or 'stones in my hand'",
        ParameterForm.Things => "several things, such as 'my hand' or 'stones in my hand'",
        ParameterForm.Spaces => "spaces, such as 'rim of map'",
        ParameterForm.Truth => "a condition",
        ParameterForm.OneOf => $"one of {Prose.Or(Words.Select(w => $"'{w}'"))}",
        ParameterForm.ChosenThing => "a thing that the action chooses",
        ParameterForm.ChosenSpace => "a space that the action chooses",
        _ => "an attribute",
    };
}

/// <summary>What may stand for a parameter of an idiom.</summary>
public enum ParameterForm
{
    /// <summary>Words that tell a thing.</summary>
    Look,

    /// <summary>The lines or areas of a board by their name, such as <c>bays</c>.</summary>
    Lines,

    /// <summary>A number that is printed on the spaces of a board.</summary>
    Printed,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A board.</summary>
    Board,

    /// <summary>A place that holds things.</summary>
    Place,

    /// <summary>A number or a formula that gives one.</summary>
    Number,

    /// <summary>A column of cards.</summary>
    Column,

    /// <summary>A word of one subject.</summary>
    Word,

    /// <summary>A word of two subjects.</summary>
    PairWord,

    /// <summary>A word of one subject that is a set.</summary>
    SetWord,

    /// <summary>What gives a thing a number: a column, an attribute or a word of one subject.</summary>
    Worth,

    /// <summary>An attribute.</summary>
    Attribute,

    /// <summary>A number, or several things that are counted.</summary>
    Amount,

    /// <summary>A list of amounts.</summary>
    Amounts,

    /// <summary>An amount that every player has, told as one's own.</summary>
    Standing,

    /// <summary>Several things.</summary>
    Things,

    /// <summary>Several spaces.</summary>
    Spaces,

    /// <summary>A formula that gives yes or no.</summary>
    Truth,

    /// <summary>One of the words that the idiom lists.</summary>
    OneOf,

    /// <summary>A thing that the action of a law chooses.</summary>
    ChosenThing,

    /// <summary>A space that the action of a law chooses.</summary>
    ChosenSpace,
}
