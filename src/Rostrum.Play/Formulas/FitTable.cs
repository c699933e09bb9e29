using System.Collections.Concurrent;
using System.Collections.Immutable;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <summary>Numbers drawings, and every way in which one lies on a board; the ways are worked out when they are first asked for.</summary>
/// <remarks>The number of a fit tells drawing, board, permissions and way, so it is the same whichever thread asks first.</remarks>
internal sealed class FitTable(TableLayout layout)
{
    private readonly List<Drawing> _drawings = [];
    private readonly ConcurrentDictionary<int, Placed> _sets = new();

    // A way is told by a turn (six, mirrored or not) and the space under the first cell.
    private readonly int _mostWays = 1 + (12 * layout.Holders.Select(h => h.Board is null ? 0 : h.Length).DefaultIfEmpty(0).Max());

    /// <summary>The drawings by number.</summary>
    public IReadOnlyList<Drawing> Drawings => _drawings;

    /// <summary>The ways of one drawing on one board.</summary>
    /// <param name="First">The number of the first fit; the others follow.</param>
    /// <param name="Spaces">By way: the space under each cell, as spots.</param>
    /// <param name="Anchors">By way: the space in brackets; nothing where there is none.</param>
    internal sealed record Placed(int First, int[][] Spaces, int[] Anchors);

    /// <summary>The number of a drawing.</summary>
    public int Number(Drawing drawing)
    {
        int known = _drawings.FindIndex(d => ReferenceEquals(d, drawing));
        if (known < 0)
        {
            _drawings.Add(drawing);
        }

        return known < 0 ? _drawings.Count - 1 : known;
    }

    /// <summary>The ways in which a drawing lies on a board.</summary>
    public Placed Of(int drawing, int holder, bool rotated, bool mirrored)
    {
        int set = (4 * ((drawing * layout.Holders.Length) + holder)) + (rotated ? 2 : 0) + (mirrored ? 1 : 0);
        return _sets.TryGetValue(set, out Placed? placed) ? placed : _sets.GetOrAdd(set, Place(set, drawing, layout.Holders[holder]));
    }

    /// <summary>The spaces of a fit by its number.</summary>
    public int[] Spaces(int fit) => fit < 0 ? [] : SetOf(fit).Spaces[fit % _mostWays];

    /// <summary>The space in brackets of a fit; nothing where there is none.</summary>
    public int Anchor(int fit) => fit < 0 ? Node.Nothing : SetOf(fit).Anchors[fit % _mostWays];

    /// <summary>The drawing of a fit.</summary>
    public Drawing DrawingOf(int fit) => _drawings[fit / _mostWays / 4 / layout.Holders.Length];

    /// <summary>The drawing of a fit, its board, and how it lies there.</summary>
    public (Drawing Drawing, Holder Holder, DrawingPlacement Placement) Tell(int fit)
    {
        int set = fit / _mostWays;
        (Drawing drawing, Holder holder) = (_drawings[set / 4 / layout.Holders.Length], layout.Holders[set / 4 % layout.Holders.Length]);
        return (drawing, holder, Ways(drawing, holder, set)[fit % _mostWays]);
    }

    private static ImmutableArray<DrawingPlacement> Ways(Drawing drawing, Holder holder, int set) =>
        holder.Geometry?.Placements(drawing, (set & 2) != 0, (set & 1) != 0) ?? [];

    private Placed SetOf(int fit)
    {
        int set = fit / _mostWays;
        return _sets.TryGetValue(set, out Placed? placed) ? placed
            : Of(set / 4 / layout.Holders.Length, set / 4 % layout.Holders.Length, (set & 2) != 0, (set & 1) != 0);
    }

    private Placed Place(int set, int drawing, Holder holder)
    {
        ImmutableArray<DrawingPlacement> ways = Ways(_drawings[drawing], holder, set);
        return new Placed(
            set * _mostWays,
            [.. ways.Select(w => BoardTables.Spots(holder, w.Spaces))],
            [.. ways.Select(w => w.Anchor is { } anchor ? holder.First + anchor : Node.Nothing)]);
    }
}
