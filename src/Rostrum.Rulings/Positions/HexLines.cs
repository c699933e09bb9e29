using System.Collections.Immutable;

namespace Rostrum.Rulings.Positions;

/// <summary>Writes rows of hexes as lines, each set off as the board is.</summary>
internal static class HexLines
{
    /// <summary>One line a row: its label, blanks for its half steps, its cells.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="cells">By row, one text a place.</param>
    public static IEnumerable<string> Of(ImmutableArray<HexRow> rows, string[][] cells)
    {
        int label = rows.Max(r => r.Label.Length);
        int width = cells.SelectMany(r => r).Max(c => c.Length);
        // From cell to cell an even number of characters, so that half a step is a whole number of them.
        int pitch = width + 1 + ((width + 1) % 2);
        return rows.Select((r, i) =>
            $"{r.Label.PadRight(label)} {new string(' ', r.HalfSteps * pitch / 2)}{string.Concat(cells[i].Select(c => c.PadRight(pitch)))}".TrimEnd());
    }
}
