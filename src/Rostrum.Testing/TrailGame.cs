using Rostrum.Rulings.Games;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Testing;

/// <summary>The trail game: a small made-up sheet with a marsh of hexes and a map of roads, beside the bench game of squares.</summary>
public static class TrailGame
{
    /// <summary>The sheet: a marsh of 9 hexes round a pool, roads between six places, and a small field for bars that lie on two spaces.</summary>
    public const string SheetText = """
        rule sheet: 1
        game: Trail
        players: 2
        seats: [Ann, Ben]
        pieces:
          reed: {count: 20}
          camp: {each player: 9}
          bar: {count: 6, shape: ". ., rotated"}
          hook: {count: 2, shape: ". . . / . - -, rotated, mirrored"}
        signs: {r: reed, c: camp, b: bar, h: hook}
        boards:
          marsh:
            hexes: rows of 3 4 3
            without: b2
            rows: bank
            lines: {rising: slope, falling: slant}
            areas: {shore: {near: c1 to c3, far: a1 to a3}}
            values: {depth: {a1 a2 a3: 1, c2: 3}}
          roads:
            points: [inn ferry mill, inn hill, hill mill, mill gate tower]
            spaces: stop
            regions: {home: {Ann: inn, Ben: tower}, land: {Ann: inn ferry, Ben: gate tower}}
            links: {tunnel: inn-tower}
            values: {toll: {ferry: 2, gate: 4}}
          field: {squares: 3 across 2 up, columns: lane K to M, rows: step 1 to 2}
        actions:
          lay:
            phrase: lay (what) on (spots)
            choose: {what: a bar in supply, spots: "one of fits(what, field)"}
            do: move what to spots
        words:
          joined (space s, space t): s is next to t and difference(height of s, height of t) is at most 1
        laws:
          free: {says: A bar goes on free spaces., binds: lay, needs: "all(s in spaces of spots, s is empty)"}
          beside: {says: Bars touch no other bar., binds: lay, must not leave: "any(s in edge of spaces of what where s shows a bar)"}
        score:
          camps: {says: A camp in the marsh scores its depth., points: "sum(s in marsh where s shows my camp, depth of s)"}
        """;

    /// <summary>The files of the game without positions.</summary>
    public static GameFolder Folder { get; } = With("turn of: seat 1");

    /// <summary>The sheet, read with the idiom library.</summary>
    public static SheetReading Reading { get; } = SheetReader.Read(Folder, BenchGame.Idioms, []);

    /// <summary>The sheet.</summary>
    public static Sheet Sheet => Reading.Sheet!;

    /// <summary>The game with one position, <see cref="BenchGame.PositionName"/>.</summary>
    public static Game Game(string position) => new(With(position), BenchGame.Idioms);

    private static GameFolder With(string position) =>
        GameFolder.InMemory(BenchGame.PositionName, (SheetReader.FileName, SheetText), ($"positions/{BenchGame.PositionName}.yaml", position));
}
