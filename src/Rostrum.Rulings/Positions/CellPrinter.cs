using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Writes the content of a space as a cell of a drawing, where the legend has the signs for it.</summary>
/// <param name="sheet">Gives the legend.</param>
/// <param name="seat">The 0-based seat whose board it is; null for the table.</param>
internal sealed class CellPrinter(Sheet sheet, int? seat)
{
    private readonly CellSigns _signs = new(sheet);
    private readonly ThingSpot _spot = new(PlaceForm.Board, [], seat, "");

    /// <summary>The cell; null where signs cannot say it.</summary>
    public string? Print(Stack content)
    {
        if (!content.IsGiven)
        {
            return CellSigns.NotGiven;
        }

        string?[] parts = [.. ThingRun.Of(content.Things).Select(Part)];
        return parts.Contains(null) ? null : parts.Length == 0 ? CellSigns.Free : string.Join(CellSigns.Join, parts);
    }

    private string? Part(ThingRun run)
    {
        if (run.Thing.Kind is null)
        {
            return _signs.OnlyKind is null ? Number(run.Count) : null;
        }

        KindFacts kind = sheet.KindOf(run.Thing.Kind);
        if (Signs(kind, run.Thing) is not { } signs || OwnerOf(kind, run.Thing) is not { } owner)
        {
            return null;
        }

        bool statesOpen = kind.Attributes.Any(a => IsOpenState(a, run.Thing));
        bool hasBody = signs.Length > 0 || owner.Length == 0;
        string count = run.Count > 1 || signs.Length == 0 ? Number(run.Count) : "";
        string cell = count + signs + owner + (statesOpen ? CellSigns.StatesNotGiven : "");
        return hasBody && SaysSame(kind, run.Thing, statesOpen) ? cell : null;
    }

    // Values in the order of the attributes; the sign of the kind (or nothing at all) where no value is said. Null where a sign is missing.
    private string? Signs(KindFacts kind, Thing thing)
    {
        if (thing.Card is { } card)
        {
            return kind.Attributes.All(a => thing.Values[a.Attribute.Index] == ThingSpot.ValueOf(a, thing.Owner)) ? _signs.SignOf(card)?.ToString() : null;
        }

        AttributeFacts[] said = [.. kind.Attributes.Where(a => IsSaid(a, thing))];
        char?[] signs = [.. said.Select(a => _signs.SignOf(a.Values[thing.Values[a.Attribute.Index]!.Value]))];
        if (signs.Length > 0)
        {
            return signs.Contains(null) ? null : string.Concat(signs);
        }

        return _signs.SignOf(kind.Kind)?.ToString() ?? (ReferenceEquals(_signs.OnlyKind, kind.Kind) ? "" : null);
    }

    private static bool IsSaid(AttributeFacts attribute, Thing thing) =>
        !attribute.HoldsPlayer && thing.Values[attribute.Attribute.Index] is { } value && !(attribute.Attribute.IsState && value == 0);

    private static bool IsOpenState(AttributeFacts attribute, Thing thing) =>
        attribute is { HoldsPlayer: false, Attribute.IsState: true } && thing.Values[attribute.Attribute.Index] is null;

    private string? OwnerOf(KindFacts kind, Thing thing) =>
        thing.Owner == _spot.OwnerOf(kind) ? "" : thing.Owner is { } owner and not Thing.Nobody ? Number(owner + 1) : null;

    // What goes without saying must be what the thing is: its face, the states that bear no sign, the player that a state holds.
    private bool SaysSame(KindFacts kind, Thing thing, bool statesOpen) =>
        thing.IsFaceUp == _spot.FaceOf(kind)
        && kind.Attributes.All(a => !a.HoldsPlayer || thing.Values[a.Attribute.Index] == ThingSpot.ValueOf(a, thing.Owner))
        && (!statesOpen || kind.Attributes.All(a => a.HoldsPlayer || !a.Attribute.IsState || thing.Values[a.Attribute.Index] != 0));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
