using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <content>Where a drawing lies.</content>
public sealed partial class BoardGeometry
{
    // A pure function of board and drawing, asked again and again; forgotten together with the drawing.
    private readonly ConditionalWeakTable<Drawing, ConcurrentDictionary<(bool Rotated, bool Mirrored), ImmutableArray<DrawingPlacement>>> _placements = [];

    /// <summary>Every way in which a drawing lies on the board with a space under each of its cells, whatever the spaces hold. None on points.</summary>
    /// <param name="drawing">What is laid; one without cells lies nowhere. It never reaches round the edge of a board that wraps.</param>
    /// <param name="rotated">True where turns are allowed: quarters on squares, sixths on hexes.</param>
    /// <param name="mirrored">True where its left-right mirror image is allowed; with <paramref name="rotated"/> also that image's turns.</param>
    /// <returns>As drawn first, then turned by one, two, three … parts of a turn, then the mirror image likewise; each from the top row down and from the
    /// left. Ways that ask the same of the same spaces are given once, as the first of them.</returns>
    public ImmutableArray<DrawingPlacement> Placements(Drawing drawing, bool rotated, bool mirrored)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return _placements.GetValue(drawing, _ => new()).GetOrAdd((rotated, mirrored), way => FindPlacements(drawing, way.Rotated, way.Mirrored));
    }

    private ImmutableArray<DrawingPlacement> FindPlacements(Drawing drawing, bool rotated, bool mirrored)
    {
        if (_lattice is null || DoesNotInterlock(drawing))
        {
            return [];
        }

        var demands = new CellDemands(drawing.Cells);
        var seen = new HashSet<string>();
        return
        [
            .. DrawingPose.All(drawing, _lattice.IsHex, rotated, mirrored).SelectMany(pose => PlacementsOf(drawing, pose))
                .Where(p => seen.Add(demands.KeyOf(p.Spaces))),
        ];
    }

    // Rows of hexes that are not set off by half a step from each other lie nowhere on hexes; rows that are lie nowhere on squares.
    private bool DoesNotInterlock(Drawing drawing) => _lattice!.IsHex
        ? drawing.Cells.Select(c => (c.HalfSteps + c.Row) % 2 == 0).Distinct().Count() > 1
        : drawing.Cells.Any(c => c.HalfSteps > 0);

    private IEnumerable<DrawingPlacement> PlacementsOf(Drawing drawing, DrawingPose pose)
    {
        for (int row = _lattice!.Height - pose.Height; row >= 0; row--)
        {
            for (int column = 0; column <= _lattice!.Width - pose.Width; column++)
            {
                if (SpacesUnder(pose, column, row) is { } spaces)
                {
                    yield return new DrawingPlacement(spaces, pose.Turns, pose.IsMirrored, AnchorOf(drawing, spaces));
                }
            }
        }
    }

    private ImmutableArray<int>? SpacesUnder(DrawingPose pose, int column, int row)
    {
        var spaces = ImmutableArray.CreateBuilder<int>(pose.Cells.Length);
        foreach ((int cellColumn, int cellRow) in pose.Cells)
        {
            if (_lattice!.AtPlain(column + cellColumn, row + cellRow) is not { } space)
            {
                return null;
            }

            spaces.Add(space);
        }

        return spaces.Count == 0 ? null : spaces.ToImmutable();
    }

    private static int? AnchorOf(Drawing drawing, ImmutableArray<int> spaces)
    {
        int at = drawing.Cells.IndexOf(drawing.Cells.FirstOrDefault(c => c.IsAnchor)!);
        return at < 0 ? null : spaces[at];
    }
}
