namespace Rostrum.Pictures;

/// <summary>Tells in sentences what a pattern card asks for.</summary>
internal static class DrawingWords
{
    public static string Describe(DrawingPicture picture)
    {
        IEnumerable<string> rows = picture.Rows.Select((row, index) =>
            $"{Place(index, picture.Rows.Count)}: {string.Join(", ", row.Select(cell => Cell(cell, picture.PlainSays)))}.");
        return string.Join(' ',
        [
            .. picture.Value is { } value ? [$"Worth {value}."] : Array.Empty<string>(),
            "From the lowest row, each from left to right.",
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

    private static string Cell(DrawingCell cell, string plain) => cell switch
    {
        DrawingCell.Wanted wanted => wanted.Says,
        DrawingCell.Plain => plain,
        DrawingCell.MustBeFree => "a free shelf",
        _ => "nothing asked",
    };
}
