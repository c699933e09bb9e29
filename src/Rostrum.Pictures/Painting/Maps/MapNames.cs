using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Names such as <c>a7</c> tell where a point lies: the letter to the right, the number upwards.</summary>
/// <param name="Spots">By space, its place; empty where the names tell none.</param>
/// <param name="Letters">Each letter with a space that bears it.</param>
/// <param name="Numbers">Each number with a space that bears it.</param>
internal sealed record MapNames(ImmutableArray<(double Across, double Up)> Spots, ImmutableArray<(string Label, int Space)> Letters, ImmutableArray<(string Label, int Space)> Numbers)
{
    private const int HighestNumber = 60;

    /// <summary>True where every name tells a place of its own, and nothing else does.</summary>
    public bool IsGrid => !Spots.IsEmpty;

    /// <summary>What the names of a board tell.</summary>
    public static MapNames Of(BoardPicture board)
    {
        (int Letter, int Number)?[] read = [.. board.Spaces.Select(space => Read(space.Name))];
        bool isGrid = board.Spaces.All(space => space.Spot is null) && read.All(spot => spot is not null) && read.Distinct().Count() == read.Length && read.Length > 1;
        return isGrid ? Of([.. read.Select(spot => spot!.Value)]) : new MapNames([], [], []);
    }

    private static MapNames Of((int Letter, int Number)[] spots) => new(
        [.. spots.Select(spot => ((double)spot.Letter, (double)spot.Number))],
        [.. spots.Select((spot, at) => (spot.Letter, at)).DistinctBy(each => each.Letter).OrderBy(each => each.Letter).Select(each => (((char)('a' + each.Letter)).ToString(), each.at))],
        [.. spots.Select((spot, at) => (spot.Number, at)).DistinctBy(each => each.Number).OrderBy(each => each.Number).Select(each => (each.Number.ToString(CultureInfo.InvariantCulture), each.at))]);

    private static (int Letter, int Number)? Read(string name) =>
        name.Length > 1 && char.IsAsciiLetter(name[0]) && name[1] is not '0' && int.TryParse(name.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number <= HighestNumber
            ? (char.ToLowerInvariant(name[0]) - 'a', number)
            : null;
}
