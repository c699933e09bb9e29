using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Rostrum.Pictures;
using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Tests.Outside;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>Tallying a full chamber, beside a scorer written by hand in plain C#.</summary>
public class TallyBenchmarks
{
    private readonly Position _position = Table.Position;
    private readonly HandScore _peer = Table.Peer;

    [Benchmark(Baseline = true)]
    public int ByHand() => _peer.Lines.Sum(l => l.Points);

    [Benchmark]
    public long? Total() => Tally.Of(_position, 0).Total.Certain;

    [Benchmark]
    public int TotalWithReasons() => Tally.Of(_position, 0).Lines.Sum(l => l.Because.Length);
}

/// <summary>Tallying a full board of 61 hexes by ten clauses of different sorts.</summary>
public class HexBenchmarks
{
    private readonly Position _position = HexField.Position;

    [Benchmark]
    public long? Total() => Tally.Of(_position, 0).Total.Certain;

    [Benchmark]
    public int TotalWithReasons() => Tally.Of(_position, 0).Lines.Sum(l => l.Because.Length);
}

/// <summary>Rulings in words on the full chamber.</summary>
public class RulingBenchmarks
{
    private readonly Position _position = Table.Position;
    private readonly HandChamber _peer = Table.Peer.Chamber;

    [Benchmark(Baseline = true)]
    public int ByHand() => _peer.PlacingBreaks(new HandWare('j', 'c', false), 2, 3).Count;

    [Benchmark]
    public string Placing() => Ruling.On(_position, "place copper jug on C4").Ruling!.Verdict;

    [Benchmark]
    public string Truth() => Ruling.On(_position, "Commission 12 is met").Ruling!.Verdict;
}

/// <summary>Reading sheets and positions: text in, checked values out.</summary>
public class ReadingBenchmarks
{
    private readonly GameFolder _kilnNight = Table.Folder;
    private readonly GameFolder _large = LargeSheet.Folder;
    private readonly GameFolder _cards = LargeSheet.OfCards;
    private readonly string _printed = PositionPrinter.Print(Table.Position);

    [Benchmark]
    public int KilnNight() => Read(_kilnNight);

    [Benchmark]
    public int ThousandClauses() => Read(_large);

    [Benchmark]
    public int ThousandCards() => Read(_cards);

    [Benchmark]
    public ImmutableArray<Diagnostic> OnePosition()
    {
        var problems = new DiagnosticBag();
        PositionReader.Read(Table.Sheet, new SourceText("full.yaml", _printed), problems);
        return problems.InOrder();
    }

    private static int Read(GameFolder folder) => Table.Sound(SheetReader.Read(folder, Table.Idioms, [])).Score.Length;
}

/// <summary>Drawing the full chamber.</summary>
public class DrawingBenchmarks
{
    private readonly Position _position = Table.Position;

    [Benchmark]
    public int Svg() => SvgWriter.Write(TablePainter.Paint(PositionPicture.Of(_position, PictureWish.Plain("A full chamber")))).Length;
}
