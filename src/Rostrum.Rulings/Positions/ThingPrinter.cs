using System.Globalization;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Writes things in words that read back as the same things.</summary>
/// <param name="sheet">Gives the names.</param>
internal sealed class ThingPrinter(Sheet sheet)
{
    private readonly SeatWords _seats = new(sheet);

    /// <summary>The content as a value: <c>4</c>, <c>[iron jug, 2 ash bowls]</c>, <c>[]</c>, <c>?</c>.</summary>
    public string Print(Stack content, ThingSpot spot)
    {
        if (!content.IsGiven)
        {
            return ContentReader.NotGiven;
        }

        ThingRun[] runs = [.. ThingRun.Of(content.Things)];
        if (runs is [{ } only] && spot.Holds.Length == 1 && only.Thing.Equals(new ThingDraft(sheet.KindOf(spot.Holds[0]), [], null).At(spot)))
        {
            return Number(only.Count);
        }

        return $"[{string.Join(", ", runs.Select(r => PositionPrinter.Key(Words(r, spot))))}]";
    }

    private string Words(ThingRun run, ThingSpot spot)
    {
        string count = run.Count == 1 ? "" : Number(run.Count) + " ";
        if (run.Thing.Kind is null)
        {
            return count + (run.Count == 1 ? "thing" : "things");
        }

        KindFacts kind = sheet.KindOf(run.Thing.Kind);
        string owner = run.Thing.Owner == spot.OwnerOf(kind) ? "" : " of " + OwnerOf(run.Thing.Owner);
        string face = run.Thing.IsFaceUp == spot.FaceOf(kind) ? "" : run.Thing.IsFaceUp switch { true => " face up", false => " face down", null => " face not given" };
        return count + Names(kind, run) + owner + face + NotGiven(kind, run.Thing);
    }

    private string OwnerOf(int? owner) => owner switch
    {
        null => "somebody",
        Thing.Nobody => "nobody",
        { } seat => _seats.NameOf(seat),
    };

    // Every value that does not go without saying, then the kind, so that no other kind can be meant.
    private static string Names(KindFacts kind, ThingRun run)
    {
        string noun = run.Thing.Card?.Name ?? (run.Count == 1 ? kind.Kind.Name : kind.Kind.Plural);
        IEnumerable<string> values = kind.Attributes.Where(a => IsSaid(a, run.Thing)).Select(a => a.Values[run.Thing.Values[a.Attribute.Index]!.Value].Name);
        return string.Join(' ', values.Append(noun));
    }

    private static bool IsSaid(AttributeFacts attribute, Thing thing) =>
        !attribute.HoldsPlayer && thing.Values[attribute.Attribute.Index] is { } value && !(attribute.Attribute.IsState && value == 0);

    private static string NotGiven(KindFacts kind, Thing thing) => string.Concat(
        kind.Attributes.Where(a => a.Attribute.IsState && thing.Values[a.Attribute.Index] is null && ThingSpot.ValueOf(a, thing.Owner) is not null)
            .Select(a => $" {a.Attribute.Name} not given"));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
