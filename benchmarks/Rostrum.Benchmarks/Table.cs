using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Outside;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>What is measured: Kiln Night with a full chamber of twenty ware, three commissions, shards and sticks.</summary>
internal static class Table
{
    // Highest tier first; every shelf is taken.
    private static readonly string[] Chamber =
    [
        "la bi li bi lc",
        "ba ji bi pi bc",
        "ba ji pi ji bi",
        "pa pi pi jc pc",
    ];

    private static readonly int[] Accepted = [12, 1, 18];

    /// <summary>The folder of the demo game, read once into memory, so that the disk is not measured.</summary>
    public static GameFolder Folder { get; } = FolderOf("games/kiln-night");

    /// <summary>The idiom library.</summary>
    public static IdiomLibrary Idioms { get; } = IdiomLibrary.Read(FolderOf("idioms"), new DiagnosticBag());

    /// <summary>The sheet of the demo game.</summary>
    public static Sheet Sheet { get; } = Sound(SheetReader.Read(Folder, Idioms, []));

    /// <summary>The full chamber as the peer sees it.</summary>
    public static HandScore Peer { get; } = new(Hand(), Accepted, 2, 4);

    /// <summary>The full chamber as the tool sees it.</summary>
    public static Position Position { get; } = Read();

    /// <summary>A sheet without a single error.</summary>
    public static Sheet Sound(SheetReading reading) => reading.IsSound
        ? reading.Sheet!
        : throw new InvalidOperationException(string.Join('\n', reading.Problems.Select(p => $"{p.At}: {p.Message}")));

    private static Position Read()
    {
        string text = $"seat 1:\n  chamber: |\n{Peer.Chamber.Draw("    ")}  sticks: 4\n  shards: 2 ware\n  accepted: [{string.Join(", ", Accepted.Select(n => $"Commission {n}"))}]\nturn of: seat 1\n";
        var problems = new DiagnosticBag();
        return PositionReader.Read(Sheet, new SourceText("full.yaml", text), problems).Position
            ?? throw new InvalidOperationException(string.Join('\n', problems.InOrder().Select(p => p.Message)));
    }

    private static HandChamber Hand()
    {
        var chamber = new HandChamber(isClimbing: false);
        foreach ((int bay, int tier) in chamber.Shelves)
        {
            string ware = Chamber[3 - tier].Split(' ')[bay];
            chamber[bay, tier] = new HandWare(ware[0], ware[1], false);
        }

        return chamber;
    }

    private static GameFolder FolderOf(string name)
    {
        string folder = Path.Combine(Root(AppContext.BaseDirectory), name);
        return GameFolder.InMemory(name, [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .Select(f => (Path.GetRelativePath(folder, f).Replace('\\', '/'), File.ReadAllText(f)))]);
    }

    private static string Root(string folder) =>
        File.Exists(Path.Combine(folder, "Rostrum.slnx")) ? folder : Root(Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar))!);
}
