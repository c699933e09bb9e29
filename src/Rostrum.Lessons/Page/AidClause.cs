namespace Rostrum.Lessons.Page;

/// <summary>A clause on the player aid.</summary>
/// <param name="Sentence">The clause read back, such as <c>Copper never stands beside ash.</c></param>
/// <param name="Page">Source and page, such as <c>p. 5</c>; empty for none.</param>
public sealed record AidClause(string Sentence, string Page)
{
    /// <summary>What the sheet calls the clause, such as <c>jugs</c>; empty where that helps nobody at the table.</summary>
    public string Name { get; init; } = "";

    /// <summary>What the rulebook leaves open there, as a sentence; empty for nothing.</summary>
    public string Note { get; init; } = "";
}
