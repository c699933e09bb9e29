using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads the <c>holes</c> of a board: <c>{pool: c3}</c>.</summary>
/// <param name="context">Receives messages and names.</param>
/// <param name="board">The board.</param>
/// <param name="shape">Its spaces and holes.</param>
/// <param name="touching">What touches.</param>
/// <param name="wraps">Whether it comes round.</param>
internal sealed class HolesReader(LoadContext context, Place board, BoardShape shape, Touching touching, bool wraps)
{
    private static readonly (int Columns, int Rows)[] Sides = [(0, 1), (-1, 0), (1, 0), (0, -1)];
    private static readonly (int Columns, int Rows)[] Corners = [(-1, 1), (1, 1), (-1, -1), (1, -1)];
    private static readonly (int Columns, int Rows)[] HexSides = [.. Corners, (-2, 0), (2, 0)];

    private readonly HashSet<(int, int)> _joins = [.. shape.WaysBefore.SelectMany(w => w.Zip(w.Skip(1)))];

    private bool IsHex => shape.Layout == BoardLayout.Hexes;

    private (int Columns, int Rows)[] Steps => IsHex ? HexSides : touching switch
    {
        Touching.Sides => Sides,
        Touching.Corners => Corners,
        _ => [.. Sides, .. Corners],
    };

    // On hexes columns count half steps, and the last half step of the longer rows belongs to the width.
    private int Width
    {
        get
        {
            int widest = shape.Spaces.Select(s => s.Column + 1).Concat(shape.Holes.Select(h => h.Column + 1)).DefaultIfEmpty(1).Max();
            return Math.Max(shape.Columns.Length, IsHex ? widest + (widest % 2) : widest);
        }
    }

    /// <summary>The holes that have names of their own.</summary>
    public IEnumerable<HoleName> Read(OutlineNode? node)
    {
        if (node is null)
        {
            yield break;
        }

        var holeNames = new SpaceIndex(shape.Holes.Select(h => h.Name));
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, node, "the names of holes", "pool: c3"))
        {
            ImmutableArray<int> holes = SpaceList.Read(context, entry.Value, holeNames, $"a hole of '{board.Name}'");
            var hole = new HoleName(Prose.Fold(entry.Key.Text), board, [.. Enumerable.Range(0, shape.Spaces.Length).Where(s => holes.Any(h => Touch(shape.Spaces[s], shape.Holes[h])))], entry.Key.Span);
            context.Declare(hole);
            yield return hole;
        }
    }

    private bool Touch(ShapeSpace space, BoardHole hole) => shape.Layout == BoardLayout.Points
        ? _joins.Contains((space.Column, hole.Column)) || _joins.Contains((hole.Column, space.Column))
        : Steps.Any(s => IsSame(space.Column + s.Columns, hole.Column, Width) && IsSame(space.Row + s.Rows, hole.Row, shape.Rows.Length));

    private bool IsSame(int one, int other, int size) => one == other || (wraps && size > 0 && (one - other) % size == 0);
}
