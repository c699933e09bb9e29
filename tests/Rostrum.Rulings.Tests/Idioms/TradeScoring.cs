using System.Collections.Immutable;

namespace Rostrum.Rulings.Tests.Idioms;

/// <summary>The ways of scoring that the trade uses, and what answers each: idioms, or a form of the sheet that needs none.</summary>
internal static class TradeScoring
{
    /// <summary>All of them, by number.</summary>
    public static ImmutableArray<TradeWay> All { get; } =
    [
        new(1, "fixed for each item", ["so many for each", "its own worth"]),
        new(2, "step table by size, with a cap or going on", ["by their number", "groups by size", "runs by length", "each line by its number"]),
        new(3, "growing as a triangle or a square", ["growing with their number"]),
        new(4, "for sets: different, alike, the best split", ["sets of different ones", "sets of alike ones", "best split into sets", "one of each as a set", "different ones by number"]),
        new(5, "largest group or longest way only", ["largest group", "largest group of a kind", "longest way"]),
        new(6, "flat for each group that qualifies", ["each big group", "full lines", "full lines alike or different"]),
        new(7, "conditional on neighbours", ["different neighbours", "neighbours of a kind", "enough neighbours", "enough different neighbours"]),
        new(8, "majority, first and second, with ties of either kind", ["the most", "the most and second most", "areas held"]),
        new(9, "one number times another", ["one number times another"]),
        new(10, "for pairs", ["pairs that fit", "one of each as a set"]),
        new(11, "value revealed as markers leave", ["value uncovered", "highest number uncovered"]),
        new(12, "objective met or not, or graded", ["cards met or not", "drawings on cards", "by their number"]),
        new(13, "bonus that is unlocked", ["for so many at least", "bonus where something holds"]),
        new(14, "penalty for leftovers or unfinished goals", ["each one missing", "so many for each", "cards met or not"]),
        new(15, "position on a track", ["steps along a track", "prize where it stands", "number printed under it", "by their number"]),
        new(16, "during play or at the end, by rounds of changing weight", ["weighed by the round", "so many for each"]),
        new(17, "the lowest of several counts", ["the lowest counts"]),
        new(18, "exact bid met", ["bid met exactly"]),
        new(19, "leftovers turned into points, with rounding", ["leftovers by a rate"]),
        new(20, "ties broken in a chain, shared win", []) { Form = "a list under [ties](#ties-ratings-and-limits)" },
        new(21, "score of the score: steps by the total", ["by their number"]) { Form = ", or a [rating](#ties-ratings-and-limits)" },
        new(22, "totals below nothing, floor at nothing", ["so many for each"]) { Form = " with [`at least: 0`](#ties-ratings-and-limits)" },
    ];
}

/// <summary>A way of scoring.</summary>
/// <param name="Number">Its number in the list of the trade.</param>
/// <param name="Words">What it is.</param>
/// <param name="Idioms">The idioms that say it; empty where a form of the sheet does.</param>
internal sealed record TradeWay(int Number, string Words, ImmutableArray<string> Idioms)
{
    /// <summary>A form of the sheet that says it, or that belongs to it; empty for none.</summary>
    public string Form { get; init; } = "";
}
