using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Tells in sentences what a pattern card asks for.</summary>
internal static class DrawingWords
{
    public static string Describe(DrawingPicture picture)
    {
        IEnumerable<string> rows = picture.Rows.Select((row, index) =>
            $"{Place(index, picture.Rows.Count)}{SetOff(picture, index)}: {string.Join(", ", row.Select(cell => Cell(cell, picture)))}.");
        return string.Join(' ',
        [
            .. picture.Value is { } value ? [$"Worth {value}."] : Array.Empty<string>(),
            picture.IsHex ? "Hexes, from the lowest row, each from left to right." : "From the lowest row, each from left to right.",
            .. rows,
            .. picture.Sentence is { } sentence ? [sentence] : Array.Empty<string>(),
        ]);
    }

    private static string Place(int index, int count) => index switch
    {
        0 when count == 1 => "The only row",
        0 => "Lowest row",
        _ when index == count - 1 => "Top row",
        _ => $"Row {index + 1}",
    };

    private static string SetOff(DrawingPicture picture, int row) =>
        picture.IsHex && picture.HalfSteps[row] - picture.HalfSteps.Min() is > 0 and var steps ? string.Create(CultureInfo.InvariantCulture, $", set off by {steps} half {(steps == 1 ? "step" : "steps")}") : "";

    private static string Cell(DrawingCell cell, DrawingPicture picture) => cell switch
    {
        DrawingCell.Wanted wanted => wanted.Says,
        DrawingCell.Plain => picture.PlainSays,
        DrawingCell.MustBeFree => picture.FreeSays,
        _ => "nothing asked",
    };
}
