using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>read --json</c> writes.</summary>
internal sealed record ReadReport(
    int Format,
    string Game,
    IReadOnlyList<string> Variants,
    IReadOnlyList<ClauseItem> Clauses,
    IReadOnlyList<DifferenceItem> Differences,
    IReadOnlyList<UnchangedItem> Unchanged,
    IReadOnlyList<SourceItem> Sources);

/// <summary>A clause; <c>status</c> is <c>settled</c>, <c>open</c>, <c>decided</c> or <c>notModelled</c>.</summary>
/// <param name="Section">The heading, such as <c>Laws</c>.</param>
/// <param name="Name">The clause's name.</param>
/// <param name="Says">One sentence.</param>
/// <param name="Meaning">How the meaning reads where the author's own sentence stands in <paramref name="Says"/>; null where both are the same.</param>
/// <param name="Cite">Source and page; <c>no page</c> where the sheet names none.</param>
/// <param name="Status">How sure it is.</param>
/// <param name="Cause">Why there are readings: <c>reading</c> or <c>conflict</c>; null where there is one meaning.</param>
/// <param name="Readings">The names of the alternatives; empty where there is one meaning.</param>
/// <param name="Decided">The alternative that is followed, or null.</param>
/// <param name="Why">The author's reason for it, or null.</param>
internal sealed record ClauseItem(
    string Section,
    string Name,
    string Says,
    string? Meaning,
    string Cite,
    string Status,
    string? Cause,
    IReadOnlyList<string> Readings,
    string? Decided,
    string? Why)
{
    /// <summary>A clause as it is reported.</summary>
    public static ClauseItem Of(ReadClause clause) => new(
        clause.Section,
        clause.Name,
        clause.Says,
        clause.Meaning,
        Citation.Tell(clause.Cite),
        StatusOf(clause.Status),
        clause.Choice?.Cause.ToString().ToLowerInvariant(),
        clause.Choice is { } choice ? choice.Names : [],
        clause.Choice is { Followed: { } followed } decided ? decided.Names[followed] : null,
        clause.Choice?.Why);

    private static string StatusOf(ClauseStatus status)
    {
        string name = status.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}

/// <summary>A clause that a variant changes; nothing else changes.</summary>
/// <param name="Variant">The variant.</param>
/// <param name="Section">The section of the clause.</param>
/// <param name="Name">The clause's name.</param>
/// <param name="Before">As it was; null for a new clause.</param>
/// <param name="After">As it is with the variant; null for one that is gone.</param>
internal sealed record DifferenceItem(string Variant, string Section, string Name, ClauseItem? Before, ClauseItem? After)
{
    /// <summary>A difference as it is reported.</summary>
    public static DifferenceItem Of(string variant, ReadDifference difference)
    {
        ReadClause either = difference.After ?? difference.Before!;
        return new DifferenceItem(
            variant,
            either.Section,
            either.Name,
            difference.Before is { } before ? ClauseItem.Of(before) : null,
            difference.After is { } after ? ClauseItem.Of(after) : null);
    }
}

/// <summary>What a variant leaves as it is.</summary>
/// <param name="Variant">The variant.</param>
/// <param name="Entries">How many entries of the sheet are the same, word for word.</param>
/// <param name="Untold">Entries that are written differently though no clause reads differently.</param>
internal sealed record UnchangedItem(string Variant, int Entries, IReadOnlyList<string> Untold);

/// <summary>A source; a rank of 1 weighs most, null where the sheet does not say.</summary>
internal sealed record SourceItem(string Name, string Title, string? Printing, string? Date, int? Pages, int? Rank)
{
    /// <summary>A source as it is reported.</summary>
    public static SourceItem Of(RuleSource source) => new(source.Name, source.Title, source.Printing, source.Date, source.Pages, source.Rank);
}
