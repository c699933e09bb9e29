using Rostrum.Play.Layout;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <summary>The shape of all boards as tables by spot, worked out once; entries of spots that are no spaces are empty.</summary>
/// <remarks>Each table is made when it is first asked for; two threads that ask at once make the same.</remarks>
internal sealed class BoardTables(TableLayout layout)
{
    // Tables of pairs grow with the square of the spaces; larger boards are asked pair by pair.
    private const int MostPaired = 400;

    private readonly List<Direction> _directions = [.. Direction.All];
    private int[][]? _neighbours;
    private int[][]? _sides;
    private int[][]? _corners;
    private int[][]? _steps;
    private int[]? _advance;
    private int[][]? _across;
    private int[][][]? _between;

    /// <summary>By spot: the spaces that touch it.</summary>
    public int[][] Neighbours => _neighbours ??= Near((g, s) => g.Neighbours(s));

    /// <summary>By spot: the spaces that share a side with it.</summary>
    public int[][] Sides => _sides ??= Near((g, s) => g.Sides(s));

    /// <summary>By spot: the spaces that share only a corner with it.</summary>
    public int[][] Corners => _corners ??= Near((g, s) => g.Corners(s));

    /// <summary>By direction, then by spot: the space one step away; <see cref="Node.Nothing"/> where there is none.</summary>
    public int[][] Steps => _steps ??= [.. _directions.Select(StepsOf)];

    /// <summary>By spot: how many rows it lies from the lowest, which is 1.</summary>
    public int[] Advance => _advance ??= BySpot((h, space) => h.Board!.Spaces[space].Row + 1);

    /// <summary>By spot, then by space of the same board: the space on the other side.</summary>
    public int[][] AcrossOf => _across ??= Pairs<int>((h, s) => [.. Enumerable.Range(0, h.Length).Select(t => h.Geometry!.Across(s, t) is { } to ? h.First + to : Node.Nothing)]);

    /// <summary>By spot, then by space of the same board: the spaces between.</summary>
    public int[][][] BetweenOf => _between ??= Pairs<int[]>((h, s) => [.. Enumerable.Range(0, h.Length).Select(t => Spots(h, h.Geometry!.Between(s, t)))]);

    /// <summary>The number of a direction.</summary>
    public int Number(Direction direction)
    {
        int known = _directions.IndexOf(direction);
        if (known >= 0)
        {
            return known;
        }

        _directions.Add(direction);
        _steps = null;
        return _directions.Count - 1;
    }

    /// <summary>The direction of a number.</summary>
    public Direction Numbered(int number) => _directions[number];

    /// <summary>The name of a direction by its number.</summary>
    public string Name(int direction) => _directions[direction].Name;

    /// <summary>Spaces of a board as spots.</summary>
    public static int[] Spots(Holder holder, IEnumerable<int> spaces) => [.. spaces.Select(s => holder.First + s)];

    /// <summary>A number by spot; <see cref="Node.Nothing"/> for spots that are no spaces.</summary>
    public int[] BySpot(Func<Holder, int, int> of)
    {
        int[] all = new int[layout.Spots];
        for (int spot = 0; spot < all.Length; spot++)
        {
            Holder holder = layout.SpotHolder[spot];
            all[spot] = holder.Board is null ? Node.Nothing : of(holder, spot - holder.First);
        }

        return all;
    }

    /// <summary>The space on the other side of the second as the first is on this side; nothing where there is none.</summary>
    public int Across(int s, int t)
    {
        Holder holder = layout.SpotHolder[s];
        if (holder.Geometry is null || !holder.Holds(t))
        {
            return Node.Nothing;
        }

        return holder.Length <= MostPaired ? AcrossOf[s][t - holder.First]
            : holder.Geometry.Across(s - holder.First, t - holder.First) is { } to ? holder.First + to : Node.Nothing;
    }

    /// <summary>The spaces strictly between two in one line.</summary>
    public int[] Between(int s, int t)
    {
        Holder holder = layout.SpotHolder[s];
        if (holder.Geometry is null || !holder.Holds(t))
        {
            return [];
        }

        return holder.Length <= MostPaired ? BetweenOf[s][t - holder.First] : Spots(holder, holder.Geometry.Between(s - holder.First, t - holder.First));
    }

    /// <summary>The fewest steps from neighbour to neighbour; nothing where there is no way.</summary>
    public int Distance(int s, int t)
    {
        Holder holder = layout.SpotHolder[s];
        return holder.Geometry is { } geometry && holder.Holds(t) ? geometry.Distance(s - holder.First, t - holder.First) ?? Node.Nothing : Node.Nothing;
    }

    private delegate ReadOnlySpan<int> NearOf(BoardGeometry geometry, int space);

    private int[][] Near(NearOf of) =>
        [.. layout.SpotHolder.Select((h, spot) => h.Geometry is null ? [] : Spots(h, of(h.Geometry, spot - h.First).ToArray()))];

    private int[] StepsOf(Direction direction) =>
        BySpot((h, space) => h.Geometry!.Step(space, direction) is { } to ? h.First + to : Node.Nothing);

    private T[][] Pairs<T>(Func<Holder, int, T[]> of) =>
        [.. layout.SpotHolder.Select((h, spot) => h.Geometry is null || h.Length > MostPaired ? [] : of(h, spot - h.First))];
}
