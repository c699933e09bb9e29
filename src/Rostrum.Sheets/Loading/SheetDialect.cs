using System.Collections.Immutable;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>The keys of sheets: the one list from which reading, suggestions and the reference page come.</summary>
public static class SheetDialect
{
    private static readonly ImmutableArray<string> Forks = ["readings", "conflict"];

    /// <summary>Keys whose value is prose.</summary>
    public static ImmutableHashSet<string> ProseKeys { get; } = ["says", "why", "title", "reads", "because"];

    /// <summary>The keys of the sheet itself.</summary>
    public static ImmutableArray<string> TopKeys { get; } =
    [
        "rule sheet", "game", "says", "cite", "players", "seats", "sources", "facts", "numbers", "pieces", "dice", "cards", "signs", "boards", "places", "marks",
        "words", "tables", "set-up", "turn", "course", "closing", "next to play", "teams", "actions", "laws", "powers", "end", "score", "ties", "rating", "aim",
        "variants", "not modelled", "open questions",
    ];

    /// <summary>Keys that every clause may have.</summary>
    public static ImmutableArray<string> ClauseKeys { get; } = ["says", "cite", "readings", "follow", "why", "conflict", "called", "never", "how to say"];

    /// <summary>The keys of each section's entries, clause keys left out.</summary>
    public static ImmutableDictionary<string, ImmutableArray<string>> EntryKeys { get; } = new Dictionary<string, ImmutableArray<string>>
    {
        ["sources"] = ["title", "printing", "pages", "rank", "date"],
        ["facts"] = ["is", "of"],
        ["pieces"] = ["plural", "attributes", "states", "count", "each player", "shape", "outlines", "colours", "emblems", "flaws"],
        ["dice"] = ["plural", "count", "faces", "each player"],
        ["cards"] = ["plural", "file", "rows", "columns", "names", "attributes", "states", "changes", "count"],
        ["boards"] =
        [
            "of", "squares", "drawn", "hexes", "ring", "track", "points", "file", "stands", "columns", "rows", "lines", "neighbours", "wraps", "regions", "areas",
            "links", "values", "holes", "without", "spaces", "plural", "holds",
        ],
        ["places"] = ["row of", "bag of", "deck of", "heap of", "hand of", "slots", "holds", "of", "when short", "starts"],
        ["marks"] = ["holds", "of", "lasts", "starts"],
        ["words"] = ["means"],
        ["tables"] = ["rows", "beyond"],
        ["actions"] = ["phrase", "choose", "do", "joins", "final"],
        ["laws"] = ["binds", "needs", "forbids", "must leave", "must not leave", "unless", "idiom"],
        ["powers"] = ["lifts", "for", "if", "price", "limit"],
        ["end"] = ["if", "then", "winner", "checked", "do"],
        ["score"] = ["each", "points", "at least", "at most", "idiom"],
        ["variants"] = ["when", "after"],
        ["rating"] = ["credit", "steps"],
        ["open questions"] = ["about"],
    }.ToImmutableDictionary();

    /// <summary>Keys that are understood and not used yet, by section; those under the empty name stand in every section.</summary>
    public static ImmutableDictionary<string, ImmutableArray<string>> LaterKeys { get; } = new Dictionary<string, ImmutableArray<string>>
    {
        [""] = ["how to say"],
        ["pieces"] = Forks,
        ["dice"] = Forks,
        ["cards"] = Forks,
        ["boards"] = Forks,
        ["places"] = Forks,
        ["marks"] = Forks,
        ["actions"] = Forks,
        ["powers"] = Forks,
        ["end"] = ["readings"],
        ["sources"] = Forks,
        ["rating"] = Forks,
        ["open questions"] = Forks,
    }.ToImmutableDictionary();

    /// <summary>What the outline reader has to know about sheets.</summary>
    public static OutlineDialect Sheets { get; } = new(ProseKeys, [.. TopKeys, .. ClauseKeys, .. EntryKeys.Values.SelectMany(k => k)]);

    /// <summary>What the outline reader has to know about idiom files.</summary>
    public static OutlineDialect Idioms { get; } = Sheets with { KnownKeys = Sheets.KnownKeys.Union(["as", "otherwise", "with", "shown", "whose"]) };
}
