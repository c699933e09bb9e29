using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Finds what a position holds more of than the components: such a position is answered, but nobody can lay it on a table.</summary>
/// <remarks>Only what is certain is told: a thing counts for a look where its given values show it. Sorting things of partly given looks to
/// components in the best way is not tried.</remarks>
internal static class SupplyCheck
{
    /// <summary>Reports every look, kind and card that is there too often, at the first thing that is too much.</summary>
    public static void Report(PositionReading reading)
    {
        foreach (KindFacts kind in reading.Sheet.Kinds)
        {
            WrittenThing[] things = [.. reading.Written.Where(w => ReferenceEquals(w.Thing.Kind, kind.Kind))];
            if (kind.Supply.EachPlayer)
            {
                foreach (IGrouping<int?, WrittenThing> owned in things.Where(w => w.Thing.Owner >= 0).GroupBy(w => w.Thing.Owner))
                {
                    ReportKind(reading, kind, [.. owned], $" for {reading.Seats.NameOf(owned.Key!.Value)}");
                }
            }
            else
            {
                ReportKind(reading, kind, things, "");
            }
        }

        foreach (CardTable table in reading.Sheet.CardTables)
        {
            ReportCards(reading, table);
        }
    }

    private static void ReportKind(PositionReading reading, KindFacts kind, WrittenThing[] things, string whose)
    {
        if (things.Length == 0)
        {
            return;
        }

        // Far most positions hold fewer things than there are of any look.
        var looks = new SupplyLooks(kind);
        if (things.Sum(t => (long)t.Count) <= looks.Fewest)
        {
            return;
        }

        var told = new List<ImmutableArray<int?>>();
        foreach (ImmutableArray<int?> look in looks.Of(things.Select(w => w.Thing)))
        {
            WrittenThing[] showing = [.. things.Where(w => SupplyLooks.Shows(w.Thing.Values, look))];
            if (looks.Most(look) is { } most && !told.Exists(t => SupplyLooks.Shows(t, look)) && Excess(showing, most) is { } first)
            {
                told.Add(look);
                long here = showing.Sum(w => (long)w.Count);
                reading.Problems.Add(PositionProblems.MoreThanThereAre(first.At, looks.Tell(look, here), here, most, whose));
            }
        }
    }

    private static WrittenThing? Excess(IEnumerable<WrittenThing> things, long most)
    {
        long sum = 0;
        foreach (WrittenThing written in things)
        {
            sum += written.Count;
            if (sum > most)
            {
                return written;
            }
        }

        return null;
    }

    private static void ReportCards(PositionReading reading, CardTable table)
    {
        foreach (CardRow row in table.Rows)
        {
            WrittenThing[] same = [.. reading.Written.Where(w => ReferenceEquals(w.Thing.Card, row.Card))];
            if (Excess(same, row.Count) is { } second)
            {
                reading.Problems.Add(PositionProblems.CardTwice(second.At, row.Card.Name, row.Count, same[0].At));
            }
        }
    }
}
