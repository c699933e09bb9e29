using CsCheck;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>Random tables of Kiln Night, as the hand-written oracle sees them and as a position file says them.</summary>
internal static class KilnNightCases
{
    private static readonly Sheet[] Sheets = [Game.Sheet("kiln-night"), Game.Sheet("kiln-night", "Climbing Chamber")];

    // Everything alike often, one glaze or form favoured now and then, so that long runs, large groups and rare commissions turn up.
    private static readonly Gen<string> Forms = OneOf("bjpl", "bjpl", "bbbp", "pppj", "jjpl", "bplp");
    private static readonly Gen<string> Glazes = OneOf("aic", "aic", "iii", "iiac", "ccca", "aai");

    private static readonly Gen<HandWare[]> Ware =
        from forms in Forms
        from glazes in Glazes
        from cracks in Gen.Int[0, 4]
        from ware in Gen.Select(Gen.Int[0, forms.Length - 1], Gen.Int[0, glazes.Length - 1], Gen.Int[0, 19], (f, g, c) => new HandWare(forms[f], glazes[g], c < cracks)).Array[20]
        select ware;

    /// <summary>Any chamber, whether or not play could reach it.</summary>
    public static Gen<HandScore> Tables { get; } =
        from isClimbing in Gen.Bool
        from ware in Ware
        from free in Gen.Int[0, 6]
        from holes in Gen.Int[0, 9].Array[20]
        from accepted in Gen.Int[1, 20].HashSet[0, 3]
        from shards in Gen.Int[0, 4]
        from sticks in Gen.Int[0, 12]
        select new HandScore(Scattered(isClimbing, ware, holes, free), [.. accepted.Order()], shards, sticks);

    /// <summary>A chamber that was loaded lawfully, ware by ware, with some of it cracked afterwards.</summary>
    public static Gen<HandScore> LawfulTables { get; } =
        from isClimbing in Gen.Bool
        from ware in Ware
        from bays in Gen.Int[0, 4].Array[20]
        from count in Gen.Int[0, 20]
        from sticks in Gen.Int[0, 5]
        select new HandScore(Loaded(isClimbing, ware[..count], bays), [], 0, sticks);

    /// <summary>The position that a table is.</summary>
    public static Position Position(HandScore table) => Game.Position(Sheets[table.Chamber.IsClimbing ? 1 : 0], Text(table));

    private static Gen<string> OneOf(params string[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    private static string Text(HandScore table) => $"""
        seat 1:
          chamber: |
        {table.Chamber.Draw("    ")}  sticks: {table.Sticks}
          shards: {(table.Shards == 0 ? "[]" : $"{table.Shards} ware")}
          accepted: [{string.Join(", ", table.Accepted.Select(n => $"Commission {n}"))}]
        turn of: seat 1
        """;

    private static HandChamber Scattered(bool isClimbing, HandWare[] ware, int[] holes, int free)
    {
        var chamber = new HandChamber(isClimbing);
        foreach (((int bay, int tier), int i) in chamber.Shelves.Select((s, i) => (s, i)).Where(s => holes[s.i] >= free))
        {
            chamber[bay, tier] = ware[i];
        }

        return chamber;
    }

    private static HandChamber Loaded(bool isClimbing, HandWare[] ware, int[] bays)
    {
        var chamber = new HandChamber(isClimbing);
        foreach ((HandWare one, int bay) in ware.Zip(bays))
        {
            foreach ((int Bay, int Tier) spot in chamber.Shelves.Where(s => s.Bay == bay && chamber.PlacingBreaks(one, s.Bay, s.Tier).Count == 0).Take(1).ToArray())
            {
                chamber[spot.Bay, spot.Tier] = one;
            }
        }

        return chamber;
    }
}
