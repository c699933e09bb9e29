using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Page;
using Rostrum.Rulings.Games;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Pack;

/// <summary>What a player finds on the aid of Kiln Night, and in which order.</summary>
public sealed class AidMakerTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly PlayerAid Aid = AidMaker.Make(Kiln, LessonCheck.Of(Kiln)!);

    [Fact]
    public void The_sections_follow_the_game() =>
        Assert.Equal(["In the box", "Set-up", "Your turn", "Laws", "End of the game", "Scoring"], Aid.Sections.Select(s => s.Title));

    [Theory]
    [InlineData("Set-up", "The starting player takes two sticks, each player further on one more than the one before.")]
    [InlineData("Your turn", "Burn two sticks to swap two neighbouring ware.")]
    [InlineData("End of the game", "Burn two sticks to save a ware from the fire.")]
    public void An_action_stands_where_play_reaches_it_first(string section, string sentence) =>
        Assert.Equal([section], Aid.Sections.Where(s => s.Clauses.Any(c => c.Sentence == sentence)).Select(s => s.Title));

    [Theory]
    [InlineData("Each upright run", "The rules leave open: runs of five and six bowls.")]
    [InlineData("Score 1 point a ware", "The rules leave open: a cracked ware inside a group.")]
    [InlineData("A jug scores", "")]
    public void A_clause_that_the_rulebook_leaves_open_says_so(string begins, string note) =>
        Assert.Equal(note, Aid.Sections.SelectMany(s => s.Clauses).Single(c => c.Sentence.StartsWith(begins, StringComparison.Ordinal)).Note);
}
