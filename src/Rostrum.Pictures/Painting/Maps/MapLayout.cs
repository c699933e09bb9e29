using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Where the spaces of a map lie: as the sheet says, as their names say, or as their joins suggest.</summary>
/// <remarks>Only the four operations of arithmetic and the square root are used, which give the same bits on every machine.</remarks>
internal static class MapLayout
{
    /// <summary>The middles of the spaces, in scene units, y downwards.</summary>
    /// <param name="board">The map.</param>
    /// <param name="names">What its names tell.</param>
    /// <param name="prints">What each space takes round its middle.</param>
    /// <param name="shelf">The size of a space.</param>
    public static ImmutableArray<Point> Place(BoardPicture board, MapNames names, ImmutableArray<Box> prints, double shelf)
    {
        if (!names.IsGrid && board.Spaces.Any(space => space.Spot is null))
        {
            return MapSpread.Spread(JoinLayout.Place(board.Spaces.Count, Joins(board)), prints, shelf * 0.4, shelf * 1.7, shelf * 2.2);
        }

        ImmutableArray<Point> given = names.IsGrid
            ? [.. names.Spots.Select(spot => new Point(spot.Across, -spot.Up))]
            : [.. board.Spaces.Select(space => new Point(space.Spot!.Value.Across, -space.Spot!.Value.Up))];
        return MapSpread.Spread(given, prints, shelf * 0.3, 0, MapSpread.Roomy(given, prints, shelf * 0.3));
    }

    /// <summary>Each pair of spaces that a line joins, once, in order.</summary>
    public static ImmutableArray<(int From, int To)> Joins(BoardPicture board) =>
    [
        .. board.Ways.SelectMany(way => way.Zip(way.Skip(1))).Where(pair => pair.First != pair.Second)
            .DistinctBy(pair => (Math.Min(pair.First, pair.Second), Math.Max(pair.First, pair.Second)))
            .Select(pair => (pair.First, pair.Second)),
    ];

    /// <summary>The parts of some spaces that hang together by joins among them.</summary>
    public static IEnumerable<ImmutableArray<int>> Parts(IEnumerable<int> spaces, ImmutableArray<(int From, int To)> joins)
    {
        SortedSet<int> left = [.. spaces];
        while (left.Count > 0)
        {
            HashSet<int> part = [left.Min];
            while (joins.Any(join => (part.Contains(join.From) && left.Contains(join.To) && part.Add(join.To)) || (part.Contains(join.To) && left.Contains(join.From) && part.Add(join.From))))
            {
            }

            left.ExceptWith(part);
            yield return [.. part.Order()];
        }
    }
}
