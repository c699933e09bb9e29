using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Idioms;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Pictures.Tests;

/// <summary><c>docs/pieces.md</c> says what the catalogues hold, and its example is drawn as it says.</summary>
public sealed class PiecesPageTests
{
    [Fact]
    public void Page_says_what_the_catalogues_hold() => Assert.Equal(PiecesPage.Make(), TestFiles.Made("docs/pieces.md", PiecesPage.Make()));

    [Fact]
    public void Picture_shows_what_the_catalogues_hold() => Assert.Equal(PiecesPage.MakePicture(), TestFiles.Made("docs/pieces.svg", PiecesPage.MakePicture()));

    [Fact]
    public void Example_is_drawn_as_it_says()
    {
        var game = new Game(GameFolder.InMemory("test", ("sheet.yaml", PiecesPage.Sheet)), IdiomLibrary.Empty);
        OpenedPosition opened = game.Open(new SourceText("positions/one.yaml", PiecesPage.Position));

        Assert.Empty(game.Sheet().Problems.Concat(opened.Problems).Concat(AppearanceCheck.Of(game.Sheet().Sheet!)).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        TablePicture picture = PositionPicture.Of(opened.Position!, PictureWish.Plain("one"));
        Assert.Equal(
            ["hut rust -", "wedge pine ring", "wedge moss spot", "drum pine ring", "drum moss spot"],
            picture.Boards[0].Spaces.OrderBy(s => s.Row).ThenByDescending(s => s.Column).Select(s => s.Content).OfType<CellPicture.Stack>().Select(c => c.Pieces[0]).Select(l => $"{l.Outline.Name} {l.Colour.Name} {l.Emblem?.Name ?? "-"}"));
    }
}
