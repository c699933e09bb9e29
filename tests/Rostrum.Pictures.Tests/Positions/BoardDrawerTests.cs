using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Idioms;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Pictures.Tests.Positions;

/// <summary>What a sheet says of a board is in its picture.</summary>
public class BoardDrawerTests
{
    private const string Ways = """
        rule sheet: 1
        game: Ways
        players: 2
        pieces:
          seed: {count: 48}
        boards:
          bowls: {ring: s1 to s6 S n1 to n6 N}
          road: {track: 30}
          rack: {squares: 4 across 1 up}
          valley: {file: map.csv}
        """;

    private const string Valley = "name,next to,across,up,land\nOld Mill,Inn,0,0,hills\nInn,,4,1.5,dale\n";

    [Fact]
    public void Hexes_have_their_pool_areas_and_numbers()
    {
        BoardPicture marsh = Trail("marsh: |\n  a   r . .\n  b  . # . .\n  c   . . .\nturn of: seat 1").Boards[0];

        Assert.Equal((BoardForm.Hexes, "b2", "depth"), (marsh.Form, Assert.Single(marsh.Holes).Name, Assert.Single(marsh.NumberNames)));
        Assert.Equal([("near", "shore near"), ("far", "shore far")], marsh.Areas.Select(area => (area.Label, area.Says)));
        Assert.Equal([1L, 1L, 1L, null, null, null, null, 3L, null], marsh.Spaces.Select(space => space.Numbers[0]));
    }

    [Fact]
    public void A_piece_on_several_spaces_is_one_body()
    {
        BoardPicture field = Trail("field: |\n  2 . b .\n  1 . b .\n  / K L M\nturn of: seat 1").Boards[2];

        BodyPicture body = Assert.Single(field.Bodies);
        Assert.Equal(["L1", "L2"], body.Spaces.Select(space => field.Spaces[space].Name).Order());
        Assert.Equal(("bar", "shape"), (body.Look.Says, body.Look.Outline.Name));
    }

    [Fact]
    public void Map_has_its_lines()
    {
        BoardPicture roads = Trail("roads: {inn: reed}\nturn of: seat 1").Boards[1];

        Assert.Equal(BoardForm.Map, roads.Form);
        Assert.Equal(["inn ferry mill", "inn hill", "hill mill", "mill gate tower"], roads.Ways.Select(way => string.Join(' ', way.Select(space => roads.Spaces[space].Name))));
    }

    [Fact]
    public void Rings_tracks_racks_and_maps_from_a_table_are_told_apart()
    {
        ValueList<BoardPicture> boards = Picture(GameFolder.InMemory("test", ("sheet.yaml", Ways), ("map.csv", Valley)), "bowls: {S: 3 seeds}\nturn of: seat 1").Boards;

        Assert.Equal([BoardForm.Ring, BoardForm.Track, BoardForm.Squares, BoardForm.Map], boards.Select(board => board.Form));
        Assert.Equal((4, 1.5), boards[3].Spaces[1].Spot);
        Assert.Equal(["s1", "30", "A1", "Old Mill"], [boards[0].Spaces[0].Name, boards[1].Spaces[^1].Name, boards[2].Spaces[0].Name, boards[3].Spaces[0].Name]);
    }

    [Fact]
    public void Marks_find_hexes_and_points_by_name()
    {
        Game game = TrailGame.Game("marsh: |\n  a   r . .\n  b  . # . .\n  c   . . .\nturn of: seat 1");
        TablePicture picture = PositionPicture.Of(
            game.Open(game.PositionText(BenchGame.PositionName).Text!).Position!, new PictureWish("x", null, [("c2", MarkKind.Good, ""), ("gate", MarkKind.Bad, "")]));

        Assert.Equal([new SpaceAt("board0-0", "c2"), new SpaceAt("board1-0", "gate")], picture.Marks.Select(mark => mark.At));
        Assert.Contains("gate of Roads is marked with a cross.", TablePainter.Paint(picture).Description, StringComparison.Ordinal);
    }

    private static TablePicture Trail(string position) => Picture(TrailGame.Folder, position);

    private static TablePicture Picture(GameFolder folder, string position)
    {
        OpenedPosition opened = new Game(folder, IdiomLibrary.Empty).Open(new SourceText("positions/one.yaml", position));
        Assert.Empty(opened.Problems.Select(problem => problem.Message));
        return PositionPicture.Of(opened.Position!, PictureWish.Plain("one"));
    }
}
