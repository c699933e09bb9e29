using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>What the evaluator looks up in a sheet again and again, worked out once a sheet.</summary>
internal sealed class SheetIndex
{
    // Remembered beside the sheet for as long as the sheet lives; a pure function of it, so nobody can tell.
    private static readonly ConditionalWeakTable<Sheet, SheetIndex> Known = [];
    private readonly Dictionary<Place, int> _boards = [];
    private readonly Dictionary<Place, int> _places = [];
    private readonly Dictionary<Rostrum.Sheets.Model.Attribute, AttributeFacts> _attributes = [];

    private SheetIndex(Sheet sheet)
    {
        SetsStartPlayer = sheet.StepLists.Any(steps => steps.Any(Sets));
        Geometry = [.. sheet.Boards.Select(BoardGeometry.Of)];
        for (int i = 0; i < sheet.Boards.Length; i++)
        {
            _boards[sheet.Boards[i].Place] = i;
        }

        for (int i = 0; i < sheet.Places.Length; i++)
        {
            _places[sheet.Places[i].Place] = i;
        }

        foreach (AttributeFacts facts in sheet.Kinds.SelectMany(k => k.Attributes))
        {
            _attributes[facts.Attribute] = facts;
        }
    }

    /// <summary>The shape of each board.</summary>
    public ImmutableArray<BoardGeometry> Geometry { get; }

    /// <summary>True where a step makes somebody the start player, so that the first seat need not be it.</summary>
    public bool SetsStartPlayer { get; }

    /// <summary>The index of a sheet.</summary>
    public static SheetIndex Of(Sheet sheet) => Known.GetValue(sheet, s => new SheetIndex(s));

    /// <summary>The position in <see cref="Sheet.Boards"/>; -1 for a place that is no board.</summary>
    public int BoardOf(Place place) => _boards.TryGetValue(place, out int at) ? at : -1;

    /// <summary>The position in <see cref="Sheet.Places"/>; -1 for a board, the supply and the box.</summary>
    public int PlaceOf(Place place) => _places.TryGetValue(place, out int at) ? at : -1;

    /// <summary>The values of an attribute.</summary>
    public AttributeFacts Facts(Rostrum.Sheets.Model.Attribute attribute) => _attributes[attribute];

    private static bool Sets(Step step) => step is { Kind: StepKind.Set, Terms: [Term.StartPlayer, ..] } || step.Inner.Any(Sets) || step.Otherwise.Any(Sets);
}
