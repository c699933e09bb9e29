using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>A place where rules stand: a rulebook, a player aid, the cards, the publisher's note.</summary>
public sealed class RuleSource(string name, string title, int? pages, int? rank, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How it is called on a slip, such as <c>Rulebook</c>.</summary>
    public string Title { get; } = title;

    /// <summary>How many pages it has; null where the sheet does not say.</summary>
    public int? Pages { get; } = pages;

    /// <summary>1 weighs most; null where the sheet does not say.</summary>
    public int? Rank { get; } = rank;

    /// <summary>Which printing, or null.</summary>
    public string? Printing { get; init; }

    /// <summary>Its date as the sheet gives it, or null.</summary>
    public string? Date { get; init; }

    /// <inheritdoc />
    public override string Role => "a source";
}

/// <summary>The place in a source where a rule stands.</summary>
/// <param name="Source">The source.</param>
/// <param name="Page">The page, or null where the sheet names none.</param>
/// <param name="At">Where the sheet says so.</param>
public sealed record Citation(RuleSource Source, int? Page, SourceSpan At)
{
    /// <summary>As a person says it: <c>Rulebook, page 8</c>.</summary>
    public string InWords => Page is null ? Source.Title : $"{Source.Title}, page {Page}";

    /// <summary>A citation in words; <c>no page</c> where there is none.</summary>
    public static string Tell(Citation? cite) => cite?.InWords ?? "no page";
}

/// <summary>Why one thing has several possible meanings.</summary>
public enum ChoiceCause
{
    /// <summary>The words can be read in several ways.</summary>
    Reading,

    /// <summary>Sources disagree.</summary>
    Conflict,
}

/// <summary>A fork in the meaning of a sheet: named alternatives of which one may be followed.</summary>
/// <param name="Id">0-based among the choices of the sheet.</param>
/// <param name="Owner">The clause, word, table or card whose meaning forks.</param>
/// <param name="Cause">Reading or conflict.</param>
/// <param name="Names">The names of the alternatives; at least one.</param>
/// <param name="Followed">Which one is followed, 0-based; null while it is open.</param>
/// <param name="Why">The author's reason, or null.</param>
/// <param name="Cite">Where the deciding source says so, or null.</param>
/// <param name="At">Where the sheet declares it.</param>
public sealed record Choice(
    int Id,
    string Owner,
    ChoiceCause Cause,
    System.Collections.Immutable.ImmutableArray<string> Names,
    int? Followed,
    string? Why,
    Citation? Cite,
    SourceSpan At)
{
    /// <summary>What each alternative says in the author's words, in the order of <see cref="Names"/>; empty where a name says it all.</summary>
    public System.Collections.Immutable.ImmutableArray<string> Says { get; init; } = [.. Names.Select(_ => "")];

    /// <summary>Where each alternative stands, in the order of <see cref="Names"/>; null for a reading, and for a source that the sheet does not know.</summary>
    public System.Collections.Immutable.ImmutableArray<Citation?> Sources { get; init; } = [.. Names.Select(_ => (Citation?)null)];

    /// <summary>True while nobody has decided.</summary>
    public bool IsOpen => Followed is null;
}
