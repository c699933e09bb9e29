namespace Rostrum.Rulings.Tests.Outside;

/// <summary>The twenty commissions of Kiln Night, copied by hand from pages 6 and 12 of its rulebook.</summary>
internal static class HandCommissions
{
    // By number; 11 as the publisher's note of 3 March 2026 has it.
    private static readonly int[] Values = [2, 3, 3, 5, 5, 6, 6, 7, 7, 8, 6, 9, 2, 4, 4, 4, 6, 5, 7, 9];

    // Page 12: the highest tier first.
    private static readonly string[] Drawings = ["j / p", "l / b", "i . / . i", "a / i / c", "p j b", "bc / pi", "ja / pa", "j j / p p", "lc / bi", "a a / a a", "b . b / . p .", "li / bi / pi"];

    /// <summary>How many there are.</summary>
    public static int Count => Values.Length;

    /// <summary>The value of a commission, 1 to 20.</summary>
    public static int Value(int number) => Values[number - 1];

    /// <summary>Whether the chamber shows it, in whole ware (page 6).</summary>
    public static bool IsShown(HandChamber chamber, int number) => number <= Drawings.Length ? ShowsDrawing(chamber, Drawings[number - 1]) : ShowsSentence(chamber, number);

    private static bool ShowsDrawing(HandChamber chamber, string drawing)
    {
        string[][] rows = [.. drawing.Split(" / ").Reverse().Select(r => r.Split(' '))];
        return chamber.Shelves.Any(at => Enumerable.Range(0, rows.Length).All(up => Enumerable.Range(0, rows[up].Length).All(right =>
            chamber.Has(at.Bay + right, at.Tier + up) && Fits(chamber.Whole(at.Bay + right, at.Tier + up), rows[up][right]))));
    }

    // A plain shelf may hold anything or nothing; letters ask for a form, a glaze or both.
    private static bool Fits(HandWare? ware, string asked) => asked == "." || (ware is { } there && asked.All(c => c == there.Form || c == there.Glaze));

    private static bool ShowsSentence(HandChamber chamber, int number) => number switch
    {
        13 => Lines(chamber, s => s.Bay).Any(bay => bay.Select(w => w.Ware.Glaze).Distinct().Count() >= 3),
        14 => Lines(chamber, s => s.Tier).Any(tier => tier.Select(w => w.Ware.Form).Distinct().Count() >= 4),
        15 => Lines(chamber, s => s.Tier).Any(tier => tier.Count(w => w.Ware.Glaze == 'c') >= 3),
        16 => Number(chamber, 'j') >= 4,
        17 => Number(chamber, 'p') > Number(chamber, 'b'),
        18 => Lines(chamber, s => s.Tier).Count(tier => tier.Any(w => w.Ware.Form == 'l')) >= 3,
        19 => Number(chamber, 'p') >= 4 && !chamber.Shelves.Any(s => IsPlate(chamber, s) && chamber.Neighbours(s.Bay, s.Tier).Any(n => IsPlate(chamber, n))),
        _ => Lines(chamber, s => s.Bay).Count(bay => bay.Any(w => w.Ware.Form == 'p')) == chamber.Bays,
    };

    private static IEnumerable<((int Bay, int Tier) Shelf, HandWare Ware)> WholeWare(HandChamber chamber) =>
        chamber.Shelves.Where(s => chamber.Whole(s.Bay, s.Tier) is not null).Select(s => (s, chamber.Whole(s.Bay, s.Tier)!.Value));

    private static IEnumerable<IGrouping<int, ((int Bay, int Tier) Shelf, HandWare Ware)>> Lines(HandChamber chamber, Func<(int Bay, int Tier), int> line) =>
        WholeWare(chamber).GroupBy(w => line(w.Shelf));

    private static int Number(HandChamber chamber, char form) => WholeWare(chamber).Count(w => w.Ware.Form == form);

    private static bool IsPlate(HandChamber chamber, (int Bay, int Tier) shelf) => chamber.Whole(shelf.Bay, shelf.Tier) is { Form: 'p' };
}
