using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Coverage;

/// <summary>What sort of rule a lesson has to say.</summary>
public enum ClauseSort
{
    /// <summary>A law.</summary>
    Law,

    /// <summary>A power.</summary>
    Power,

    /// <summary>A scoring clause.</summary>
    Score,

    /// <summary>An end of the game.</summary>
    End,

    /// <summary>A tie-break.</summary>
    Tie,

    /// <summary>What is played for, where it is not the highest total.</summary>
    Aim,

    /// <summary>An action.</summary>
    Action,

    /// <summary>Set-up, turn and closing.</summary>
    Course,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A rating ladder.</summary>
    Rating,

    /// <summary>A rule that can be read in several ways, of which none is followed.</summary>
    Reading,

    /// <summary>A variant as a whole.</summary>
    Variant,
}

/// <summary>A rule of the sheet that a lesson says, leaves out on purpose, or forgets.</summary>
/// <param name="Sort">What sort of rule it is.</param>
/// <param name="Name">Its name in its section.</param>
/// <param name="Says">The sentence of its author, or what its idiom reads back as.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
/// <param name="Variant">The variant that adds or changes it; null for a rule of the game itself.</param>
public sealed record LessonClause(ClauseSort Sort, string Name, string Says, Citation? Cite, string? Variant)
{
    /// <summary>How a lesson and a dismissal name it where its name alone is not enough: <c>score/jugs</c>, <c>solo/three bays full</c>.</summary>
    public string LongName => $"{Variant ?? SectionOf(Sort)}/{Name}";

    /// <summary>The shortest name that means nothing else.</summary>
    public string Key { get; init; } = Name;

    /// <summary>Other names that may be said for it.</summary>
    public ImmutableArray<string> Called { get; init; } = [];

    /// <summary>The variants without which there is no such rule: where one of them is left out, it is left out too; empty for most.</summary>
    internal ImmutableArray<string> OnlyWith { get; init; } = [];

    /// <summary>What its words were before the variant changed it; null where it is not changed.</summary>
    internal string? Before { get; init; }

    /// <summary>The actions and blocks that its steps call: a rule that only puts others in order is said by saying them.</summary>
    internal ImmutableArray<string> Calls { get; init; } = [];

    /// <summary>The numbers of a table's rows, those of each reading apart; empty for other clauses.</summary>
    internal ImmutableArray<ImmutableArray<long>> Rows { get; init; } = [];

    /// <summary>The names of the readings among which a lesson must choose; empty for other clauses.</summary>
    internal ImmutableArray<string> Readings { get; init; } = [];

    /// <summary>The clause in words for messages, such as <c>the law 'jugs'</c>.</summary>
    public string InWords => Sort switch
    {
        ClauseSort.Law => $"the law '{Name}'",
        ClauseSort.Power => $"the power '{Name}'",
        ClauseSort.Score => $"the scoring clause '{Name}'",
        ClauseSort.End => $"the end '{Name}'",
        ClauseSort.Tie => $"the tie-break '{Name}'",
        ClauseSort.Aim => "what is played for",
        ClauseSort.Action => $"the action '{Name}'",
        ClauseSort.Course => $"the {Name}",
        ClauseSort.Table => $"the table '{Name}'",
        ClauseSort.Rating => "the rating",
        ClauseSort.Reading => $"that there are several {Name}",
        _ => $"the variant '{Name}'",
    };

    /// <summary>The section in which the read-back tells rules of a sort; null for ties, readings and variants, which are told in others.</summary>
    internal static string? ToldIn(ClauseSort sort) => sort switch
    {
        ClauseSort.Law => "Laws",
        ClauseSort.Power => "Powers",
        ClauseSort.Score or ClauseSort.Aim or ClauseSort.Rating => "Scoring",
        ClauseSort.End => "End of the game",
        ClauseSort.Action => "Actions",
        ClauseSort.Course => "Course",
        ClauseSort.Table => "Tables",
        _ => null,
    };

    /// <summary>The key of the section, as the sheet writes it.</summary>
    public static string SectionOf(ClauseSort sort) => sort switch
    {
        ClauseSort.Law => "laws",
        ClauseSort.Power => "powers",
        ClauseSort.Score => "score",
        ClauseSort.End => "end",
        ClauseSort.Tie => "ties",
        ClauseSort.Aim => "aim",
        ClauseSort.Action => "actions",
        ClauseSort.Course => "course",
        ClauseSort.Table => "tables",
        ClauseSort.Rating => "rating",
        ClauseSort.Reading => "readings",
        _ => "variants",
    };
}
