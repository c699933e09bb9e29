namespace Rostrum.Pictures.Tests;

/// <summary>Whether pieces drawn 24 pixels a shelf are told apart by everybody.</summary>
/// <remarks>Colour vision after Machado and others (2009) at severity 100. The thresholds are ours: see <see cref="TileDifference"/>.</remarks>
public class DistinguishabilityTests
{
    private static readonly Dictionary<string, Lazy<PixelGrid[]>> Tiles = new[] { "light", "dark" }.ToDictionary(
        palette => palette,
        palette => new Lazy<PixelGrid[]>(() => [.. KilnNight.AllWare.Select(word => Tile(KilnNight.Ware(word), palette))]));

    public static MatrixTheoryData<string, Sight> Viewings => new(["light", "dark"], Enum.GetValues<Sight>());

    [Theory]
    [MemberData(nameof(Viewings))]
    public void All_ware_whole_and_cracked_differ_pairwise_at_24_pixels(string palette, Sight sight)
    {
        PixelGrid[] tiles = Tiles[palette].Value;

        var pairs =
            from first in Enumerable.Range(0, tiles.Length)
            from second in Enumerable.Range(first + 1, tiles.Length - first - 1)
            select (Names: $"{KilnNight.AllWare[first]}/{KilnNight.AllWare[second]}", Pixels: TileDifference.Pixels(tiles[first], tiles[second], sight));

        Assert.Equal(276, pairs.Count());
        Assert.DoesNotContain(pairs, pair => pair.Pixels < TileDifference.AtAGlance);
    }

    [Theory]
    [InlineData("bowl rust -", "bowl pine -", Sight.Grey)]
    [InlineData("bowl rust -", "bowl pine -", Sight.NoRed)]
    [InlineData("bowl rust -", "bowl moss -", Sight.NoGreen)]
    [InlineData("bowl slate -", "bowl moss -", Sight.NoBlue)]
    [InlineData("bowl iron gem", "bowl iron spot", Sight.Full)]
    public void Pair_that_leans_on_one_colour_or_one_small_mark_is_found_out(string first, string second, Sight sight) =>
        Assert.InRange(TileDifference.Pixels(Tile(Look(first), "light"), Tile(Look(second), "light"), sight), 0, TileDifference.AtAGlance - 1);

    [Fact]
    public void Tiles_of_different_size_are_not_compared() => Assert.Throws<ArgumentException>(() =>
        TileDifference.Pixels(new PixelGrid(1, 1, [default]), new PixelGrid(2, 1, [default, default]), Sight.Full));

    private static PieceLook Look(string words) => words.Split(' ') is [var outline, var colour, var emblem]
        ? PieceLook.Of(outline, colour, emblem == "-" ? null : emblem, null, words)
        : throw new ArgumentException(words);

    internal static PixelGrid Tile(PieceLook look, string palette)
    {
        BoardPicture board = BoardPicture.OfRows("one", null, [""], [new BoardRow("", [CellPicture.Holding(look)])]);
        Scene scene = TablePainter.Paint(KilnNight.Table(board) with { Names = SpaceNames.None }, shelf: 24);
        return PngWriter.Pixels(scene, 1, palette == "dark" ? Palette.Dark : Palette.Light);
    }
}
