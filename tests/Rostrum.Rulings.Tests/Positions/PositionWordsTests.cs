using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Positions;

public sealed class PositionWordsTests
{
    [Fact]
    public void Places_are_yours_or_another_seats_or_the_tables()
    {
        var kiln = new PositionWords(Position.Blank(TestSheet.Round, "test", 2));
        var stacks = new PositionWords(Position.Blank(TestSheet.Stacks, "test", 2));

        Assert.Equal("your sticks", kiln.Place(TestSheet.Round.Places[1].Place, 0));
        Assert.Equal("seat 2's sticks", kiln.Place(TestSheet.Round.Places[1].Place, 1));
        Assert.Equal("White's heap", stacks.Place(TestSheet.Stacks.Places[1].Place, 1));
        Assert.Equal("the drying", kiln.Place(TestSheet.Round.Places[0].Place, 0));
    }

    [Fact]
    public void A_space_is_called_by_its_name_unless_it_is_another_players()
    {
        var words = new PositionWords(Position.Blank(TestSheet.Round, "test", 2));

        Assert.Equal("A4", words.Space(0, 0, 0));
        Assert.Equal("A4 of seat 2's chamber", words.Space(0, 1, 0));
    }

    [Theory]
    [InlineData("copper jug", "copper jug", "a copper jug")]
    [InlineData("cracked ash bowl", "cracked ash bowl", "a cracked ash bowl")]
    [InlineData("iron plate", "iron plate", "an iron plate")]
    [InlineData("lamp", "lamp whose glaze is not given", "a lamp whose glaze is not given")]
    [InlineData("ash ware", "ash ware whose form is not given", "an ash ware whose form is not given")]
    [InlineData("thing", "thing of unknown kind", "a thing of unknown kind")]
    public void A_thing_is_told_by_its_look(string written, string bare, string withArticle)
    {
        Read read = Read.Fine($"seat 1:\n  shards: [{written}]\n");
        var words = new PositionWords(read.Position);
        Thing thing = read.In("shards").Things[0];

        Assert.Equal((bare, withArticle), (words.Thing(thing), words.AThing(thing)));
    }

    [Theory]
    [InlineData("red stone of Black", "your red stone")]
    [InlineData("3 hot blue stones of White", "3 of White's hot blue stones")]
    [InlineData("2 fire dice crescent", "2 crescent fire dice")]
    [InlineData("2 things", "2 things of unknown kind")]
    public void Owned_things_and_dice_are_told(string written, string expected)
    {
        Read read = Read.Fine($"field: {{A1: {written}}}\n", TestSheet.Stacks);

        Assert.Equal(expected, read.Say(read.On("A1")));
    }
}
