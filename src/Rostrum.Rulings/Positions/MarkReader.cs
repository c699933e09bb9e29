using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads the value of a mark: a number, yes or no, a seat, a space, a value of an attribute; <c>nothing</c> where a mark of the last three has none.</summary>
internal static class MarkReader
{
    /// <summary>The value as <see cref="Position.Marks"/> keeps it; null where it is not given or (with a message) cannot be read.</summary>
    public static long? Read(PositionReading reading, Mark mark, OutlineNode node)
    {
        string text = node is OutlineScalar scalar ? Prose.Fold(scalar.Text) : "";
        if (text is ContentReader.NotGiven or "not given")
        {
            return null;
        }

        long? value = ValueOf(reading, mark, text);
        if (value is null)
        {
            string found = node is OutlineScalar ? text : node.Span.Text;
            reading.Problems.Add(PositionProblems.MarkValue(node.Span, found, mark.Name, Wanted(reading.Sheet, mark)));
        }

        if (mark.Sort.Kind == SortKind.Player && value != Position.NothingMarked)
        {
            reading.Mention((int?)value, node.Span);
        }

        return value;
    }

    /// <summary>What a mark has on each space of its board: <c>{A1: 3, B1: 1}</c>; a space that is left out has what the mark has at the start.</summary>
    public static long?[] ReadSpaces(PositionReading reading, Mark mark, BoardFacts board, OutlineNode node)
    {
        long?[] values = [.. Enumerable.Repeat(MarkLayout.Unlisted(reading.Sheet, mark), board.Spaces.Length)];
        if (node is OutlineScalar { Text: ContentReader.NotGiven or "not given" })
        {
            return new long?[board.Spaces.Length];
        }

        if (node is not OutlineMapping mapping)
        {
            reading.Problems.Add(PositionProblems.WantedEntries(node.Span, $"the {board.Noun.Plural} that have '{mark.Name}'", $"{board.Spaces[0].Name.Name}: {MarkText(mark)}"));
            return values;
        }

        foreach (OutlineEntry entry in mapping.Entries)
        {
            string name = Prose.Fold(entry.Key.Text);
            if (board.Spaces.FirstOrDefault(s => string.Equals(s.Name.Name, name, StringComparison.OrdinalIgnoreCase)) is not { } space)
            {
                reading.Problems.Add(PositionProblems.UnknownPlace(WordCutter.WordsOf(entry.Key), name, $"'{mark.Name}'", [.. board.Spaces.Select(s => s.Name.Name)]));
                continue;
            }

            values[space.Name.Index] = Read(reading, mark, entry.Value);
        }

        return values;
    }

    private static string MarkText(Mark mark) => mark.Sort.Kind == SortKind.Truth ? "yes" : $"{mark.Highest ?? mark.Lowest ?? 3}";

    /// <summary>A value of a mark as a position writes it.</summary>
    public static string Tell(Sheet sheet, Mark mark, long value) => mark.Sort.Kind switch
    {
        SortKind.Player or SortKind.Space or SortKind.Value when value == Position.NothingMarked => ContentReader.Nothing,
        SortKind.Truth => value == 0 ? "no" : "yes",
        SortKind.Player => new SeatWords(sheet).NameOf((int)value),
        SortKind.Space when BoardOf(sheet, mark) is { } board => board.Spaces[(int)value].Name.Name,
        SortKind.Value when ValuesOf(sheet, mark) is { } values => values.Values[(int)value].Name,
        _ => value.ToString(CultureInfo.InvariantCulture),
    };

    private static long? ValueOf(PositionReading reading, Mark mark, string text) => mark.Sort.Kind switch
    {
        SortKind.Player or SortKind.Space or SortKind.Value when text == ContentReader.Nothing => Position.NothingMarked,
        SortKind.Number => Number(mark, text),
        SortKind.Truth => text switch { "yes" => 1, "no" => 0, _ => null },
        SortKind.Player => reading.Seats.NumberOf(text) is { } seat && seat >= 1 && seat <= reading.Seats.Most ? seat - 1 : null,
        SortKind.Space => BoardOf(reading.Sheet, mark)?.Spaces.FirstOrDefault(s => s.Name.Name == text)?.Name.Index,
        SortKind.Value => ValuesOf(reading.Sheet, mark)?.Values.FirstOrDefault(v => string.Equals(v.Name, text, StringComparison.OrdinalIgnoreCase))?.Index,
        _ => null,
    };

    private static long? Number(Mark mark, string text)
    {
        string digits = text.StartsWith("minus ", StringComparison.Ordinal) ? "-" + text[6..] : text;
        bool isNumber = long.TryParse(digits, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long number);
        return isNumber && number >= (mark.Lowest ?? long.MinValue) && number <= (mark.Highest ?? long.MaxValue) ? number : null;
    }

    private static string Wanted(Sheet sheet, Mark mark) => mark.Sort.Kind switch
    {
        SortKind.Number when mark.Lowest is { } low && mark.Highest is { } high => $"a number from {low} to {high}",
        SortKind.Number when mark.Lowest is { } low => $"a number of {low} or more",
        SortKind.Truth => "yes or no",
        SortKind.Player => "a seat, such as 'seat 1'",
        SortKind.Space when BoardOf(sheet, mark) is { } board => $"a space of '{board.Place.Name}'",
        SortKind.Value when ValuesOf(sheet, mark) is { } values => Rostrum.Text.Prose.Or(values.Values.Select(v => v.Name)),
        _ => mark.Sort.InWords,
    };

    // A mark that does not say of which board means the first one.
    private static BoardFacts? BoardOf(Sheet sheet, Mark mark) =>
        sheet.Boards.FirstOrDefault(b => ReferenceEquals(b.Place, mark.Sort.Of)) ?? sheet.Boards.FirstOrDefault();

    private static AttributeFacts? ValuesOf(Sheet sheet, Mark mark) =>
        sheet.Kinds.SelectMany(k => k.Attributes).FirstOrDefault(a => ReferenceEquals(a.Attribute, mark.Sort.Of));
}
