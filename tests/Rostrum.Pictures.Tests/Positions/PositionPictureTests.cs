using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Testing;
using Rostrum.Text;

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
        var words = PositionWords.ForAudience(position.Sheet);

        Assert.All(position.Boards[0][position.Me].SelectMany(s => s.Things), t => Assert.Contains(words.Thing(t), scene.Description, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Marked_spaces_are_pointed_out_by_name()
    {
        TablePicture picture = PositionPicture.Of(Open("E1"), new PictureWish("E1", null, [("B2", MarkKind.Bad, ""), ("Z9", MarkKind.Good, "")]));

        SpaceMark mark = Assert.Single(picture.Marks);
        Assert.Equal((new SpaceAt("board0-0", "B2"), MarkKind.Bad), (mark.At, mark.Kind));
    }

    [Fact]
    public void A_space_that_is_not_given_looks_like_no_piece()
    {
        TablePicture picture = PositionPicture.Of(Open("blanks"), PictureWish.Plain("blanks"));

        CellPicture.Stack cell = Assert.IsType<CellPicture.Stack>(picture.Boards[0].Spaces.Single(s => s.Name == "A4").Content);
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
    public void What_lies_before_two_seats_is_shown_and_each_is_called_by_its_name()
    {
        TablePicture picture = PositionPicture.Of(Read(TwoSeats), PictureWish.Plain("two"));

        Assert.Equal(["Seat 1's chamber", "Seat 2's chamber"], picture.Boards.Select(b => b.Title));
        Assert.Equal(
            [("Seat 1's sticks", "board0-0"), ("Seat 2's sticks", "board0-1"), ("Seat 2's accepted", "board0-1"), ("Display", null)],
            picture.Heaps.Select(h => (h.Name, h.Board)));
    }

    [Fact]
    public void An_audience_is_never_spoken_to()
    {
        string said = TablePainter.Paint(PositionPicture.Of(Read(TwoSeats), PictureWish.Plain("two"))).Description;

        Assert.DoesNotMatch("(?i)\\byour?\\b", said);
        Assert.Contains("Seat 1's sticks: 4 sticks. Seat 2's sticks: 7 sticks. Seat 2's accepted: Commission 12.", said);
    }

    [Fact]
    public void Things_of_each_seat_lie_between_its_board_and_the_next()
    {
        Scene scene = TablePainter.Paint(PositionPicture.Of(Read(TwoSeats), PictureWish.Plain("two")));
        SceneNode.Text[] texts = [.. scene.Flat().OfType<SceneNode.Text>()];

        double LeftOf(string words) => texts.First(t => t.Content.StartsWith(words, StringComparison.Ordinal)).At.X;
        Assert.True(LeftOf("Seat 1's chamber") < LeftOf("Seat 1's sticks"));
        Assert.True(LeftOf("Seat 1's sticks") < LeftOf("Seat 2's chamber"));
        Assert.True(LeftOf("Seat 2's chamber") < LeftOf("Seat 2's sticks"));
    }

    [Fact]
    public void Things_of_a_single_seat_have_plain_names()
    {
        TablePicture picture = PositionPicture.Of(Open("E1"), PictureWish.Plain("E1"));

        Assert.Null(Assert.Single(picture.Boards).Title);
        Assert.Equal(["Sticks", "Shards", "Accepted"], picture.Heaps.Select(h => h.Name));
    }

    [Fact]
    public void The_names_that_Kiln_Night_asks_for_are_in_the_catalogues() => Assert.Empty(AppearanceCheck.Of(Kiln.Sheet().Sheet!));

    private const string TwoSeats = """
        seat 1:
          chamber: |
            4 .  .  .  .  .
            3 .  .  .  .  .
            2 ba ji .  .  .
            1 pa pa pi .  .
            / A  B  C  D  E
          sticks: 4
        seat 2:
          chamber: |
            4 .  .  .  .  .
            3 .  .  lc .  .
            2 .  .  bi .  ja!
            1 pc .  pi jc bc
            / A  B  C  D  E
          sticks: 7
          accepted: [Commission 12]
        display: [Commission 3, Commission 7, Commission 11, Commission 18]
        turn of: seat 2
        """;

    private static Position Read(string text)
    {
        OpenedPosition opened = Kiln.Open(new SourceText("two.yaml", text));
        Assert.Empty(opened.Problems);
        return opened.Position!;
    }

    private static Position Open(string name) => Kiln.Open(Kiln.PositionText(name).Text!).Position!;
}
