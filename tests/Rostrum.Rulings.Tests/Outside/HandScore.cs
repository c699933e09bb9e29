namespace Rostrum.Rulings.Tests.Outside;

/// <summary>The scoring of page 8 of Kiln Night, written by hand.</summary>
/// <param name="Chamber">After the firing.</param>
/// <param name="Accepted">Numbers of the commissions that lie before the player.</param>
/// <param name="Shards">How many.</param>
/// <param name="Sticks">How many are left.</param>
internal sealed record HandScore(HandChamber Chamber, int[] Accepted, int Shards, int Sticks)
{
    /// <summary>The open readings of bowls with the points of runs of one to six.</summary>
    public static readonly (string Name, int[] Runs)[] BowlReadings =
        [("as for four", [0, 1, 3, 6, 10, 10, 10]), ("growing on", [0, 1, 3, 6, 10, 15, 21]), ("best split", [0, 1, 3, 6, 10, 10 + 1, 10 + 3])];

    /// <summary>The open readings of glaze; whether a cracked ware joins.</summary>
    public static readonly (string Name, bool Joins)[] GlazeReadings = [("cracked breaks", false), ("cracked joins", true)];

    /// <summary>The lines of page 8 in its order, under the first readings.</summary>
    public (string Line, int Points)[] Lines =>
    [
        ("bowls", Bowls(BowlReadings[0].Runs)),
        ("jugs", Jugs),
        ("plates", 3 * OnTiers(w => w.Form == 'p').Max()),
        ("lamps", OnTiers(w => w.Form == 'l').Sum(lamps => lamps == 1 ? 4 : lamps)),
        ("glaze", Glaze(joins: false)),
        ("full", 3 * Full),
        ("commissions", Accepted.Sum(number => HandCommissions.IsShown(Chamber, number) ? HandCommissions.Value(number) : -2)),
        ("shards", -Shards),
        ("sticks", Sticks / 3),
    ];

    private int Jugs => Chamber.Shelves.Where(s => Chamber.Whole(s.Bay, s.Tier) is { Form: 'j' })
        .Sum(s => Chamber.Neighbours(s.Bay, s.Tier).Select(n => Chamber.Whole(n.Bay, n.Tier)?.Glaze).OfType<char>().Distinct().Count());

    // Round Chamber: tiers; Climbing Chamber: bays.
    private int Full => Chamber.Shelves.GroupBy(s => Chamber.IsClimbing ? s.Bay : s.Tier).Count(line => line.All(s => Chamber[s.Bay, s.Tier] is not null));

    /// <summary>The points of all upright runs of whole bowls.</summary>
    public int Bowls(int[] runs)
    {
        int points = 0;
        for (int bay = 0; bay < Chamber.Bays; bay++)
        {
            int run = 0;
            for (int tier = 0; tier <= Chamber.Tiers; tier++)
            {
                bool isBowl = Chamber.Whole(bay, tier) is { Form: 'b' };
                points += isBowl ? 0 : runs[run];
                run = isBowl ? run + 1 : 0;
            }
        }

        return points;
    }

    /// <summary>Whole ware in the largest touching group of one glaze.</summary>
    public int Glaze(bool joins) => Chamber.Shelves.Select(s => GroupAt(s, joins)).Max();

    private int GroupAt((int Bay, int Tier) start, bool joins)
    {
        char? glaze = Chamber[start.Bay, start.Tier]?.Glaze;
        bool Belongs((int Bay, int Tier) s) => Chamber[s.Bay, s.Tier] is { } ware && ware.Glaze == glaze && (joins || !ware.IsCracked);
        HashSet<(int Bay, int Tier)> group = [];
        Stack<(int Bay, int Tier)> next = new([start]);
        while (next.TryPop(out (int Bay, int Tier) at))
        {
            if (Belongs(at) && group.Add(at))
            {
                foreach ((int, int) neighbour in Chamber.Neighbours(at.Bay, at.Tier))
                {
                    next.Push(neighbour);
                }
            }
        }

        return group.Count(s => Chamber.Whole(s.Bay, s.Tier) is not null);
    }

    private IEnumerable<int> OnTiers(Func<HandWare, bool> counts) =>
        Enumerable.Range(0, Chamber.Tiers).Select(tier => Enumerable.Range(0, Chamber.Bays).Count(bay => Chamber.Whole(bay, tier) is { } ware && counts(ware)));
}
