using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.ReadBack;

/// <summary>A clause of a sheet as it reads back in English.</summary>
/// <param name="Section">The section, in the words of a heading, such as <c>Laws</c>.</param>
/// <param name="Name">The clause's name.</param>
/// <param name="Says">One sentence.</param>
/// <param name="Meaning">How the meaning reads where the author's own sentence stands in <paramref name="Says"/>; null where both are the same.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
/// <param name="Status">How sure it is.</param>
/// <param name="Choice">Its readings or conflict; null where it has one meaning.</param>
/// <param name="At">Where it stands.</param>
public sealed record ReadClause(string Section, string Name, string Says, string? Meaning, Citation? Cite, ClauseStatus Status, Choice? Choice, SourceSpan? At)
{
    /// <summary>The status in words, such as <c>open: as for four or growing on</c>.</summary>
    public string StatusInWords => Status switch
    {
        ClauseStatus.Open => $"open: {Prose.Or(Choice!.Names)}",
        ClauseStatus.Decided => $"decided: {Choice!.Names[Choice.Followed!.Value]}{(Choice.Why is null ? "" : $" ({Choice.Why.TrimEnd('.')})")}",
        ClauseStatus.NotModelled => "not modelled",
        _ => "settled",
    };
}

/// <summary>How sure a clause is.</summary>
public enum ClauseStatus
{
    /// <summary>One meaning, used in answers.</summary>
    Settled,

    /// <summary>Several readings and nobody has decided: each answer is given for each.</summary>
    Open,

    /// <summary>Readings or sources disagree, and the sheet follows one.</summary>
    Decided,

    /// <summary>The author left it out.</summary>
    NotModelled,
}
