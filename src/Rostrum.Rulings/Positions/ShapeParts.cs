using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Parts the spaces on which pieces of one look are drawn into the pieces.</summary>
/// <remarks>Every piece lies on one placement of its shape. Exact cover by trying, the first space that is left first; bounded.</remarks>
internal sealed class ShapeParts
{
    private const int MostSteps = 200_000;

    private readonly ILookup<int, ImmutableArray<int>> _placements;
    private readonly HashSet<int> _left;
    private readonly List<ImmutableArray<int>> _parts = [];
    private ImmutableArray<ImmutableArray<int>> _found = [];
    private int _stepsLeft = MostSteps;
    private int _ways;

    private ShapeParts(BoardGeometry geometry, PieceShape shape, IEnumerable<int> spaces)
    {
        _left = [.. spaces];
        _placements = geometry.Placements(shape.Drawing, shape.Rotated, shape.Mirrored).Select(p => p.Spaces.Order().ToImmutableArray())
            .Where(p => p.All(_left.Contains)).DistinctBy(p => string.Join(',', p)).ToLookup(p => p[0]);
    }

    /// <summary>The spaces of each piece, by their first space; and whether there is another way, or none.</summary>
    /// <param name="geometry">Of the board.</param>
    /// <param name="shape">Of the pieces.</param>
    /// <param name="spaces">All of them are to be covered.</param>
    /// <returns>No way at all gives no parts and false.</returns>
    public static (ImmutableArray<ImmutableArray<int>> Parts, bool AreSeveral) Of(BoardGeometry geometry, PieceShape shape, IEnumerable<int> spaces)
    {
        var parts = new ShapeParts(geometry, shape, spaces);
        parts.Search();
        return (parts._found, parts._ways > 1 || parts._stepsLeft <= 0);
    }

    private void Search()
    {
        if (_ways > 1 || --_stepsLeft <= 0)
        {
            return;
        }

        if (_left.Count == 0)
        {
            _ways++;
            _found = _ways == 1 ? [.. _parts] : _found;
            return;
        }

        // Every placement is listed by its first space, and all spaces before the first that is left are covered.
        foreach (ImmutableArray<int> placement in _placements[_left.Min()].Where(p => p.All(_left.Contains)))
        {
            _left.ExceptWith(placement);
            _parts.Add(placement);
            Search();
            _parts.RemoveAt(_parts.Count - 1);
            _left.UnionWith(placement);
        }
    }
}
