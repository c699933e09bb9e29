using System.Globalization;
using Rostrum.Play;
using Rostrum.Play.Counting;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows counts as a table: a row for each ply, and below it who won the lines that end there.</summary>
internal static class CountScreen
{
    /// <summary>The table.</summary>
    public static string Of(GameTable table, IReadOnlyList<PlyCount> counts)
    {
        var paper = new Paper();
        paper.Wrapped($"{string.Join(", ", [table.Sheet.Game, .. table.Sheet.VariantsOn])}, {Prose.Count(table.Seats, "player", "players")}: exact counts", 0);
        paper.Line();
        bool hasPositions = counts.All(c => c.Distinct is not null);
        string[][] rows = [["ply", "lines of play", .. hasPositions ? new[] { "positions" } : [], "lines that end here"], .. counts.Select(c => Row(c, hasPositions))];
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(i => rows.Max(r => r[i].Length))];
        foreach (string[] row in rows)
        {
            paper.Line(string.Join("   ", row.Select((cell, i) => cell.PadLeft(widths[i]))));
        }

        Results(paper, table, counts);
        return paper.ToString();
    }

    private static void Results(Paper paper, GameTable table, IReadOnlyList<PlyCount> counts)
    {
        if (counts.All(c => c.Results.IsEmpty))
        {
            return;
        }

        paper.Line();
        paper.Line("won by:");
        foreach (IGrouping<string, EndedCount> winner in counts.SelectMany(c => c.Results).GroupBy(r => r.Winners.IsEmpty ? "nobody" : Prose.And(r.Winners.Select(table.NameOf))))
        {
            paper.Line($"    {winner.Key}: {Number(winner.Aggregate((UInt128)0, (sum, r) => sum + r.Lines))}");
        }
    }

    private static string[] Row(PlyCount count, bool hasPositions) =>
        [$"{count.Ply}", Number(count.Lines), .. hasPositions ? new[] { count.Distinct is { } distinct ? Number((UInt128)distinct) : "" } : [], Number(count.Ended)];

    private static string Number(UInt128 number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
