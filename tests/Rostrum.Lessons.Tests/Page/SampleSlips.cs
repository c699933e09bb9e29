using System.Collections.Immutable;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>The slips of the sample page. Numbers of E1: games/kiln-night/rulebook.md, page 11.</summary>
internal static class SampleSlips
{
    public static ImmutableArray<PageSlip> Facts { get; } =
    [
        Fact("fewest players", "1", "book 1"),
        Fact("most players", "4", "book 1"),
        Fact("ware", "72", "book 2"),
        Fact("forms", "4", "book 2"),
        Fact("bowls in the crate", "24", "book 2"),
        Fact("jugs in the crate", "18", "book 2"),
        Fact("plates in the crate", "18", "book 2"),
        Fact("lamps in the crate", "12", "book 2"),
        Fact("glazes", "3", "book 2"),
        Fact("bays", "5", "book 2"),
        Fact("shelves", "20", "book 2"),
        Fact("points for a plate", "3", "book 8"),
        Fact("points for a full tier", "3", "book 8"),
    ];

    public static ImmutableArray<PageSlip> Rulings { get; } =
    [
        new("rule:copper-ash", "place copper jug on B2", new SlipAnswer.Verdict("allowed", SlipTone.Yes), SlipBasis.Exact)
        {
            Reasons = [new("standing", "A jug stands only on the floor, on a plate or on another jug.", "book 5", "B1 is a plate")],
        },
        new("rule:copper-ash-near", "place copper jug on B2", new SlipAnswer.Verdict("not allowed", SlipTone.No), SlipBasis.Exact)
        {
            Reasons = [new("copper and ash", "Copper never stands beside ash.", "book 5", "ash stands at A2, beside B2")],
            IsOpenAtFirst = true,
        },
    ];

    public static ImmutableArray<PageSlip> Tallies { get; } =
    [
        Tally("bowls", 5, Part("a run of two", 3, "A2", "A3"), Part("alone", 1, "C2"), Part("alone", 1, "E1")),
        Tally("jugs", 4, Part("sees ash and iron", 2, "B2"), Part("sees iron and copper", 2, "D1")),
        Tally("plates", 9, Part("three plates in tier 1", 9, "A1", "B1", "C1")),
        Tally("lamps", 4, Part("alone in tier 3", 4, "C3")),
        Tally("glaze", 4, Part("ash; iron is as large", 4, "A1", "A2", "A3", "B1")) with
        {
            Readings = [new("a cracked ware breaks the group", "4", "What touches only through it is two groups."), new("a cracked ware still joins", "4")],
        },
        Tally("full", 3, Part("tier 1", 3, "A1", "B1", "C1", "D1", "E1")),
        Tally("commissions", 7, Part("Commission 12, shown", 9, "C1", "C2", "C3"), Part("Commission 6, not shown", -2)),
        Tally("shards", -2, Part("two shards", -2)),
        Tally("sticks", 1, Part("four sticks, one for the first three", 1)),
        new("E1/total", "E1, everything", new SlipAnswer.Total(35), SlipBasis.Exact)
        {
            Lines =
            [
                Line("bowls", 5, "book 8", Part("a run of two", 3, "A2", "A3"), Part("alone", 1, "C2"), Part("alone", 1, "E1")),
                Line("jugs", 4, "book 8"), Line("plates", 9, "book 8"), Line("lamps", 4, "book 8"), Line("glaze", 4, "book 8"),
                Line("full tiers", 3, "book 8"),
                Line("commissions", 7, "book 6", Part("Commission 12, shown", 9), Part("Commission 6, not shown", -2)),
                Line("shards", -2, "book 8"), Line("sticks", 1, "book 8"),
            ],
            IsOpenAtFirst = true,
        },
        new("run-of-five/bowls", "a run of five bowls", new SlipAnswer.Verdict("the sheet does not say", SlipTone.Unsettled), SlipBasis.Exact)
        {
            Cite = "book 8",
            Readings = [new("as for four", "10"), new("the numbers grow on", "15"), new("split as you like", "11")],
            NotModelled = ["guild marks (book 9)"],
            NotGiven = ["which side of the chamber is used"],
        },
        new("gauge/median", "half of all nights", new SlipAnswer.Fact("42 points or less"), new(FigureKind.Simulated, "100 greedy nights, seed 7; 95 % interval 40 to 44"))
        {
            Reasons = [new("gauge", "Games played by a program that takes the best gain of each turn.", "no page")],
        },
    ];

    private static PageSlip Fact(string name, string value, string cite) =>
        new($"fact:{name.Replace(' ', '-')}", name, new SlipAnswer.Fact(value), SlipBasis.Stated) { Cite = cite };

    private static PageSlip Tally(string clause, long points, params SlipLine[] lines) =>
        new($"E1/{clause}", $"E1, {clause}", new SlipAnswer.Total(points), SlipBasis.Exact) { Cite = "book 8", Lines = [.. lines] };

    private static SlipLine Part(string words, long points, params string[] spaces) => new(spaces.Length == 0 ? words : $"{string.Join(", ", spaces)}: {words}", points);

    private static SlipLine Line(string words, long points, string cite, params SlipLine[] because) =>
        new(words, points) { Cite = cite, Because = [.. because] };
}
