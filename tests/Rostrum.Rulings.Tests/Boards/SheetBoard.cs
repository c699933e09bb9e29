using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Boards;

/// <summary>A board as a sheet says it, read through the real loader.</summary>
internal sealed class SheetBoard
{
    private SheetBoard(BoardFacts facts) => (Facts, Geometry) = (facts, BoardGeometry.Of(facts));

    public BoardFacts Facts { get; }

    public BoardGeometry Geometry { get; }

    public int Count => Facts.Spaces.Length;

    public int this[string space] => Facts.Spaces.Single(s => s.Name.Name == space).Name.Index;

    /// <summary>The board of the lines below its name.</summary>
    /// <param name="lines">Such as <c>hexes: radius 2</c>; further lines begin at the margin.</param>
    public static SheetBoard Of(string lines, params (string Name, string Text)[] files)
    {
        string sheet = $"rule sheet: 1\nplayers: 2\nseats: [South, North]\nboards:\n  field:\n{string.Concat(lines.Split('\n').Select(l => $"    {l}\n"))}";
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("board", [(SheetReader.FileName, sheet), .. files]), BenchGame.Idioms, []);
        return reading.Problems.IsEmpty ? new SheetBoard(reading.Sheet!.Boards[0]) : throw new InvalidOperationException(string.Join('\n', reading.Problems.Select(p => p.Message)));
    }

    /// <summary>Spaces by name, parted by blanks.</summary>
    public string Names(IEnumerable<int> spaces) => string.Join(' ', spaces.Select(s => Facts.Spaces[s].Name.Name));

    public string Near(string space) => Names(Geometry.Neighbours(this[space]).ToArray());

    public string Name(int? space) => space is { } s ? Facts.Spaces[s].Name.Name : "nothing";

    /// <summary>The greatest distance between two spaces; -1 where some are not joined.</summary>
    public int Diameter =>
        Enumerable.Range(0, Count).Max(s => Enumerable.Range(0, Count).Max(t => Geometry.Distance(s, t) ?? 1_000_000)) is var most && most < 1_000_000 ? most : -1;
}
