using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Rostrum.Testing.Slips;

namespace Rostrum.Benchmarks;

/// <summary>How well one slip in a shipped text is told: the shares that <c>docs/performance.md</c> quotes.</summary>
internal static class Messages
{
    /// <summary>Makes the slips and writes the table.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="wishes">How many slips, <c>--worst</c> and <c>--silent</c> for examples, <c>--slip N</c> for one of them; each may be left out.</param>
    /// <returns>0, or 2 where a wish is not understood.</returns>
    public static int Run(TextWriter output, ReadOnlySpan<string> wishes)
    {
        (int count, bool isWorst, bool isSilent, int? one) = (SlipMeasure.Whole, false, false, null);
        for (int i = 0; i < wishes.Length; i++)
        {
            switch (wishes[i])
            {
                case "--worst":
                    isWorst = true;
                    break;
                case "--silent":
                    isSilent = true;
                    break;
                case "--slip" when i + 1 < wishes.Length && Number(wishes[i + 1]) is { } number:
                    one = number;
                    i++;
                    break;
                case var wish when Number(wish) is > 0 and { } number:
                    count = number;
                    break;
                default:
                    Console.Error.WriteLine($"'{wishes[i]}' is not understood. Write: bench messages [NUMBER] [--worst] [--silent] [--slip NUMBER]");
                    return 2;
            }
        }

        Write(output, one is { } slip ? [slip] : Enumerable.Range(0, count), isWorst || one is not null, isSilent || one is not null);
        return 0;
    }

    private static void Write(TextWriter output, IEnumerable<int> numbers, bool isWorst, bool isSilent)
    {
        using Process self = Process.GetCurrentProcess();
        ImmutableArray<SlipFinding> findings = SlipMeasure.Of(numbers);
        IEnumerable<string> lines = [
            .. SlipTable.Rows(findings),
            "",
            .. findings.Where(f => f.Unsafe is not null).Select(f => $"Not safe: {f.Slip}: {f.Unsafe}"),
            .. isWorst ? SlipTable.Worst(findings) : [],
            .. isSilent ? SlipTable.Silent(findings) : [],
        ];
        foreach (string line in lines)
        {
            output.WriteLine(line);
        }

        self.Refresh();
        output.WriteLine($"{findings.Length} slips, seed {SlipMeasure.Seed}; processor time {self.TotalProcessorTime.TotalSeconds.ToString("0", CultureInfo.InvariantCulture)} s.");
    }

    private static int? Number(string word) => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
}
