using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Pictures.Positions;

/// <summary>What a picture of a position shall point out.</summary>
/// <param name="Title">Written above it.</param>
/// <param name="Caption">A sentence below, before the legend where the sheet leaves the looks of pieces to the picture; null for none.</param>
/// <param name="Marks">Spaces of the acting player's board, or of the table's, by name; a name that the board lacks is left out.</param>
public sealed record PictureWish(string Title, string? Caption, ImmutableArray<(string Space, MarkKind Kind, string Label)> Marks)
{
    /// <summary>False where the words around the picture say its title already.</summary>
    public bool ShowsTitle { get; init; } = true;

    /// <summary>Nothing is pointed out.</summary>
    public static PictureWish Plain(string title) => new(title, null, []);
}

/// <summary>Turns a position into the values that the painter draws.</summary>
/// <remarks>Whoever looks at a picture is no player: nothing in it is <c>yours</c>. Where it shows things of several seats, each says whose it is.</remarks>
public static class PositionPicture
{
    /// <summary>The picture of what lies on the table and before each player of whom the position says anything.</summary>
    /// <param name="position">The position.</param>
    /// <param name="wish">What it shall point out.</param>
    /// <exception cref="ArgumentException">The sheet has no board.</exception>
    public static TablePicture Of(Position position, PictureWish wish)
    {
        ArgumentNullException.ThrowIfNull(position);
        ArgumentNullException.ThrowIfNull(wish);
        var looks = new ThingLooks(position);
        int[] seats = [.. SeatsIn(position)];
        ImmutableArray<(BoardFacts Facts, BoardPicture Picture, int Seat)> boards = [.. Boards(position, seats, looks)];
        if (boards.IsEmpty)
        {
            throw new ArgumentException("The sheet has no board to draw.", nameof(position));
        }

        Heap[] heaps = [.. Heaps(position, seats, looks).Select(h => Beside(boards, h.Heap, h.Seat))];
        return new TablePicture(wish.Title, [.. boards.Select(b => b.Picture)])
        {
            ShowsTitle = wish.ShowsTitle,
            Caption = string.Join(' ', ((string?[])[wish.Caption, looks.Legend]).OfType<string>()) is { Length: > 0 } caption ? caption : null,
            Marks = [.. wish.Marks.Select(m => Mark(position, boards, m)).OfType<SpaceMark>()],
            Heaps = [.. heaps],
            View = boards[0].Facts.IsUpright ? TableView.Front : TableView.Above,
            Names = SpaceNames.Edges,
        };
    }

    /// <summary>The 0-based seats whose things are shown; the acting player's board is drawn even where nothing is said of it.</summary>
    public static IEnumerable<int> SeatsIn(Position position) => Enumerable.Range(0, position.Seats).Where(seat => seat == position.Me
        || position.Sheet.Boards.Where((b, i) => b.Place.EachPlayer && position.Boards[i][seat].Any(s => s.IsGiven)).Any()
        || position.Sheet.Places.Where((p, i) => p.Place.EachPlayer && HasThings(position.Places[i][seat])).Any());

    private static IEnumerable<(BoardFacts Facts, BoardPicture Picture, int Seat)> Boards(Position position, int[] seats, ThingLooks looks)
    {
        (int Board, int Seat)[] shown =
        [
            .. from board in Enumerable.Range(0, position.Sheet.Boards.Length)
               where position.Sheet.Boards[board].Spaces.Length > 0
               from seat in position.Sheet.Boards[board].Place.EachPlayer ? seats : [0]
               where seat == position.Me || position.Boards[board].Length == 1 || position.Boards[board][seat].Any(s => s.IsGiven)
               select (board, seat),
        ];
        return from each in shown
               let facts = position.Sheet.Boards[each.Board]
               let title = shown.Length > 1 ? NameOf(position, facts.Place, each.Seat, seats) : null
               select (facts, BoardDrawer.Draw(position, each.Board, each.Seat, title, looks), each.Seat);
    }

    private static string NameOf(Position position, Place place, int seat, int[] seats) =>
        Prose.Sentence(place.EachPlayer && seats.Length > 1 ? PositionWords.ForAudience(position.Sheet).Place(place, seat) : place.Name);

    private static SpaceMark? Mark(Position position, ImmutableArray<(BoardFacts Facts, BoardPicture Picture, int Seat)> boards, (string Space, MarkKind Kind, string Label) mark)
    {
        foreach ((BoardFacts facts, BoardPicture picture, int seat) in boards.OrderByDescending(b => b.Seat == position.Me))
        {
            if (facts.Spaces.FirstOrDefault(s => s.Name.Name == mark.Space) is { } space)
            {
                return new SpaceMark(new SpaceAt(picture.Name, space.Name.Name), mark.Kind, mark.Label);
            }
        }

        return null;
    }

    // Only what lies there: an empty heap and one that is not given would be nothing but words. What belongs to a seat comes first.
    private static IEnumerable<(Heap Heap, int? Seat)> Heaps(Position position, int[] seats, ThingLooks looks) =>
        from place in Enumerable.Range(0, position.Places.Length)
        let facts = position.Sheet.Places[place]
        from seat in facts.Place.EachPlayer ? seats : [0]
        let slots = position.Places[place][seat]
        where HasThings(slots)
        let owner = facts.Place.EachPlayer ? seat : (int?)null
        orderby owner ?? int.MaxValue
        select (HeapOf(position, NameOf(position, facts.Place, seat, seats), [.. slots.SelectMany(s => s.Things)], looks), owner);

    private static bool HasThings(ImmutableArray<Stack> slots) => slots.All(s => s.IsGiven) && slots.Any(s => !s.Things.IsEmpty);

    // Of several seats, each one's things lie beside its board.
    private static Heap Beside(ImmutableArray<(BoardFacts Facts, BoardPicture Picture, int Seat)> boards, Heap heap, int? seat) =>
        heap with { Board = boards.LastOrDefault(b => b.Facts.Place.EachPlayer && b.Seat == seat).Picture?.Name };

    private static Heap HeapOf(Position position, string name, ImmutableArray<Thing> things, ThingLooks looks)
    {
        var words = PositionWords.ForAudience(position.Sheet);

        // Cards are told by name, equal pieces by one of them and their number.
        if (things.Any(t => t.Card is not null))
        {
            return new Heap(name, string.Join(", ", things.Select(t => t.Card is not null && t.IsFaceUp == false ? $"{words.Thing(t)} (face down)" : words.Thing(t))), []);
        }

        ValueList<HeapPieces> pieces = [.. things.GroupBy(t => t).Select(g => new HeapPieces(looks.Of(g.Key), g.Count()) { Says = words.Content(new Stack([.. g])) })];
        return new Heap(name, null, pieces);
    }
}
