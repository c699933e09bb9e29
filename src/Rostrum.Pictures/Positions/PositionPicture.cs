using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Pictures.Positions;

/// <summary>What a picture of a position shall point out.</summary>
/// <param name="Title">Written above it.</param>
/// <param name="Caption">A sentence below; null for none but a legend, where the sheet leaves the looks of pieces to the picture.</param>
/// <param name="Marks">Spaces of the acting player's board, or of the table's, by name; a name that the board lacks is left out.</param>
public sealed record PictureWish(string Title, string? Caption, ImmutableArray<(string Space, MarkKind Kind, string Label)> Marks)
{
    /// <summary>False where the words around the picture say its title already.</summary>
    public bool ShowsTitle { get; init; } = true;

    /// <summary>Nothing is pointed out.</summary>
    public static PictureWish Plain(string title) => new(title, null, []);
}

/// <summary>Turns a position into the values that the painter draws.</summary>
public static class PositionPicture
{
    /// <summary>The picture of what lies before the acting player and on the table; of more than one player, every player's board.</summary>
    /// <param name="position">The position.</param>
    /// <param name="wish">What it shall point out.</param>
    /// <exception cref="ArgumentException">The sheet has no board.</exception>
    public static TablePicture Of(Position position, PictureWish wish)
    {
        ArgumentNullException.ThrowIfNull(position);
        ArgumentNullException.ThrowIfNull(wish);
        var looks = new ThingLooks(position);
        ImmutableArray<(BoardFacts Facts, BoardPicture Picture, int Seat)> boards = [.. Boards(position, looks)];
        if (boards.IsEmpty)
        {
            throw new ArgumentException("The sheet has no board to draw.", nameof(position));
        }

        Heap[] heaps = [.. Heaps(position, looks)];
        return new TablePicture(wish.Title, [.. boards.Select(b => b.Picture)])
        {
            ShowsTitle = wish.ShowsTitle,
            Caption = wish.Caption ?? looks.Legend,
            Marks = [.. wish.Marks.Select(m => Mark(position, boards, m)).OfType<SpaceMark>()],
            Heaps = [.. heaps],
            View = boards[0].Facts.IsUpright ? TableView.Front : TableView.Above,
            Names = SpaceNames.Edges,
        };
    }

    private static IEnumerable<(BoardFacts Facts, BoardPicture Picture, int Seat)> Boards(Position position, ThingLooks looks)
    {
        for (int board = 0; board < position.Sheet.Boards.Length; board++)
        {
            BoardFacts facts = position.Sheet.Boards[board];
            for (int seat = 0; seat < position.Boards[board].Length; seat++)
            {
                bool isShown = facts.Spaces.Length > 0 && (seat == position.Me || position.Boards[board].Length == 1 || position.Boards[board][seat].Any(s => s.IsGiven));
                if (isShown)
                {
                    string? title = position.Boards[board].Count(s => s.Any(x => x.IsGiven)) > 1 ? Prose.Sentence(new PositionWords(position).Place(facts.Place, seat)) : null;
                    yield return (facts, Board(position, board, seat, title, looks), seat);
                }
            }
        }
    }

    private static BoardPicture Board(Position position, int board, int seat, string? title, ThingLooks looks)
    {
        BoardFacts facts = position.Sheet.Boards[board];
        var rows = new List<BoardRow>();
        for (int row = 0; row < facts.Rows.Length; row++)
        {
            ValueList<CellPicture> cells = [.. facts.Columns.Select((_, column) => Cell(position, board, seat, SpaceAt(facts, column, row), looks))];
            rows.Add(new BoardRow(facts.Rows[row], cells));
        }

        return new BoardPicture($"board{board}-{seat}", title, [.. facts.Columns], [.. rows]);
    }

    private static int? SpaceAt(BoardFacts facts, int column, int row) => facts.Spaces.FirstOrDefault(s => s.Column == column && s.Row == row)?.Name.Index;

    private static CellPicture Cell(Position position, int board, int seat, int? space, ThingLooks looks)
    {
        if (space is not { } at)
        {
            return CellPicture.None;
        }

        Stack stack = position.At(board, seat, at);
        return stack switch
        {
            { IsGiven: false } => CellPicture.Holding(ThingLooks.NotGiven("not given")),
            { Things.IsEmpty: true } => CellPicture.Empty,
            _ => CellPicture.Holding([.. stack.Things.Select(looks.Of)]),
        };
    }

    private static SpaceMark? Mark(Position position, ImmutableArray<(BoardFacts Facts, BoardPicture Picture, int Seat)> boards, (string Space, MarkKind Kind, string Label) mark)
    {
        foreach ((BoardFacts facts, BoardPicture picture, int seat) in boards.OrderByDescending(b => b.Seat == position.Me))
        {
            if (facts.Spaces.FirstOrDefault(s => s.Name.Name == mark.Space) is { } space)
            {
                return new SpaceMark(new SpaceAt(picture.Name, space.Column, space.Row), mark.Kind, mark.Label);
            }
        }

        return null;
    }

    // Only what lies there: an empty heap and one that is not given would be nothing but words.
    private static IEnumerable<Heap> Heaps(Position position, ThingLooks looks)
    {
        var words = new PositionWords(position);
        for (int place = 0; place < position.Places.Length; place++)
        {
            PlaceFacts facts = position.Sheet.Places[place];
            int seat = facts.Place.EachPlayer ? position.Me : 0;
            ImmutableArray<Stack> slots = position.Places[place][seat];
            if (slots.All(s => s.IsGiven) && slots.Any(s => !s.Things.IsEmpty))
            {
                yield return HeapOf(facts, [.. slots.SelectMany(s => s.Things)], words, looks);
            }
        }
    }

    private static Heap HeapOf(PlaceFacts facts, ImmutableArray<Thing> things, PositionWords words, ThingLooks looks)
    {
        string name = Prose.Sentence(facts.Place.Name);
        // Cards are told by name, equal pieces by one of them and their number.
        if (things.Any(t => t.Card is not null))
        {
            return new Heap(name, string.Join(", ", things.Select(t => t.Card is not null && t.IsFaceUp == false ? $"{words.Thing(t)} (face down)" : words.Thing(t))), []);
        }

        ValueList<HeapPieces> pieces = [.. things.GroupBy(t => t).Select(g => new HeapPieces(looks.Of(g.Key), g.Count()) { Says = words.Content(new Stack([.. g])) })];
        return new Heap(name, null, pieces);
    }
}
