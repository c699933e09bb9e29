using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Idioms;

/// <summary>A named form of a clause with parameters: data from a file of the idiom library.</summary>
/// <param name="Name">As sheets write it behind <c>idiom:</c>.</param>
/// <param name="Sentence">What it reads back as, with gaps such as <c>(many of)</c>.</param>
/// <param name="Parameters">In the order of the file.</param>
/// <param name="Body">The rest of the file: <c>each</c>, <c>points</c>, <c>means</c>, <c>needs</c>, <c>words</c>, <c>tried</c>, <c>example</c>, <c>near miss</c>.</param>
/// <param name="Source">Where the idiom is written.</param>
public sealed record Idiom(string Name, string Sentence, ImmutableArray<IdiomParameter> Parameters, OutlineMapping Body, SourceSpan Source)
{
    /// <summary>Where a sheet may use it.</summary>
    public IdiomUseKind Kind => Body.Find("points") is not null ? IdiomUseKind.Score : Body.Find("means") is not null ? IdiomUseKind.Condition : IdiomUseKind.Law;

    /// <summary>What it answers, in the words of the trade: <c>majority</c>, <c>step table by size</c>.</summary>
    public string Group => OutlineAsk.Prose(Body, "group") ?? "";

    /// <summary>Its sentence with the names of the parameters in it: <c>Each full ‹along› scores ‹points› points.</c></summary>
    public string InNames => IdiomSentence.InNames(Sentence, Parameters);

    /// <summary>The parameter with this name, or null.</summary>
    public IdiomParameter? Find(string name) => Parameters.FirstOrDefault(p => p.Name == name);
}

/// <summary>Where a sheet may use an idiom.</summary>
public enum IdiomUseKind
{
    /// <summary>Under <c>score</c>.</summary>
    Score,

    /// <summary>Wherever yes or no is asked.</summary>
    Condition,

    /// <summary>Under <c>laws</c>: it speaks of what an action chooses.</summary>
    Law,
}
