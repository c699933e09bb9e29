using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>The ids of the spaces of a board: its name and theirs, in letters, digits and hyphens.</summary>
internal static class SpaceIds
{
    /// <summary>One for each space, in order; where two would be alike, the later one has its place in the order behind it.</summary>
    public static ImmutableArray<string> Of(BoardPicture board)
    {
        var used = new HashSet<string>();
        return [.. board.Spaces.Select((space, at) => Plain(board.Name, space.Name) is var id && used.Add(id) ? id : Further(id, at, used))];
    }

    private static string Plain(string board, string space) => $"{board}-{new string([.. space.Select(c => char.IsLetterOrDigit(c) ? c : '-')])}";

    private static string Further(string id, int at, HashSet<string> used)
    {
        string longer = string.Create(CultureInfo.InvariantCulture, $"{id}--{at}");
        return used.Add(longer) ? longer : Further(longer, at, used);
    }
}
