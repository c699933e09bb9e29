using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading;

/// <summary>Gives the cells of a pattern their meaning.</summary>
internal static class DrawingReader
{
    /// <summary>The pattern: <c>.</c> asks for a space with anything, <c>_</c> for an empty one, <c>-</c> for nothing at all.</summary>
    public static Drawing? Read(LoadContext context, DrawingText text)
    {
        var cells = ImmutableArray.CreateBuilder<DrawingCell>();
        int height = text.Rows.Length;
        for (int i = 0; i < height; i++)
        {
            foreach (DrawnCell cell in text.Rows[i].Cells.Where(c => c.Text is not ("-" or "#")))
            {
                cells.Add(Cell(context, cell, height - 1 - i) with { HalfSteps = text.Rows[i].HalfSteps });
            }
        }

        if (cells.Count == 0 || cells.All(IsPlain))
        {
            context.Problems.Add(SheetProblems.EmptyPattern(text.Span));
            return null;
        }

        ReportRows(context, text);
        int width = cells.Max(c => c.Column) + 1;
        return new Drawing(width, height, cells.ToImmutable(), text.Span);
    }

    // On hexes each row is set off by half a step from the next, on squares none is; where a game has boards of both, either may be meant.
    private static void ReportRows(LoadContext context, DrawingText text)
    {
        BoardLayout[] layouts = [.. context.Declared.Boards.Values.Select(b => b.Layout).Where(l => l != BoardLayout.Points).Distinct()];
        if (layouts is not [var layout])
        {
            return;
        }

        for (int i = layout == BoardLayout.Hexes ? 1 : 0; i < text.Rows.Length; i++)
        {
            DrawnRow row = text.Rows[i];
            if (layout == BoardLayout.Hexes ? (row.HalfSteps - text.Rows[i - 1].HalfSteps) % 2 == 0 : row.HalfSteps > 0)
            {
                SourceSpan at = row.LabelSpan.To(row.Cells.Select(c => c.Span).LastOrDefault(row.LabelSpan));
                context.Problems.Add(layout == BoardLayout.Hexes ? BoardProblems.PatternNotSetOff(at) : BoardProblems.PatternSetOff(at));
                return;
            }
        }
    }

    private static bool IsPlain(DrawingCell cell) => cell is { Asks: null, IsEmpty: false, Height: null, Alike: null };

    private static DrawingCell Cell(LoadContext context, DrawnCell cell, int row)
    {
        string text = cell.Text;
        int from = 0;
        bool isAnchor = text.Length > 2 && text[0] == '[' && text[^1] == ']';
        if (isAnchor)
        {
            (text, from) = (text[1..^1], 1);
        }

        if (text.Length == 2 && text[0] == '?')
        {
            return new DrawingCell(cell.Column, row, null, false, null, false, text[1], isAnchor);
        }

        (int? height, bool orMore, int used) = Height(text);
        Look? look = text is "." or "_" || used == text.Length ? null : LookOf(context, cell, text[used..], from + used);
        return new DrawingCell(cell.Column, row, look, text == "_", height, orMore, null, isAnchor);
    }

    // `2+` at least two things, `2` exactly two
    private static (int? Height, bool OrMore, int Used) Height(string text)
    {
        int digits = text.TakeWhile(char.IsAsciiDigit).Count();
        if (digits == 0 || !int.TryParse(text[..digits], NumberStyles.None, CultureInfo.InvariantCulture, out int height))
        {
            return (null, false, 0);
        }

        bool orMore = digits < text.Length && text[digits] == '+';
        return (height, orMore, digits + (orMore ? 1 : 0));
    }

    private static Look LookOf(LoadContext context, DrawnCell cell, string signs, int from)
    {
        DrawingSign[] legend = [.. context.Signs.Select(s => new DrawingSign(s.Key, s.Value))];
        if (SignLegend.IsWord(signs, legend))
        {
            context.Problems.Add(SheetProblems.WordInDrawing(cell.Span.Part(from, signs.Length), signs, SignLegend.Of(signs, legend), SignLegend.Told(legend)));
            return new Look(null, [], null, LookOwner.Anyone, [], "thing");
        }

        var parts = new List<Named>();
        for (int i = 0; i < signs.Length; i++)
        {
            if (context.Signs.TryGetValue(signs[i], out Named? stands))
            {
                parts.Add(stands);
            }
            else
            {
                context.Problems.Add(SheetProblems.UnknownSign(cell.Span.Part(from + i, 1), signs[i], SignLegend.Told(legend)));
            }
        }

        ImmutableArray<AttributeValue> values = [.. parts.OfType<AttributeValue>()];
        Card? card = parts.OfType<Card>().FirstOrDefault();
        Kind? kind = parts.OfType<Kind>().FirstOrDefault() ?? card?.Kind ?? values.Select(v => v.Attribute.Kind).FirstOrDefault();
        return new Look(kind, values, card, LookOwner.Anyone, [], Words(values, kind, card));
    }

    // States and later attributes are said first: `cracked copper jug`.
    private static string Words(ImmutableArray<AttributeValue> values, Kind? kind, Card? card)
    {
        IEnumerable<string> words = values.OrderByDescending(v => v.Attribute.Index).Select(v => v.Name);
        return card is not null ? card.Name : values.Length > 0 && values.Any(v => v.Attribute.Index == 0) ? string.Join(' ', words) : string.Join(' ', words.Append(kind?.Name ?? "thing"));
    }
}
