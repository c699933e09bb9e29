using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>A row of a board of hexes as it is drawn.</summary>
/// <param name="Row">0-based from the lowest.</param>
/// <param name="Label">What it is called.</param>
/// <param name="HalfSteps">How many half steps it begins to the right of the leftmost row.</param>
/// <param name="Places">From the left, every place between the first and the last hex: its space, or null for a hole.</param>
/// <param name="Names">By place, the name that the space has, or that the hole would have.</param>
internal sealed record HexRow(int Row, string Label, int HalfSteps, ImmutableArray<int?> Places, ImmutableArray<string> Names)
{
    /// <summary>The rows from the far side on; rows without any hex are left out.</summary>
    public static ImmutableArray<HexRow> Of(BoardFacts board)
    {
        var all = board.Spaces.Select(s => (s.Column, s.Row, Space: (int?)s.Name.Index, s.Name.Name))
            .Concat(board.Holes.Select(h => (h.Column, h.Row, Space: (int?)null, h.Name))).ToLookup(p => p.Row);
        int left = all.SelectMany(r => r).Select(p => p.Column).DefaultIfEmpty(0).Min();
        return [.. Enumerable.Range(0, board.Rows.Length).Reverse().Where(all.Contains).Select(row => Of(board, row, left, all[row].ToDictionary(p => p.Column)))];
    }

    private static HexRow Of(BoardFacts board, int row, int left, Dictionary<int, (int Column, int Row, int? Space, string Name)> places)
    {
        int first = places.Keys.Min();
        int[] columns = [.. Enumerable.Range(0, ((places.Keys.Max() - first) / 2) + 1).Select(i => first + (2 * i))];
        return new HexRow(
            row,
            board.Rows[row],
            first - left,
            [.. columns.Select(c => places.TryGetValue(c, out var place) ? place.Space : null)],
            [.. columns.Select((c, i) => places.TryGetValue(c, out var place) ? place.Name : $"in row {board.Rows[row]}, place {i + 1}")]);
    }
}
