using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Layout;

/// <summary>The numbering of everything on the table for one sheet and number of players: holders, spots, things, marks. A state is laid out by it.</summary>
/// <remarks>
/// Spots count through the boards (for each player's copy, its spaces), the places (their slots), the supplies (the table's, then each player's) and the box.
/// Things count through the kinds; equal ones stand side by side. Safe to share between threads.
/// </remarks>
internal sealed class TableLayout
{
    private readonly Dictionary<(Place Place, int Seat), int> _holderOf = [];
    private readonly Dictionary<Place, BoardGeometry> _geometry = [];

    private TableLayout(Sheet sheet, int seats)
    {
        (Sheet, Seats) = (sheet, seats);
        Holders = BuildHolders();
        Limited = [.. Holders.Where(h => h.Most is not null)];
        SpotHolder = [.. Holders.SelectMany(h => Enumerable.Repeat(h, h.Length))];
        var things = new ThingTable(sheet, seats);
        Classes = things.Classes;
        ClassOf = [.. things.Things.Select(c => c.Number)];
        (ThingOfFoot, SecondFoot) = BuildFeet();
        StateWidth = Classes.IsEmpty ? 0 : Classes.Max(c => c.States.Length);
        MostCode = Classes.IsEmpty ? 0 : Classes.Max(c => c.Code + c.Codes);
        Values = new ValueTable(sheet);
        (MarkStart, MarkCount) = BuildMarks();
    }

    /// <summary>The sheet, with its variants on.</summary>
    public Sheet Sheet { get; }

    /// <summary>How many play; at least 1.</summary>
    public int Seats { get; }

    /// <summary>Everything that holds things, by number.</summary>
    public ImmutableArray<Holder> Holders { get; }

    /// <summary>The holders whose spots may hold only so many things.</summary>
    public ImmutableArray<Holder> Limited { get; }

    /// <summary>The holder of each spot.</summary>
    public ImmutableArray<Holder> SpotHolder { get; }

    /// <summary>The classes of things, by number.</summary>
    public ImmutableArray<ThingClass> Classes { get; }

    /// <summary>The number of the class of each thing.</summary>
    public ImmutableArray<int> ClassOf { get; }

    /// <summary>The thing of each foot. A thing has a foot on every space on which it lies; its first foot bears its own number, the other feet of pieces larger
    /// than a space follow behind all things.</summary>
    public ImmutableArray<int> ThingOfFoot { get; }

    /// <summary>By thing: its second foot, the others following; -1 for a thing on one space.</summary>
    public ImmutableArray<int> SecondFoot { get; }

    /// <summary>True where some pieces are larger than a space.</summary>
    public bool HasLarge => Classes.Any(c => c.IsLarge);

    /// <summary>How many changing values a state keeps for each thing.</summary>
    public int StateWidth { get; }

    /// <summary>One more than the greatest look code.</summary>
    public int MostCode { get; }

    /// <summary>The numbering of the values of attributes.</summary>
    public ValueTable Values { get; }

    /// <summary>By mark: the position of its first number among the marks of a state.</summary>
    public ImmutableArray<int> MarkStart { get; }

    /// <summary>How many numbers all marks need.</summary>
    public int MarkCount { get; }

    /// <summary>How many things there are.</summary>
    public int Things => ClassOf.Length;

    /// <summary>How many spots there are.</summary>
    public int Spots => SpotHolder.Length;

    /// <summary>The layout for a sheet and a number of players.</summary>
    /// <exception cref="NotPlayableException">The sheet does not say how many things there are, or has a thing that play does not know yet.</exception>
    public static TableLayout Of(Sheet sheet, int seats) => new(sheet, seats);

    /// <summary>A foot of a thing by its 0-based position.</summary>
    public int Foot(int thing, int at) => at == 0 ? thing : SecondFoot[thing] + at - 1;

    /// <summary>The class of a thing.</summary>
    public ThingClass Class(int thing) => Classes[ClassOf[thing]];

    /// <summary>The holder that a place is for a seat; a place of the table whatever the seat. Of the supply, seat -1 is the table's.</summary>
    public Holder HolderOf(Place place, int seat) => Holders[_holderOf[(place.Form is PlaceForm.Supply or PlaceForm.Box ? Common(place.Form) : place, place.Form == PlaceForm.Supply || place.EachPlayer ? seat : -1)]];

    /// <summary>The supply of a seat; of the table for -1.</summary>
    public Holder SupplyOf(int seat) => Holders[_holderOf[(Common(PlaceForm.Supply), seat)]];

    /// <summary>What is out of the game lies here.</summary>
    public Holder Box => Holders[_holderOf[(Common(PlaceForm.Box), -1)]];

    // The kernel's supply and box may be other objects in each vocabulary; here each is one.
    private static Place Common(PlaceForm form) => form == PlaceForm.Supply ? SupplyPlace : BoxPlace;

    private static readonly Place SupplyPlace = new("supply", PlaceForm.Supply, false, -1, null);

    private static readonly Place BoxPlace = new("box", PlaceForm.Box, false, -2, null);

    private ImmutableArray<Holder> BuildHolders()
    {
        var holders = ImmutableArray.CreateBuilder<Holder>();
        int spot = 0;
        foreach (BoardFacts board in Sheet.Boards)
        {
            BoardGeometry geometry = _geometry[board.Place] = BoardGeometry.Of(board);
            AddCopies(holders, board.Place, board.Spaces.Length, ref spot, h => h with { Board = board, Geometry = geometry });
        }

        foreach (PlaceFacts place in Sheet.Places)
        {
            AddCopies(holders, place.Place, Math.Max(1, place.Slots), ref spot, h => h with { Facts = place });
        }

        for (int seat = -1; seat < Seats; seat++)
        {
            Add(holders, SupplyPlace, seat, 1, ref spot, h => h);
        }

        Add(holders, BoxPlace, -1, 1, ref spot, h => h);
        return holders.ToImmutable();
    }

    private (ImmutableArray<int> ThingOfFoot, ImmutableArray<int> SecondFoot) BuildFeet()
    {
        var things = ImmutableArray.CreateBuilder<int>(Things);
        var second = ImmutableArray.CreateBuilder<int>(Things);
        things.AddRange(Enumerable.Range(0, Things));
        for (int thing = 0; thing < Things; thing++)
        {
            int more = Class(thing).Feet - 1;
            second.Add(more == 0 ? -1 : things.Count);
            things.AddRange(Enumerable.Repeat(thing, more));
        }

        return (things.ToImmutable(), second.ToImmutable());
    }

    private void AddCopies(ImmutableArray<Holder>.Builder holders, Place place, int length, ref int spot, Func<Holder, Holder> with)
    {
        for (int seat = place.EachPlayer ? 0 : -1; seat < (place.EachPlayer ? Seats : 0); seat++)
        {
            Add(holders, place, seat, length, ref spot, with);
        }
    }

    private void Add(ImmutableArray<Holder>.Builder holders, Place place, int seat, int length, ref int spot, Func<Holder, Holder> with)
    {
        _holderOf[(place, seat)] = holders.Count;
        holders.Add(with(new Holder(holders.Count, place, place.Form, seat, spot, length)));
        spot += length;
    }

    /// <summary>How many numbers a mark has: one, or one for each player or space.</summary>
    public int MarkSize(Mark mark) => MarkLayout.Count(Sheet, mark, Seats);

    private (ImmutableArray<int> Start, int Count) BuildMarks()
    {
        var starts = ImmutableArray.CreateBuilder<int>();
        int count = 0;
        foreach (Mark mark in Sheet.Marks)
        {
            starts.Add(count);
            count += MarkSize(mark);
        }

        return (starts.ToImmutable(), count);
    }
}
