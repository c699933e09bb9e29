using CsCheck;
using Rostrum.Testing;

namespace Rostrum.Pictures.Tests;

/// <summary>Maps of points: where the spaces lie, how lines run.</summary>
public class MapTests
{
    private const double Shelf = 48;

    private static readonly BoardPicture Roads = Map(
        ["inn", "ferry", "mill", "hill", "gate", "tower"], [0, 1, 2], [0, 3], [3, 2], [2, 4, 5]);

    private static readonly Gen<BoardPicture> Maps =
        from count in Gen.Int[1, 14]
        from ends in Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1]).Array[0, 20]
        from lengths in Gen.Int[1, 14].Array[count]
        select Map([.. Enumerable.Range(0, count).Select(at => new string((char)('m' + at % 10), lengths[at]) + $"-{at}")], [.. ends.Select(pair => new[] { pair.Item1, pair.Item2 })]);

    [Fact]
    public void Every_space_has_its_name_and_every_join_its_line()
    {
        Scene scene = Paint(Roads);

        Assert.Equal(["ferry", "gate", "hill", "inn", "mill", "tower"], scene.Texts().Where(text => text != "A map").Order(StringComparer.Ordinal));
        Assert.Equal(6, Lines(scene).Count());
    }

    [Fact]
    public void Same_map_is_drawn_the_same() => Assert.Equal(SvgWriter.Write(Paint(Roads)), SvgWriter.Write(Paint(Roads with { Title = null })));

    [Fact]
    public void Nothing_overlaps_on_any_map() => Maps.Hold(map =>
    {
        Scene scene = Paint(map);
        Box[] prints = [.. map.Spaces.Select((_, at) => Print(scene, at))];
        return Enumerable.Range(0, prints.Length).All(i => Enumerable.Range(0, i).All(j => !Overlap(prints[i], prints[j])));
    }, cases: 60);

    [Fact]
    public void Roads_do_not_run_through_places_where_they_need_not()
    {
        Scene scene = Paint(Roads);
        Point[] middles = [.. Roads.Spaces.Select((_, at) => Disc(scene, at).Centre)];

        Assert.All(Lines(scene), line => Assert.DoesNotContain(middles, middle => Passes(line, middle)));
    }

    [Fact]
    public void Line_bends_round_a_space_between_its_ends()
    {
        BoardPicture board = Map(["a1", "b1", "c1"], [0, 2]);

        Assert.Contains(Lines(Paint(board)).Single().Steps, step => step is PathStep.Curve);
    }

    [Fact]
    public void Names_of_letter_and_number_say_where_a_space_lies()
    {
        Scene scene = Paint(Map(["a7", "d7", "g7", "a4", "a1"], [0, 1, 2], [0, 3, 4]));
        Point[] middles = [.. Enumerable.Range(0, 5).Select(at => Disc(scene, at).Centre)];

        Assert.Equal(middles[0].Y, middles[2].Y, 1e-6);
        Assert.Equal(middles[0].X, middles[4].X, 1e-6);
        Assert.Equal(middles[1].X - middles[0].X, middles[3].Y - middles[0].Y, 1e-6);
        Assert.True(middles[4].Y > middles[0].Y);
        Assert.Equal(["1", "4", "7", "a", "a1", "a4", "a7", "d", "d7", "g", "g7"], scene.Texts().Where(text => text != "A map").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Spots_of_the_sheet_are_kept()
    {
        BoardPicture board = Roads with { Spaces = [.. Roads.Spaces.Select((space, at) => space with { Spot = (10 * at, at * at) })] };
        Scene scene = Paint(board);
        Point[] middles = [.. Roads.Spaces.Select((_, at) => Disc(scene, at).Centre)];
        double unit = (middles[1].X - middles[0].X) / 10;

        Assert.Equal(middles.Select((_, at) => Math.Round(middles[0].X + (10 * at * unit), 4)), middles.Select(middle => Math.Round(middle.X, 4)));
        Assert.Equal(middles.Select((_, at) => Math.Round(middles[0].Y - (at * at * unit), 4)), middles.Select(middle => Math.Round(middle.Y, 4)));
    }

    [Fact]
    public void Map_is_told_with_its_lines() => Assert.Equal(
        "The board, a map. inn, ferry, mill, hill, gate, tower: all free. Lines join inn – ferry – mill; inn – hill; hill – mill; mill – gate – tower.",
        Paint(Roads).Description);

    [Fact]
    public void A_large_map_is_drawn_in_a_moment()
    {
        BoardPicture board = Map([.. Enumerable.Range(0, 2000).Select(at => $"p-{at}")], [.. Enumerable.Range(0, 1999).Select(at => new[] { at, at + 1 })]);

        Assert.Equal(2000, Paint(board).Group("m").Children.OfType<SceneNode.Group>().Count());
    }

    private static BoardPicture Map(string[] names, params int[][] ways) => new("m", null, BoardForm.Map, [.. names.Select(name => new SpacePicture(name, 0, 0, CellPicture.Empty))])
    {
        Ways = [.. ways.Select(way => (ValueList<int>)[.. way])],
    };

    private static Scene Paint(BoardPicture board) => TablePainter.Paint(new TablePicture("A map", [board]) { View = TableView.Above }, Shelf);

    private static IEnumerable<PathData> Lines(Scene scene) => scene.Group("m").Children.OfType<SceneNode.Path>()
        .Where(path => path.Paint.Fill is null && path.Paint.Stroke == Tones.Frame).Select(path => path.Data);

    private static SceneNode.Circle Disc(Scene scene, int at) => scene.Group("m").Children.OfType<SceneNode.Group>().ElementAt(at).Children.OfType<SceneNode.Circle>().First();

    // The disc and the tag below it.
    private static Box Print(Scene scene, int at)
    {
        SceneNode.Circle disc = Disc(scene, at);
        SceneNode.Rectangle tag = scene.Group("m").Children.OfType<SceneNode.Rectangle>().Where(box => box.Radius > 0).ElementAt(at);
        double left = Math.Min(disc.Centre.X - disc.Radius, tag.Box.X);
        double right = Math.Max(disc.Centre.X + disc.Radius, tag.Box.Right);
        return new Box(left, disc.Centre.Y - disc.Radius, right - left, tag.Box.Bottom - disc.Centre.Y + disc.Radius);
    }

    private static bool Overlap(Box one, Box other) => one.X < other.Right && other.X < one.Right && one.Y < other.Bottom && other.Y < one.Bottom;

    private static bool Passes(PathData line, Point middle)
    {
        (Point from, Point to) = (((PathStep.Start)line.Steps[0]).To, ((PathStep.Straight)line.Steps[1]).To);
        bool isEnd = Distance(from, middle) < 1 || Distance(to, middle) < 1;
        return !isEnd && Distance(from, middle) + Distance(middle, to) < Distance(from, to) + (Shelf * 0.2);
    }

    private static double Distance(Point one, Point other) => double.Hypot(one.X - other.X, one.Y - other.Y);
}
