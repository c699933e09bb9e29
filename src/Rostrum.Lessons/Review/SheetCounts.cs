using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Review;

/// <summary>Numbers that follow from what a sheet says of its things and boards, and that people say aloud: how many colours, how many cards of each suit, columns, rows and spaces.</summary>
internal static class SheetCounts
{
    /// <summary>Sentences that nobody wrote and everybody may say.</summary>
    /// <returns>The name of the thing or board whose clause says it, and the sentence.</returns>
    public static IEnumerable<(string Name, string Says)> Of(Sheet sheet) => sheet.Kinds.SelectMany(OfKind).Concat(sheet.Boards.SelectMany(OfBoard));

    private static IEnumerable<(string Name, string Says)> OfKind(KindFacts kind)
    {
        string plural = kind.Kind.Plural;
        if (kind.Supply is { Total: { } total })
        {
            yield return (plural, kind.Supply.EachPlayer ? $"{total} {plural} for each player" : $"{total} {plural}");
        }

        foreach (AttributeFacts attribute in kind.Attributes.Where(a => !a.HoldsPlayer && !a.Attribute.IsState && a.Values.Length > 1))
        {
            string name = attribute.Attribute.Name;
            yield return (plural, $"{attribute.Values.Length} {name}s");
            long?[] each = [.. attribute.Values.Select(v => CountOf(kind, v)).Distinct()];
            if (each is [{ } same])
            {
                yield return (plural, $"{same} {plural} of each {name}");
            }
            else
            {
                foreach (AttributeValue value in attribute.Values)
                {
                    if (CountOf(kind, value) is { } count)
                    {
                        yield return (plural, $"{count} {value.Plural}");
                    }
                }
            }
        }
    }

    // How many have a value: told, or shared out equally among all combinations.
    private static long? CountOf(KindFacts kind, AttributeValue value)
    {
        AttributeFacts[] looks = [.. kind.Attributes.Where(a => !a.HoldsPlayer && !a.Attribute.IsState)];
        if (kind.Supply.OfEach.IsEmpty)
        {
            return kind.Kind.Family != KindFamily.Die && kind.Supply.Total is { } total && looks.Length > 0 && total % looks.First(l => l.Attribute == value.Attribute).Values.Length == 0
                ? total / looks.First(l => l.Attribute == value.Attribute).Values.Length : null;
        }

        long sum = 0;
        foreach (SupplyRow row in kind.Supply.OfEach)
        {
            if (row.Values.Any(v => v.Attribute == value.Attribute && v != value))
            {
                continue;
            }

            // What the row does not fix it gives of each.
            sum += row.Count * looks.Where(l => l.Attribute != value.Attribute && row.Values.All(v => v.Attribute != l.Attribute)).Aggregate(1L, (many, l) => many * l.Values.Length);
        }

        return sum == 0 ? null : sum;
    }

    private static IEnumerable<(string Name, string Says)> OfBoard(BoardFacts board)
    {
        string name = board.Place.Name;
        if (board.Spaces.Length > 1)
        {
            yield return (name, $"{board.Spaces.Length} {board.Noun.Plural}");
        }

        if (board.Columns.Length > 1)
        {
            yield return (name, $"{board.Columns.Length} columns");
        }

        if (board.Rows.Length > 1)
        {
            yield return (name, $"{board.Rows.Length} rows");
        }

        foreach (LineFamily family in board.Families.Where(f => f.Lines.Length > 1))
        {
            yield return (name, $"{family.Lines.Length} {family.Plural}");
        }
    }
}
