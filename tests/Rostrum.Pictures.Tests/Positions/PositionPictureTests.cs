using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Testing;

namespace Rostrum.Pictures.Tests.Positions;

public class PositionPictureTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");

    public static TheoryData<string> Names => [.. Kiln.PositionNames];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_position_is_drawn_and_told_in_words(string name)
    {
        Position position = Open(name);
        Scene scene = TablePainter.Paint(PositionPicture.Of(position, PictureWish.Plain(name)));
        var words = new PositionWords(position);

        Assert.All(position.Boards[0][position.Me].SelectMany(s => s.Things), t => Assert.Contains(words.Thing(t), scene.Description, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Marked_spaces_are_pointed_out_by_name()
    {
        TablePicture picture = PositionPicture.Of(Open("E1"), new PictureWish("E1", null, [("B2", MarkKind.Bad, ""), ("Z9", MarkKind.Good, "")]));

        SpaceMark mark = Assert.Single(picture.Marks);
        Assert.Equal((1, 1, MarkKind.Bad), (mark.At.Column, mark.At.Row, mark.Kind));
    }

    [Fact]
    public void A_space_that_is_not_given_looks_like_no_piece()
    {
        TablePicture picture = PositionPicture.Of(Open("blanks"), PictureWish.Plain("blanks"));

        CellPicture.Stack cell = Assert.IsType<CellPicture.Stack>(picture.Boards[0].Rows[3].Cells[0]);
        Assert.Equal(("not given", Flaws.Hidden), (cell.Pieces[0].Says, cell.Pieces[0].Flaw));
    }

    [Fact]
    public void Heaps_show_equal_pieces_once_with_their_number()
    {
        TablePicture picture = PositionPicture.Of(Open("E1"), PictureWish.Plain("E1"));

        Heap sticks = Assert.Single(picture.Heaps, h => h.Name == "Sticks");
        Assert.Equal(4, Assert.Single(sticks.Pieces).Count);
    }

    [Fact]
    public void The_names_that_Kiln_Night_asks_for_are_in_the_catalogues() => Assert.Empty(AppearanceCheck.Of(Kiln.Sheet().Sheet!));

    private static Position Open(string name) => Kiln.Open(Kiln.PositionText(name).Text!).Position!;
}
