using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Testing;

/// <summary>The second bench of the idiom files: a map and a trail on the table, huts of both players, tiles that may be stacked.</summary>
public static class TableBench
{
    /// <summary>The sheet: a map of 4 by 3, a trail of six steps, a hut of each player, tiles of three lands, and the actions <c>put</c> and <c>climb</c>.</summary>
    public const string SheetText = """
        rule sheet: 1
        game: Table bench
        players: 2
        sources:
          book: {title: Rulebook, printing: first, pages: 4}
        pieces:
          hut: {each player: 9}
          tile: {count: 40, attributes: {land: [wood, lake, hill]}}
        signs: {h: hut, w: wood, l: lake, k: hill}
        boards:
          map:
            squares: 4 across 3 up
            columns: column A to D
            rows: row 1 to 3
            spaces: plot
            areas: {shire: {west: A1 A2 A3 B1 B2 B3, east: C1 C2 C3 D1 D2 D3}}
            values: {reward: {A3: 3, B3: 4, D1: 5}}
          trail: {track: 6, values: {depth: {6: 2}}}
        places:
          tiles: {heap of: tile, of: each player}
        tables:
          step worth: {1: 0, 2: 1, 3: 3, 4: 6, 5: 10, beyond: last}
        actions:
          put: {phrase: put (what) on (spot), choose: {what: a tile in my tiles, spot: a plot in map}, do: move what to spot}
          climb:
            phrase: climb off (start) to (goal)
            choose: {start: a plot in map where it shows my hut, goal: a plot in map}
            do: move top of start to goal
        laws:
          in the open: {says: Nobody climbs onto a hut., cite: book 2, binds: climb, forbids: goal shows a hut}
        score:
          huts: {says: A hut scores 2 points., cite: book 3, each: s in map where s shows my hut, points: 2}
        words:
          hut on top (plot s): s shows a hut
        """;

    /// <summary>The files of the game.</summary>
    public static GameFolder Folder { get; } = GameFolder.InMemory("table", (SheetReader.FileName, SheetText));

    /// <summary>A position of it, whose turn it is seat 1's.</summary>
    /// <param name="map">A drawing on one line, from the top row down: <c>h1 . . . / w . . . / . . . h2</c>.</param>
    /// <param name="mine">What else lies there: <c>trail</c>, or what seat 1 has instead of a tile of each land.</param>
    /// <returns>The text of the position.</returns>
    public static string PositionWith(string map, IReadOnlyList<(string Place, string Holds)> mine)
    {
        string tiles = mine.FirstOrDefault(m => m.Place == "tiles").Holds ?? "[wood tile, lake tile, hill tile]";
        string trail = mine.FirstOrDefault(m => m.Place == "trail").Holds ?? ". . . . . .";
        string[] rows = [.. map.Split('/').Select((row, i) => $"  {3 - i} {row.Trim()}")];
        return $"map: |\n{string.Join('\n', rows)}\n  / A B C D\ntrail: |\n  | {trail}\nseat 1:\n  tiles: {tiles}\nseat 2:\n  tiles: nothing\nturn of: seat 1\n";
    }
}
