using System.Collections.Immutable;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Idioms;

/// <summary>A named form of a clause with parameters: data from a file of the idiom library.</summary>
/// <param name="Name">As sheets write it behind <c>idiom:</c>.</param>
/// <param name="Sentence">What it reads back as, with gaps such as <c>(many of)</c>.</param>
/// <param name="Parameters">In the order of the file.</param>
/// <param name="Body">The rest of the file: <c>each</c>, <c>points</c>, <c>means</c>, <c>words</c>, <c>tried</c>, <c>example</c>, <c>near miss</c>.</param>
/// <param name="Source">Where the idiom is written.</param>
public sealed record Idiom(string Name, string Sentence, ImmutableArray<IdiomParameter> Parameters, OutlineMapping Body, SourceSpan Source)
{
    /// <summary>True for an idiom that scores; false for one that stands for a value or a condition.</summary>
    public bool Scores => Body.Find("points") is not null;

    /// <summary>The parameter with this name, or null.</summary>
    public IdiomParameter? Find(string name) => Parameters.FirstOrDefault(p => p.Name == name);
}

/// <summary>A parameter of an idiom.</summary>
/// <param name="Name">The key under which a clause gives it.</param>
/// <param name="Form">What may stand there.</param>
/// <param name="As">The name by which the meaning speaks of it.</param>
/// <param name="Plural">The plural of that name; null where the meaning needs none.</param>
/// <param name="Otherwise">What holds where the clause does not give it: words as a clause would give them, the name of another parameter,
/// or <c>the only board</c>; null where it must be given.</param>
public sealed record IdiomParameter(string Name, ParameterForm Form, string As, string? Plural, OutlineScalar? Otherwise)
{
    /// <summary>What may stand there, in words: <c>a table</c>.</summary>
    public string Wanted => Form switch
    {
        ParameterForm.Look => "words that tell a thing, such as 'red stone'",
        ParameterForm.Lines => "the name of lines of a board",
        ParameterForm.Table => "the name of a table",
        ParameterForm.Board => "a board",
        ParameterForm.Place => "a place, such as 'my hand'",
        ParameterForm.Number => "a number",
        ParameterForm.Column => "a column of cards",
        ParameterForm.Word => "a word that is said of one thing",
        _ => "an attribute",
    };
}

/// <summary>What may stand for a parameter of an idiom.</summary>
public enum ParameterForm
{
    /// <summary>Words that tell a thing.</summary>
    Look,

    /// <summary>The lines of a board by their name, such as <c>bays</c>.</summary>
    Lines,

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

    /// <summary>An attribute.</summary>
    Attribute,
}
