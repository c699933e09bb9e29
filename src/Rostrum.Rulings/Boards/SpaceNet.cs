using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>How the spaces of a board hang together: what touches, what lies in line. Spaces are named by their index.</summary>
internal abstract class SpaceNet
{
    /// <summary>How many spaces there are.</summary>
    public abstract int Count { get; }

    /// <summary>The spaces that touch a space in the way that the board says; ways to one space may be given twice.</summary>
    public abstract IEnumerable<int> Neighbours(int space);

    /// <summary>Those that share a side.</summary>
    public abstract IEnumerable<int> Sides(int space);

    /// <summary>Those that share only a corner.</summary>
    public abstract IEnumerable<int> Corners(int space);

    /// <summary>The space one step away; null past the edge.</summary>
    public abstract int? Step(int space, Direction direction);

    /// <summary>The space as far on the other side of <paramref name="t"/>; null where there is none.</summary>
    public abstract int? Across(int s, int t);

    /// <summary>The spaces strictly between two that lie in line.</summary>
    public abstract ImmutableArray<int> Between(int s, int t);

    /// <summary>Every stretch of so many spaces in line; the same one may be given twice.</summary>
    public abstract IEnumerable<ImmutableArray<int>> Straights(int length);

    /// <summary>True where a space lacks a neighbour on the outside, where an inner space has one.</summary>
    public abstract bool IsRim(int space);
}
