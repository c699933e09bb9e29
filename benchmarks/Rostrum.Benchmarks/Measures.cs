using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Rostrum.Pictures;
using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;

namespace Rostrum.Benchmarks;

/// <summary>Tallying a full chamber, beside a scorer written by hand in plain C#.</summary>
public class TallyBenchmarks
{
    [Benchmark(Baseline = true)]
    public int ByHand() => Table.Peer.Lines.Sum(l => l.Points);

    [Benchmark]
    public long? Total() => Tally.Of(Table.Position, 0).Total.Certain;

    [Benchmark]
    public int TotalWithReasons() => Tally.Of(Table.Position, 0).Lines.Sum(l => l.Because.Length);
}

/// <summary>Rulings in words on the full chamber.</summary>
public class RulingBenchmarks
{
    [Benchmark(Baseline = true)]
    public int ByHand() => Table.Peer.Chamber.PlacingBreaks(new Rostrum.Rulings.Tests.Outside.HandWare('j', 'c', false), 2, 3).Count;

    [Benchmark]
    public string Placing() => Ruling.On(Table.Position, "place copper jug on C4").Ruling!.Verdict;

    [Benchmark]
    public string Truth() => Ruling.On(Table.Position, "Commission 12 is met").Ruling!.Verdict;
}

/// <summary>Reading sheets and positions: text in, checked values out.</summary>
public class ReadingBenchmarks
{
    private static readonly string Printed = PositionPrinter.Print(Table.Position);

    [Benchmark]
    public int KilnNight() => Read(Table.Folder);

    [Benchmark]
    public int ThousandClauses() => Read(LargeSheet.Folder);

    [Benchmark]
    public ImmutableArray<Rostrum.Text.Diagnostic> OnePosition()
    {
        var problems = new Rostrum.Text.DiagnosticBag();
        PositionReader.Read(Table.Sheet, new Rostrum.Text.SourceText("full.yaml", Printed), problems);
        return problems.InOrder();
    }

    private static int Read(Rostrum.Text.GameFolder folder) => Table.Sound(SheetReader.Read(folder, Table.Idioms, [])).Score.Length;
}

/// <summary>Drawing the full chamber.</summary>
public class DrawingBenchmarks
{
    [Benchmark]
    public int Svg() => SvgWriter.Write(TablePainter.Paint(PositionPicture.Of(Table.Position, PictureWish.Plain("A full chamber")))).Length;
}
