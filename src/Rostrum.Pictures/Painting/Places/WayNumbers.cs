using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>What is written at the spaces of a ring or a track: their names, or their numbers where a name is too long.</summary>
internal static class WayNumbers
{
    /// <summary>The label of each space, in order.</summary>
    public static ValueList<string> Of(BoardPicture board, TableMeasures measures) => Fit(board, measures)
        ? [.. board.Spaces.Select(space => space.Name)]
        : [.. Enumerable.Range(1, board.Spaces.Count).Select(number => number.ToString(CultureInfo.InvariantCulture))];

    /// <summary>Which number is which name, where numbers are written.</summary>
    public static IEnumerable<string> Notes(BoardPicture board, TableMeasures measures) => Fit(board, measures)
        ? []
        : [string.Join("; ", board.Spaces.Select((space, at) => string.Create(CultureInfo.InvariantCulture, $"{at + 1} {space.Name}"))) + "."];

    private static bool Fit(BoardPicture board, TableMeasures measures) =>
        board.Spaces.All(space => ShippedFonts.Width(space.Name, measures.LabelSize, FontWeight.Bold) <= measures.Shelf * 0.94);
}
