using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>What the parts of the reader share while one position is read.</summary>
/// <param name="sheet">Gives the schema.</param>
/// <param name="problems">Receives what is wrong with the position itself.</param>
internal sealed class PositionReading(Sheet sheet, DiagnosticBag problems)
{
    /// <summary>How many things one position may hold: more would only be a way to use up memory.</summary>
    public const int MostThings = 100_000;

    private int _things;

    public Sheet Sheet { get; } = sheet;

    public DiagnosticBag Problems { get; } = problems;

    public ThingLexicon Lexicon { get; } = ThingLexicon.Of(sheet);

    public SeatWords Seats { get; } = new(sheet);

    /// <summary>Every thing that was read, with the place where it was written.</summary>
    public List<WrittenThing> Written { get; } = [];

    /// <summary>Where the content of each space, slot and heap is written.</summary>
    public Dictionary<PositionSpot, SourceSpan> Spots { get; } = [];

    /// <summary>The highest 0-based seat that owns something or stands in a mark, with the place that first says so; null where none is named.</summary>
    public (int Seat, SourceSpan At)? HighestOwner { get; private set; }

    /// <summary>Notes a 0-based seat that owns something or stands in a mark.</summary>
    public void Mention(int? seat, SourceSpan at)
    {
        if (seat > (HighestOwner?.Seat ?? -1))
        {
            HighestOwner = (seat.Value, at);
        }
    }

    /// <summary>Notes so many equal things; none of them where that is more than a position may hold, which is reported.</summary>
    public Thing[] Write(Thing thing, int count, SourceSpan at)
    {
        if (count > MostThings - _things)
        {
            Problems.Add(PositionProblems.TooMany(at, MostThings));
            return [];
        }

        _things += count;
        Mention(thing.Owner, at);
        Written.Add(new WrittenThing(thing, count, at));
        return [.. Enumerable.Repeat(thing, count)];
    }
}

/// <summary>Some equal things and where they were written.</summary>
internal sealed record WrittenThing(Thing Thing, int Count, SourceSpan At);

/// <summary>A space of a board, a slot of a row, or a place without slots.</summary>
/// <param name="OnBoard">True for a space.</param>
/// <param name="Index">Of the board in <see cref="Sheet.Boards"/>, or of the place in <see cref="Sheet.Places"/>.</param>
/// <param name="Seat">0-based; 0 for the table.</param>
/// <param name="Part">The space or slot, 0-based; 0 for a place without slots.</param>
internal readonly record struct PositionSpot(bool OnBoard, int Index, int Seat, int Part);
