using System.Collections.Immutable;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads what lies on one board: a drawing, or a list of spaces with what lies there.</summary>
/// <param name="reading">What the reader shares.</param>
/// <param name="index">The board's index in <see cref="Sheet.Boards"/>.</param>
/// <param name="seat">The 0-based seat whose board it is; null for the table.</param>
internal sealed class BoardReader(PositionReading reading, int index, int? seat)
{
    private readonly BoardFacts _board = reading.Sheet.Boards[index];
    private readonly Stack[] _stacks = [.. Enumerable.Repeat(Stack.NotGiven, reading.Sheet.Boards[index].Spaces.Length)];
    private readonly ThingSpot _spot = new(PlaceForm.Board, reading.Sheet.Boards[index].Holds, seat, $"'{reading.Sheet.Boards[index].Place.Name}'");

    private readonly HashSet<int> _named = [];
    private readonly LargePieces _large = new(reading, reading.Sheet.Boards[index], s => new PositionSpot(true, index, seat ?? 0, s));

    private string Told => $"'{_board.Place.Name}'";

    /// <summary>The content of every space, in order; not given where it is not written or cannot be read.</summary>
    public ImmutableArray<Stack> Read(OutlineNode node)
    {
        switch (node)
        {
            case OutlineScalar text when _board.Layout == BoardLayout.Points:
                reading.Problems.Add(PositionProblems.CannotBeDrawn(text.Span, Told, _board.Spaces[0].Name.Name));
                break;
            case OutlineScalar text:
                Draw(text);
                break;
            case OutlineMapping spaces:
                List(spaces);
                break;
            case OutlineSequence { Items.Length: 0 }:
                Array.Fill(_stacks, Stack.Empty);
                break;
            default:
                reading.Problems.Add(PositionProblems.WantedDrawing(node.Span, Told, _board.Rows.IsEmpty ? null : BlankBoard.Of(_board)));
                break;
        }

        _large.Join(_stacks);
        return [.. _stacks];
    }

    private void Draw(OutlineScalar text)
    {
        var cells = new CellReader(reading, _spot);
        IEnumerable<PlacedCell> drawn = _board.Layout == BoardLayout.Hexes ? HexCells(text) : new BoardDrawing(reading, _board, DrawingText.Read(text, reading.Problems)).Cells();
        foreach (PlacedCell cell in drawn)
        {
            if (cell.Space is { } space)
            {
                ReadCell(cells, space, cell.Span);
            }
            else if (!CellSigns.IsNoSpace(cell.Span.Text))
            {
                bool certain = cell.Span.Text is CellSigns.Free or CellSigns.NotGiven;
                reading.Problems.Add(PositionProblems.NoSpaceThere(cell.Span, cell.Name, Told, certain ? FixGrade.Safe : FixGrade.Choice));
            }
        }
    }

    // A line of column labels is the one cause of whatever seems wrong with rows that stand above it.
    private IEnumerable<PlacedCell> HexCells(OutlineScalar text)
    {
        var problems = new DiagnosticBag();
        DrawingText drawing = DrawingText.Read(text, problems);
        reading.Problems.AddRange(drawing.HasRuler ? [] : problems.InOrder());
        return new HexDrawing(reading, _board, drawing).Cells();
    }

    private void ReadCell(CellReader cells, int space, SourceSpan cell)
    {
        if (CellSigns.IsNoSpace(cell.Text))
        {
            reading.Problems.Add(PositionProblems.SpaceIsThere(cell, _board.Spaces[space].Name.Name, Told));
            return;
        }

        Stack content = cell.Text switch
        {
            CellSigns.Free => Stack.Empty,
            CellSigns.NotGiven => Stack.NotGiven,
            _ => cells.Read(cell),
        };
        Put(space, content, cell);
    }

    // A board that is named is complete: what its list leaves out is empty.
    private void List(OutlineMapping spaces)
    {
        Array.Fill(_stacks, Stack.Empty);
        foreach (OutlineEntry entry in spaces.Entries)
        {
            string name = Prose.Fold(entry.Key.Text);
            if (_board.Spaces.FirstOrDefault(s => s.Name.Name == name) is not { } space)
            {
                if (SpacesIn(name) is { } several)
                {
                    Lay(several, entry);
                    continue;
                }

                reading.Problems.Add(PositionProblems.UnknownSpace(WordCutter.WordsOf(entry.Key), name, Told, [.. _board.Spaces.Select(s => s.Name.Name)]));
            }
            else if (!_named.Add(space.Name.Index) && reading.Spots.TryGetValue(SpotOf(space.Name.Index), out SourceSpan first))
            {
                reading.Problems.Add(PositionProblems.SpaceTwice(entry.Key.Span, name, first));
            }
            else
            {
                Stack content = ContentReader.Read(reading, entry.Value, _spot);
                Put(space.Name.Index, content with { Things = [.. _stacks[space.Name.Index].Things, .. content.Things] }, entry.Value.Span);
            }
        }
    }

    // `A1 B1`: the spaces of one piece that is larger than a space; null where the words name no two spaces.
    private ImmutableArray<int>? SpacesIn(string name)
    {
        string[] words = name.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        int[] spaces = [.. words.Select(w => _board.Spaces.FirstOrDefault(s => s.Name.Name == w)?.Name.Index ?? -1).Order()];
        return spaces.Length > 1 && spaces[0] >= 0 && spaces.Distinct().Count() == spaces.Length ? [.. spaces] : null;
    }

    // On top of what the lines before laid there.
    private void Lay(ImmutableArray<int> spaces, OutlineEntry entry)
    {
        Stack content = ContentReader.Read(reading, entry.Value, _spot);
        if (!content.IsGiven)
        {
            foreach (int space in spaces)
            {
                Put(space, Stack.NotGiven, entry.Value.Span);
            }

            return;
        }

        string told = Prose.And(spaces.Select(s => _board.Spaces[s].Name.Name));
        foreach (Thing thing in content.Things)
        {
            if (_large.ShapeOf(thing) is not { } shape || !_large.LiesOn(shape, spaces))
            {
                reading.Problems.Add(PositionProblems.NotOfThatShape(entry.Key.Span, told, Prose.A(thing.Kind?.Name ?? "thing")));
                return;
            }

            Thing piece = thing with { Covers = spaces };
            _large.Count(thing, 1, piece, entry.Value.Span);
            foreach (int space in spaces)
            {
                Put(space, new Stack([.. _stacks[space].Things, piece]), entry.Value.Span);
            }
        }
    }

    private void Put(int space, Stack content, SourceSpan at)
    {
        if (content.Things.Length > (_board.MostInSpace ?? int.MaxValue))
        {
            reading.Problems.Add(PositionProblems.TooManyInSpace(at, _board.Spaces[space].Name.Name, content.Things.Length, _board.MostInSpace!.Value));
        }

        reading.Spots[SpotOf(space)] = at;
        _stacks[space] = content;
    }

    private PositionSpot SpotOf(int space) => new(true, index, seat ?? 0, space);
}
