using System.Collections.Immutable;

namespace Rostrum.Pictures.Tests;

/// <summary>Writes <c>docs/pieces.md</c> and its picture from the catalogues.</summary>
internal static class PiecesPage
{
    /// <summary>The sheet that the page shows.</summary>
    public const string Sheet = """
        game: A wood
        players: 1
        pieces:
          tree:
            attributes: {sort: [oak, fir], age: [young, old]}
            count of each age: {oak: 6, fir: 6}
            outlines: {oak: drum, fir: wedge}
            colours: {young: moss, old: pine}
            emblems: {young: spot, old: ring}
          hut: {count: 4, outlines: hut, colours: rust}
        signs: {o: oak, f: fir, y: young, d: old, h: hut}
        boards:
          wood: {squares: 3 across 2 up}
        """;

    /// <summary>The position that the page shows.</summary>
    public const string Position = """
        wood: |
          2 oy od .
          1 fy fd h
          / A  B  C
        """;

    private const string Words = """
        # How pieces look

        What `draw`, `lesson` and `pack` show of pieces. This page and its picture are made from the catalogues in the code: `ROSTRUM_WRITE_DOCS=1` before the tests
        writes them anew.

        A sheet need not say anything of looks. Kinds then differ in silhouette and colour, in the order of the sheet; values of an attribute differ in colour and
        emblem; with more than one attribute, the first gives the silhouette; what belongs to players differs in colour and emblem. What bears the name of a silhouette,
        a colour or an emblem looks like it: a `hut` is drawn as a hut, a `red` piece is rust. The same sheet always gives the same picture, and a line below it says which piece is which.

        Four keys of a kind under `pieces` say it otherwise. Each takes one word for the whole kind, or a table from values of its attributes and states to words:

        {sheet}

        With this position, `rostrum draw` shows two kinds of trees and a hut:

        {position}

        Give kinds and values that matter two differences, not colour alone: not everybody sees every colour, and some print in grey. A word that the catalogue does
        not have is answered with the nearest one ([ROS0231](diagnostics/ROS0231.md)).

        ![Every silhouette, emblem and colour with its word](pieces.svg)

        | key | gives | words |
        | --- | --- | --- |
        {rows}
        """;

    private static readonly ImmutableArray<(string Key, string Gives, IEnumerable<INamedLook> Looks)> Catalogues =
    [
        ("outlines", "the silhouette", Outlines.All), ("colours", "the colour, in every light", PieceColours.All),
        ("emblems", "a mark on the body", Emblems.All), ("flaws", "what is wrong with it, for states", Flaws.All),
    ];

    /// <summary>The page.</summary>
    public static string Make() => Words
        .Replace("{sheet}", Indented(Sheet), StringComparison.Ordinal)
        .Replace("{position}", Indented(Position), StringComparison.Ordinal)
        .Replace("{rows}", string.Join('\n', Catalogues.Select(c => $"| `{c.Key}` | {c.Gives} | {string.Join(", ", c.Looks.Select(l => $"`{l.Name}`"))} |")), StringComparison.Ordinal)
        + "\n";

    /// <summary>The picture: each word beside what it stands for.</summary>
    public static string MakePicture()
    {
        BoardPicture[] boards =
        [
            .. Boards("silhouette", Outlines.All, o => PieceLook.Of(o.Name, "sand", null, null, o.Name)),
            .. Boards("emblem", Emblems.All, e => PieceLook.Of("disc", "chalk", e.Name, null, e.Name)),
            .. Boards("colour", PieceColours.All, c => PieceLook.Of("square", c.Name, null, null, c.Name)),
            .. Boards("flaw", Flaws.All, f => PieceLook.Of("drum", "sky", null, f.Name, f.Name)),
        ];
        var picture = new TablePicture("Silhouettes, emblems, colours, flaws", [.. boards]) { View = TableView.Above, Names = SpaceNames.Edges, ShowsTitle = false };
        return SvgWriter.Write(TablePainter.Paint(picture, 40), new SvgOptions());
    }

    private static string Indented(string text) => string.Join('\n', text.Split('\n').Select(line => "    " + line));

    private static IEnumerable<BoardPicture> Boards<T>(string name, IEnumerable<T> all, Func<T, PieceLook> look)
        where T : INamedLook =>
        all.Chunk(8).Select((some, i) => BoardPicture.OfRows($"{name}-{i}", null, [""], [.. some.Reverse().Select(l => new BoardRow(l.Name, [CellPicture.Holding(look(l))]))]));
}
