using System.Diagnostics;
using System.Globalization;
using Rostrum.Play;
using Rostrum.Play.Counting;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Benchmarks;

/// <summary>How long exact counts of whole games take by their sheets: processor time of one core, least of some rounds, and the memory that is held afterwards.</summary>
/// <remarks>Reversi has a peer in the same run: its rules written by hand over two sets of bits, counting every line without joining positions that are alike.</remarks>
internal static class Counting
{
    private const int Rounds = 3;

    private static readonly (string Game, int Plies, bool Distinct)[] Counts =
    [
        ("traditional/tic-tac-toe", 9, true), ("traditional/four-in-a-row", 7, true), ("traditional/peg-solitaire", 7, true),
        ("traditional/sowing", 5, true), ("plank-road", 3, true), ("traditional/reversi", 7, false), ("traditional/reversi", 8, false),
    ];

    /// <summary>Measures everything and writes a table.</summary>
    public static void Run(TextWriter output)
    {
        output.WriteLine("| game | plies | lines of the last | positions | least processor s | lines a second | memory MB |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- |");
        foreach ((string game, int plies, bool distinct) in Counts)
        {
            Measure(output, game, plies, distinct);
        }

        long lines = 0;
        double peer = Enumerable.Range(0, Rounds).Select(_ => Seconds(() => lines = HandReversi.Lines(8))).Min();
        output.WriteLine($"| reversi by hand | 8 | {lines.ToString("N0", CultureInfo.InvariantCulture)} | | {Say(peer)} | {((double)lines / peer).ToString("N0", CultureInfo.InvariantCulture)} | |");
    }

    private static void Measure(TextWriter output, string game, int plies, bool distinct)
    {
        Sheet sheet = ShippedGames.Open(game).Sheet().Sheet!;
        PlyCount last = GameTable.Of(sheet).Count(plies, distinct).Last();
        double least = Enumerable.Range(0, Rounds).Select(_ => Seconds(() => last = GameTable.Of(sheet).Count(plies, distinct).Last())).Min();
        using Process self = Process.GetCurrentProcess();
        string lines = last.Lines.ToString("N0", CultureInfo.InvariantCulture);
        string positions = last.Distinct?.ToString("N0", CultureInfo.InvariantCulture) ?? "not counted";
        output.WriteLine($"| {game} | {plies} | {lines} | {positions} | {Say(least)} | {((double)last.Lines / least).ToString("N0", CultureInfo.InvariantCulture)} | {self.PeakWorkingSet64 / 1_000_000} |");
        output.Flush();
    }

    private static double Seconds(Action act)
    {
        using Process self = Process.GetCurrentProcess();
        TimeSpan before = self.TotalProcessorTime;
        act();
        self.Refresh();
        return (self.TotalProcessorTime - before).TotalSeconds;
    }

    private static string Say(double seconds) => seconds.ToString("0.00", CultureInfo.InvariantCulture);
}

/// <summary>Reversi written by hand: a forced pass is a turn, and lines that have ended are dropped.</summary>
internal static class HandReversi
{
    private static readonly (int Columns, int Rows)[] Directions = [(1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1)];

    /// <summary>How many lines of play there are after so many turns.</summary>
    public static long Lines(int plies) => Lines(1UL << 28 | 1UL << 35, 1UL << 27 | 1UL << 36, plies);

    private static long Lines(ulong mine, ulong theirs, int plies)
    {
        if (plies == 0)
        {
            return 1;
        }

        long lines = 0;
        bool canLay = false;
        for (int space = 0; space < 64; space++)
        {
            ulong turned = Turned(mine, theirs, space);
            if (turned != 0)
            {
                canLay = true;
                lines += Lines(theirs & ~turned, mine | turned | 1UL << space, plies - 1);
            }
        }

        return canLay ? lines : CanLay(theirs, mine) ? Lines(theirs, mine, plies - 1) : 0;
    }

    private static bool CanLay(ulong mine, ulong theirs) => Enumerable.Range(0, 64).Any(s => Turned(mine, theirs, s) != 0);

    private static ulong Turned(ulong mine, ulong theirs, int space)
    {
        if (((mine | theirs) >> space & 1) == 1)
        {
            return 0;
        }

        ulong all = 0;
        foreach ((int columns, int rows) in Directions)
        {
            ulong run = 0;
            int column = (space % 8) + columns;
            int row = (space / 8) + rows;
            while (column is >= 0 and < 8 && row is >= 0 and < 8 && (theirs >> ((8 * row) + column) & 1) == 1)
            {
                run |= 1UL << ((8 * row) + column);
                (column, row) = (column + columns, row + rows);
            }

            all |= column is >= 0 and < 8 && row is >= 0 and < 8 && (mine >> ((8 * row) + column) & 1) == 1 ? run : 0;
        }

        return all;
    }
}
