using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Idioms;
using Rostrum.Text;

namespace Rostrum.Pictures.Tests.Positions;

/// <summary>Sheets that say nothing of how their pieces look.</summary>
public class UsualLooksTests
{
    private const string SixKinds = "pieces: {oak: {}, elm: {}, fir: {}, cow: {}, cart: {}, well: {}}\nsigns: {o: oak, e: elm, f: fir, c: cow, t: cart, w: well}\n";

    public static TheoryData<Sight> Sights => [.. Enum.GetValues<Sight>()];

    [Fact]
    public void Six_kinds_differ_pairwise_in_silhouette_and_in_colour()
    {
        PieceLook[] looks = Looks(SixKinds, "o e f c t w");

        Assert.Equal(["disc", "square", "wedge", "drum", "hex", "figure"], looks.Select(l => l.Outline.Name));
        Assert.Equal(6, looks.Select(l => l.Colour.Name).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Sights))]
    public void Six_kinds_differ_at_24_pixels_however_they_are_seen(Sight sight)
    {
        PixelGrid[] tiles = [.. Looks(SixKinds, "o e f c t w").Select(l => DistinguishabilityTests.Tile(l, "light"))];

        IEnumerable<int> differences =
            from first in Enumerable.Range(0, tiles.Length)
            from second in Enumerable.Range(first + 1, tiles.Length - first - 1)
            select TileDifference.Pixels(tiles[first], tiles[second], sight);

        Assert.All(differences, d => Assert.True(d >= TileDifference.AtAGlance, $"{d}"));
    }

    [Theory]
    [InlineData("pieces: {oak: {}, hut: {}, coin: {colours: sea}}\nsigns: {o: oak, h: hut, c: coin}\n", "o h c", "disc chalk -, hut sun -, square sea -")]
    [InlineData("pieces: {gem: {attributes: {hue: [mauve, red, blue]}}}\nsigns: {g: gem, m: mauve, r: red, b: blue}\n", "gm gr gb g", "disc chalk spot, disc rust bars, disc sea ring, disc chalk -")]
    [InlineData("pieces: {bit: {attributes: {form: [pot, cup], hue: [pale, dark]}}}\nsigns: {p: pot, c: cup, l: pale, d: dark}\n", "pl cd p d", "disc chalk spot, square sea bars, disc chalk -, anything sea bars")]
    [InlineData("pieces: {bit: {attributes: {form: [pot, cup]}, outlines: {pot: jug}}}\nsigns: {p: pot, c: cup}\n", "p c", "jug chalk -, disc chalk -")]
    [InlineData("pieces: {bit: {attributes: {form: [pot, cup, pan]}, outlines: {pot: disc, cup: diamond}}}\nsigns: {p: pot, c: cup, n: pan}\n", "p c n", "disc chalk -, square chalk -, wedge chalk -")]
    [InlineData("pieces: {bit: {outlines: rod, colours: moss, emblems: star}}\nsigns: {b: bit}\n", "b", "rod moss star")]
    [InlineData("pieces: {stone: {each player: 5}}\nsigns: {s: stone}\n", "s1 s2", "disc sea -, disc rust ring")]
    [InlineData("pieces: {stone: {each player: 5}, post: {}, wall: {}}\nsigns: {s: stone, p: post, w: wall}\n", "s1 s2 p w", "disc sea -, disc rust ring, square chalk -, wedge moss -")]
    [InlineData("seats: [Black, White]\npieces: {stone: {each player: 5}}\nsigns: {s: stone}\n", "s1 s2", "disc soot -, disc chalk ring")]
    [InlineData("seats: [Red, Teal]\npieces: {stone: {each player: 5}}\nsigns: {s: stone}\n", "s1 s2", "disc rust -, disc sea ring")]
    public void What_the_sheet_says_or_names_is_kept_and_the_rest_is_told_apart(string sheet, string row, string expected) =>
        Assert.Equal(expected, string.Join(", ", Looks(sheet, row).Select(l => $"{l.Outline.Name} {l.Colour.Name} {l.Emblem?.Name ?? "-"}")));

    [Theory]
    [InlineData("", "sea, rust, sun, plum, pine, slate")]
    [InlineData("seats: [Red, Blue, Yellow, Purple, Green, Black]\n", "rust, sea, sun, plum, moss, soot")]
    [InlineData("seats: [Ann, Blue, Cleo, Dan, Eve, Black]\n", "rust, sea, sun, plum, pine, soot")]
    public void Six_players_have_six_colours(string seats, string expected) => Assert.Equal(
        expected,
        string.Join(", ", Looks($"players: 6\n{seats}pieces: {{stone: {{each player: 5}}}}\nsigns: {{s: stone}}\n", "s1 s2 s3 s4 s5 s6").Select(l => l.Colour.Name)));

    [Theory]
    [InlineData("pieces: {lily: {}, frog: {}}\nsigns: {l: lily, f: frog}\n", "l f l", "Disc: lily; square: frog.")]
    [InlineData("pieces: {lily: {}, frog: {}}\nsigns: {l: lily, f: frog}\n", "l l l", null)]
    [InlineData("pieces: {gem: {attributes: {hue: [mauve, red]}}, hut: {}}\nsigns: {g: gem, m: mauve, r: red, h: hut}\n", "gm gr h", "Chalk disc with spot: mauve gem; rust disc with bars: red gem.")]
    [InlineData("pieces: {bit: {attributes: {form: [pot, cup]}, outlines: {pot: disc, cup: square}}}\nsigns: {p: pot, c: cup}\n", "p c", "Disc: pot; square: cup.")]
    [InlineData("pieces: {coin: {outlines: drum}, hut: {outlines: hut}}\nsigns: {c: coin, h: hut}\n", "c h", null)]
    public void Pieces_whose_look_the_picture_chose_are_told_below_it(string sheet, string row, string? legend) =>
        Assert.Equal(legend, Picture(sheet, row).Caption);

    [Fact]
    public void What_the_position_says_stands_before_the_legend() =>
        Assert.Equal("At noon. Disc: lily; square: frog.", Picture("pieces: {lily: {}, frog: {}}\nsigns: {l: lily, f: frog}\n", "l f", "At noon.").Caption);

    private static PieceLook[] Looks(string sheet, string row) =>
        [.. Picture(sheet, row).Boards[0].Spaces.Select(s => Assert.IsType<CellPicture.Stack>(s.Content).Pieces[0])];

    private static TablePicture Picture(string sheet, string row, string? caption = null)
    {
        int count = row.Split(' ').Length;
        string text = $"{(sheet.StartsWith("players:", StringComparison.Ordinal) ? "" : "players: 2\n")}{sheet}boards: {{field: {{squares: {count} across 1 up}}}}\n";
        var game = new Game(GameFolder.InMemory("test", ("sheet.yaml", text)), IdiomLibrary.Empty);
        string columns = string.Join(' ', "A B C D E F".Split(' ').Take(count));
        OpenedPosition opened = game.Open(new SourceText("positions/one.yaml", $"field: |\n  1 {row}\n  / {columns}\nturn of: seat 1\n"));
        Assert.Empty(opened.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        return PositionPicture.Of(opened.Position!, PictureWish.Plain("one") with { Caption = caption });
    }
}
