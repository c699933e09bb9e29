using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>Joins the cells of a drawn board that show pieces larger than a space into those pieces.</summary>
/// <param name="reading">What the reader shares.</param>
/// <param name="board">The board.</param>
/// <param name="spotOf">Gives where the content of a space is written.</param>
internal sealed class LargePieces(PositionReading reading, BoardFacts board, Func<int, PositionSpot> spotOf)
{
    private BoardGeometry? _geometry;

    // Worked out at the first large piece: most boards of most positions have none.
    private BoardGeometry Geometry => _geometry ??= BoardGeometry.Of(board);

    /// <summary>Replaces the thing of each cell by the piece that lies on it and on its other spaces. What cannot be joined is reported and not given.</summary>
    /// <param name="stacks">By space; changed in place.</param>
    public void Join(Stack[] stacks)
    {
        var loose = from space in Enumerable.Range(0, stacks.Length)
                    from index in Enumerable.Range(0, stacks[space].Things.Length)
                    let thing = stacks[space].Things[index]
                    where thing.Covers.IsEmpty && ShapeOf(thing) is not null
                    select (Thing: thing, Space: space, Index: index);
        foreach (var look in loose.ToArray().GroupBy(l => l.Thing))
        {
            Join(look.Key, [.. look.Select(l => (l.Space, l.Index))], stacks);
        }
    }

    /// <summary>The shape of a thing's kind; null for the usual piece on one space.</summary>
    public PieceShape? ShapeOf(Thing thing) => thing.Kind is { } kind ? reading.Sheet.KindOf(kind).Shape : null;

    /// <summary>True where some turn of the shape lies on just these spaces.</summary>
    public bool LiesOn(PieceShape shape, ImmutableArray<int> spaces) => ShapeParts.Of(Geometry, shape, spaces).Parts.Length == 1;

    /// <summary>Counts a piece once, at its first cell, in place of a thing for each cell.</summary>
    public void Count(Thing cell, int cells, Thing piece, SourceSpan at)
    {
        for (int i = 0; i < cells && reading.Written.FindLastIndex(w => w.Thing.Equals(cell)) is >= 0 and var found; i++)
        {
            reading.Written.RemoveAt(found);
        }

        reading.Written.Add(new WrittenThing(piece, 1, at));
    }

    private void Join(Thing thing, (int Space, int Index)[] cells, Stack[] stacks)
    {
        SourceSpan at = reading.Spots[spotOf(cells[0].Space)];
        bool isDoubled = cells.Select(c => c.Space).Distinct().Count() < cells.Length;
        (ImmutableArray<ImmutableArray<int>> parts, bool areSeveral) = ShapeParts.Of(Geometry, ShapeOf(thing)!, cells.Select(c => c.Space));
        if (isDoubled || areSeveral || parts.IsEmpty)
        {
            Kind kind = thing.Kind!;
            reading.Problems.Add(isDoubled || areSeveral
                ? PositionProblems.SeveralParts(at, kind, Example(kind))
                : PositionProblems.NoParts(at, kind, cells.Length, ShapeOf(thing)!.Drawing.Cells.Length, Example(kind)));
            foreach ((int space, _) in cells)
            {
                stacks[space] = Stack.NotGiven;
            }

            return;
        }

        foreach (ImmutableArray<int> part in parts)
        {
            Thing piece = thing with { Covers = part };
            Count(thing, part.Length, piece, reading.Spots[spotOf(part[0])]);
            foreach (int space in part)
            {
                stacks[space] = stacks[space] with { Things = stacks[space].Things.SetItem(cells.First(c => c.Space == space).Index, piece) };
            }
        }
    }

    private string Example(Kind kind)
    {
        DrawingPlacement? first = Geometry.Placements(reading.Sheet.KindOf(kind).Shape!.Drawing, true, false).FirstOrDefault();
        return $"{(first is null ? "…" : string.Join(' ', first.Spaces.Select(s => board.Spaces[s].Name.Name)))}: {kind.Name}";
    }
}
