using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>Points joined by lines, or a map: neighbours in a line touch, and what stands in one line is in line. A line that ends where it
/// began is closed.</summary>
internal sealed class PointNet : SpaceNet
{
    private readonly ImmutableArray<Line> _lines;
    private readonly int[][] _near;

    public PointNet(BoardFacts board)
    {
        _lines = [.. board.Ways.Where(w => w.Length > 0).Select(w => new Line(w))];
        ILookup<int, int> near = _lines.SelectMany(l => l.Joins).SelectMany(j => new[] { j, (j.Item2, j.Item1) }).ToLookup(j => j.Item1, j => j.Item2);
        _near = [.. Enumerable.Range(0, board.Spaces.Length).Select(s => near[s].Distinct().ToArray())];
    }

    public override int Count => _near.Length;

    public override IEnumerable<int> Neighbours(int space) => _near[space];

    public override IEnumerable<int> Sides(int space) => _near[space];

    public override IEnumerable<int> Corners(int space) => [];

    public override int? Step(int space, Direction direction) => null;

    public override int? Across(int s, int t) => _lines.Select(l => l.Across(s, t)).FirstOrDefault(a => a is not null);

    public override ImmutableArray<int> Between(int s, int t) =>
        _lines.Select(l => l.Between(s, t)).Where(b => !b.IsDefault).OrderBy(b => b.Length).Cast<ImmutableArray<int>?>().FirstOrDefault() ?? [];

    public override IEnumerable<ImmutableArray<int>> Straights(int length) => _lines.SelectMany(l => l.Stretches(length));

    // An inner point of a map is none that the map knows.
    public override bool IsRim(int space) => false;

    /// <summary>One line of points.</summary>
    private sealed class Line
    {
        private readonly ImmutableArray<int> _spaces;
        private readonly bool _isClosed;

        public Line(ImmutableArray<int> spaces)
        {
            _isClosed = spaces.Length > 2 && spaces[0] == spaces[^1];
            _spaces = _isClosed ? spaces[..^1] : spaces;
        }

        public IEnumerable<(int, int)> Joins =>
            Enumerable.Range(0, _isClosed ? _spaces.Length : _spaces.Length - 1).Select(i => (_spaces[i], _spaces[(i + 1) % _spaces.Length]));

        public int? Across(int s, int t)
        {
            (int from, int to) = (_spaces.IndexOf(s), _spaces.IndexOf(t));
            return from < 0 || to < 0 || s == t ? null : At(to + Offset(from, to)) is { } across && across != s ? across : null;
        }

        /// <summary>From the side of <paramref name="s"/> on; default where the two do not both stand in the line.</summary>
        public ImmutableArray<int> Between(int s, int t)
        {
            (int from, int to) = (_spaces.IndexOf(s), _spaces.IndexOf(t));
            if (from < 0 || to < 0)
            {
                return default;
            }

            int steps = Offset(from, to);
            return [.. Enumerable.Range(1, Math.Max(0, Math.Abs(steps) - 1)).Select(i => At(from + (i * Math.Sign(steps)))!.Value)];
        }

        public IEnumerable<ImmutableArray<int>> Stretches(int length) => length > _spaces.Length
            ? []
            : Enumerable.Range(0, _isClosed ? _spaces.Length : _spaces.Length - length + 1).Select(from => Enumerable.Range(from, length).Select(i => At(i)!.Value).ToImmutableArray());

        // The shorter way round a closed line; of two equally long ones that which stays inside.
        private int Offset(int from, int to)
        {
            int steps = to - from;
            return _isClosed && 2 * Math.Abs(steps) > _spaces.Length ? steps - (Math.Sign(steps) * _spaces.Length) : steps;
        }

        private int? At(int index) => _isClosed
            ? _spaces[((index % _spaces.Length) + _spaces.Length) % _spaces.Length]
            : index >= 0 && index < _spaces.Length ? _spaces[index] : null;
    }
}
