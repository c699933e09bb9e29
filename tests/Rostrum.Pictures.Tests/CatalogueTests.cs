namespace Rostrum.Pictures.Tests;

public class CatalogueTests
{
    [Fact]
    public void Names_are_single_lower_case_words_and_unique() => Assert.All(
        new IEnumerable<INamedLook>[] { Outlines.All, Emblems.All, PieceColours.All, Flaws.All }.Select(list => list.Select(look => look.Name).ToArray()),
        names =>
        {
            Assert.All(names, name => Assert.Matches("^[a-z]+$", name));
            Assert.Equal(names.Distinct(), names);
        });

    [Fact]
    public void Words_are_found_in_any_case()
    {
        Assert.True(Outlines.TryFind("Jug", out Outline? outline) && outline.Name == "jug");
        Assert.True(Emblems.TryFind("WAVE", out Emblem? emblem) && emblem.Name == "wave");
        Assert.True(PieceColours.TryFind("moss", out PieceColour? colour) && colour.Name == "moss");
        Assert.True(Flaws.TryFind("cracked", out Flaw? flaw) && flaw == Flaws.Cracked);
    }

    [Fact]
    public void Unknown_words_are_answered_with_no()
    {
        Assert.False(Outlines.TryFind("teapot", out _));
        Assert.False(Emblems.TryFind("", out _));
        Assert.False(PieceColours.TryFind("mauve", out _));
        Assert.False(Flaws.TryFind("chipped", out _));
    }

    [Fact]
    public void Demanding_an_unknown_word_lists_those_there_are()
    {
        ArgumentException problem = Assert.Throws<ArgumentException>(() => PieceLook.Of("jug", "copper", null, "chipped", "chipped copper jug"));

        Assert.StartsWith("There is no flaw 'chipped'. There are: cracked, spent, hidden.", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Outlines_stand_on_the_ground_and_stay_in_their_square() => Assert.All(Outlines.All, outline =>
    {
        Point[] corners = [.. outline.Shape.Steps.SelectMany(Ends)];

        Assert.All(corners, corner => Assert.True(corner is { X: >= -0.001 and <= 1.001, Y: >= -0.001 and <= 1.001 }, outline.Name));
        Assert.InRange(corners.Max(corner => corner.Y), 0.85, 1.001);
    });

    [Fact]
    public void Emblems_stay_in_their_square() => Assert.All(Emblems.All, emblem => Assert.All(
        emblem.Shape.Steps.SelectMany(Ends),
        corner => Assert.True(corner is { X: >= -0.05 and <= 1.05, Y: >= -0.05 and <= 1.05 }, emblem.Name)));

    private static IEnumerable<Point> Ends(PathStep step) => step switch
    {
        PathStep.Start start => [start.To],
        PathStep.Straight line => [line.To],
        PathStep.Curve curve => [curve.To],
        _ => [],
    };
}
