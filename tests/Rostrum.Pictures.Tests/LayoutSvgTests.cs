using Rostrum.Testing;

namespace Rostrum.Pictures.Tests;

/// <summary>A small board of each form, as it was looked at and approved.</summary>
public class LayoutSvgTests
{
    private static readonly PieceLook Peat = PieceLook.Of("square", "iron", null, null, "peat");
    private static readonly PieceLook Plank = PieceLook.Of("disc", "rust", "ring", null, "plank");

    [Fact]
    public void Hexes_look_as_approved() => Match("hexes", new BoardPicture("marsh", null, BoardForm.Hexes,
        [Space("a1", 1, 1) with { Numbers = [3] }, Space("a2", 3, 1, Peat, Plank), Space("b1", 0, 0, Plank), Space("b2", 2, 0)])
    {
        Rows = ["b", "a"],
        NumberNames = ["depth"],
        Areas = [new AreaPicture("far", "shore far", [0, 1])],
    });

    [Fact]
    public void Map_looks_as_approved() => Match("map", new BoardPicture("roads", null, BoardForm.Map,
        [Space("inn", 0, 0, Plank), Space("ferry", 1, 0) with { Numbers = [2] }, Space("mill", 2, 0)])
    {
        Ways = [[0, 1, 2]],
        NumberNames = ["toll"],
        Areas = [new AreaPicture("dale", "land dale", [0, 1])],
    });

    [Fact]
    public void Ring_looks_as_approved() => Match("ring", new BoardPicture("ring", null, BoardForm.Ring, [.. Enumerable.Range(1, 7).Select(n => Space($"{n}", n, 0))]));

    [Fact]
    public void Track_looks_as_approved() => Match("track", new BoardPicture("track", null, BoardForm.Track, [.. Enumerable.Range(1, 13).Select(n => Space($"{n}", n, 0))]));

    private static void Match(string name, BoardPicture board) => Snapshots.Match(
        SvgWriter.Write(TablePainter.Paint(new TablePicture(name, [board]) { View = TableView.Above, ShowsTitle = false })), name);

    private static SpacePicture Space(string name, int column, int row, params PieceLook[] pieces) =>
        new(name, column, row, pieces is [] ? CellPicture.Empty : CellPicture.Holding(pieces));
}
