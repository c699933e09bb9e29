using System.Diagnostics;
using System.Globalization;

namespace Rostrum.Benchmarks;

/// <summary>Measures in rounds, all measures in turn in each: processor time of this process, not the wall clock, and the ratio to the
/// peer of the same round. So other work on the machine disturbs little.</summary>
internal static class Rounds
{
    private const int Count = 7;
    private const double RoundMilliseconds = 250;

    private static readonly TallyBenchmarks Tallies = new();
    private static readonly HexBenchmarks Hexes = new();
    private static readonly RulingBenchmarks Rulings = new();
    private static readonly ReadingBenchmarks Readings = new();
    private static readonly DrawingBenchmarks Drawings = new();

    private static readonly (string Name, Action Do, string? Peer)[] All =
    [
        ("tally by hand", () => Tallies.ByHand(), null),
        ("tally, total and readings", () => Tallies.Total(), "tally by hand"),
        ("tally with all reasons", () => Tallies.TotalWithReasons(), "tally by hand"),
        ("tally of 61 hexes by ten clauses", () => Hexes.Total(), null),
        ("the same with all reasons", () => Hexes.TotalWithReasons(), null),
        ("placing by hand", () => Rulings.ByHand(), null),
        ("ruling on a placing in words", () => Rulings.Placing(), "placing by hand"),
        ("ruling on a truth in words", () => Rulings.Truth(), null),
        ("reading a position", () => Readings.OnePosition(), null),
        ("reading the sheet of Kiln Night", () => Readings.KilnNight(), null),
        ("reading a sheet of 1,000 clauses and cards", () => Readings.ThousandClauses(), null),
        ("reading a sheet of 1,000 cards with drawings", () => Readings.ThousandCards(), null),
        ("SVG of a full chamber", () => Drawings.Svg(), null),
    ];

    /// <summary>Measures everything and writes a table: median and least of the rounds, in microseconds of processor time.</summary>
    public static void Run(TextWriter output)
    {
        double first = CpuMilliseconds(() => Readings.ThousandClauses(), 1);
        int[] repeats = [.. All.Select(m => Repeats(m.Do))];
        double[][] rounds = [.. Enumerable.Range(0, Count).Select(_ => All.Select((m, i) => CpuMilliseconds(m.Do, repeats[i]) / repeats[i]).ToArray())];
        output.WriteLine("| what | median µs | least µs | times the peer | kB allocated |");
        output.WriteLine("| --- | --- | --- | --- | --- |");
        for (int i = 0; i < All.Length; i++)
        {
            int peer = Array.FindIndex(All, m => m.Name == All[i].Peer);
            string ratio = peer < 0 ? "" : Say(Median(rounds.Select(r => r[i] / r[peer])), "0");
            output.WriteLine($"| {All[i].Name} | {Micro(Median(rounds.Select(r => r[i])))} | {Micro(rounds.Min(r => r[i]))} | {ratio} | {Say(AllocatedBytes(All[i].Do) / 1024.0, "N0")} |");
        }

        output.WriteLine();
        output.WriteLine($"The first reading of 1,000 clauses and cards in a fresh process: {Say(first, "0")} ms; most memory that this process ever held: {Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000} MB.");
    }

    // As often as fills a round, after enough runs for the compiler to settle.
    private static int Repeats(Action act)
    {
        double warm = 0;
        while (warm < 4 * RoundMilliseconds)
        {
            warm += CpuMilliseconds(act, 10);
        }

        return Math.Max(1, (int)(RoundMilliseconds / (CpuMilliseconds(act, 10) / 10)));
    }

    private static double CpuMilliseconds(Action act, int repeats)
    {
        using Process self = Process.GetCurrentProcess();
        TimeSpan before = self.TotalProcessorTime;
        for (int i = 0; i < repeats; i++)
        {
            act();
        }

        self.Refresh();
        return (self.TotalProcessorTime - before).TotalMilliseconds;
    }

    private static long AllocatedBytes(Action act)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        act();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static string Micro(double milliseconds) => Say(milliseconds * 1_000, milliseconds < 0.01 ? "0.00" : "N0");

    private static string Say(double value, string form) => value.ToString(form, CultureInfo.InvariantCulture);
}
