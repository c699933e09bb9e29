using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Rostrum.Play;
using Rostrum.Play.Counting;

namespace Rostrum.Cli.Reports;

/// <summary>The answer of <c>count --json</c>.</summary>
internal sealed record CountReport(int Format, string Game, ImmutableArray<string> Variants, int Seats, string Kind, ImmutableArray<PlyItem> Plies)
{
    /// <summary>The counts as they are reported; everything counted is exact.</summary>
    public static CountReport Of(GameTable table, IEnumerable<PlyCount> counts) => new(
        ReportJson.Format, table.Sheet.Game, table.Sheet.VariantsOn, table.Seats, "exact", [.. counts.Select(c => PlyItem.Of(c, table))]);
}

/// <summary>A ply: lines and ends may be greater than a double can hold exactly, so they are whole numbers of any length.</summary>
internal sealed record PlyItem(int Ply, JsonNode Lines, long? Distinct, JsonNode Ended, ImmutableArray<EndedItem> Results)
{
    /// <summary>A ply as it is reported.</summary>
    public static PlyItem Of(PlyCount count, GameTable table) => new(
        count.Ply, Whole(count.Lines), count.Distinct, Whole(count.Ended),
        [.. count.Results.Select(r => new EndedItem([.. r.Winners.Select(table.NameOf)], Whole(r.Lines), r.Positions))]);

    /// <summary>A whole number of any length as JSON writes numbers.</summary>
    public static JsonNode Whole(UInt128 number) => JsonNode.Parse(number.ToString(CultureInfo.InvariantCulture))!;
}

/// <summary>Lines that end at a ply, by who wins.</summary>
internal sealed record EndedItem(ImmutableArray<string> Winners, JsonNode Lines, long? Positions);
