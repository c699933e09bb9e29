using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>The keys of a position that are the same for every game; all others are names of the sheet.</summary>
internal static class PositionDialect
{
    /// <summary>The keys at the margin.</summary>
    public static ImmutableArray<string> TopKeys { get; } = ["says", "cite", "variants", "players", "turn of", "done", "expect"];

    /// <summary>The keys of what is expected of one clause or one action.</summary>
    public static ImmutableArray<string> ExpectKeys { get; } = ["is", "illegal", "because", "cite"];

    /// <summary>What the outline reader has to know.</summary>
    public static OutlineDialect Outline { get; } = new(SheetDialect.ProseKeys, [.. ExpectKeys, .. TopKeys, .. DoneTimes.All.Select(t => t.Words)]);
}
