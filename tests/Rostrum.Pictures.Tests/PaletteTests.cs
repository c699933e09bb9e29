namespace Rostrum.Pictures.Tests;

public class PaletteTests
{
    public static TheoryData<string, string, string> TextPairs => Pairs(Tones.TextPairs);

    public static TheoryData<string, string, string> ShapePairs => Pairs(Tones.ShapePairs);

    public static TheoryData<string> Colours => [.. PieceColours.All.Select(colour => colour.Name)];

    // WCAG 2.2, success criterion 1.4.3, level AA.
    [Theory]
    [MemberData(nameof(TextPairs))]
    public void Text_stands_out_from_its_ground(string palette, string text, string ground) =>
        Assert.InRange(Contrast.Ratio(Of(palette)[new Tone(text)], Of(palette)[new Tone(ground)]), 4.5, 21);

    // WCAG 2.2, success criterion 1.4.11, level AA.
    [Theory]
    [MemberData(nameof(ShapePairs))]
    public void Shape_that_carries_meaning_stands_out_from_its_ground(string palette, string shape, string ground) =>
        Assert.InRange(Contrast.Ratio(Of(palette)[new Tone(shape)], Of(palette)[new Tone(ground)]), 3, 21);

    [Theory]
    [MemberData(nameof(Colours))]
    public void Emblem_stands_out_from_its_piece(string name)
    {
        PieceColour colour = PieceColours.Find(name);

        Assert.InRange(Contrast.Ratio(Palette.Light[colour.Mark], Palette.Light[colour.Body]), 3, 21);
        Assert.InRange(Contrast.Ratio(Palette.Dark[colour.Mark], Palette.Dark[colour.Body]), 3, 21);
        Assert.InRange(Contrast.Ratio(Palette.Print[colour.Mark], Palette.Print[colour.Body]), 3, 21);
    }

    [Fact]
    public void Every_tone_has_a_colour_by_day_by_night_and_on_paper() => Assert.All(
        Tones.All.Concat(PieceColours.All.Select(colour => colour.Body)),
        tone => Assert.Equal((tone, tone, tone), (Palette.Light.KnownTones.Single(tone.Equals), Palette.Dark.KnownTones.Single(tone.Equals), Palette.Print.KnownTones.Single(tone.Equals))));

    [Fact]
    public void Unknown_tone_is_refused() => Assert.Throws<KeyNotFoundException>(() => Palette.Light[new Tone("mauve-ish")]);

    [Fact]
    public void Style_sheet_gives_each_property_its_light_value_once_and_its_dark_value_twice()
    {
        string css = PaletteCss.Write();

        Assert.Equal(2, css.Split($"--rostrum-surround: {Palette.Light[Tones.Surround].Hex};").Length);
        Assert.Equal(3, css.Split($"--rostrum-surround: {Palette.Dark[Tones.Surround].Hex};").Length);
        Assert.All(Palette.Light.KnownTones, tone => Assert.Equal(4, css.Split($" {tone.CssProperty}: ").Length));
    }

    private static Palette Of(string name) => name switch
    {
        "dark" => Palette.Dark,
        "print" => Palette.Print,
        _ => Palette.Light,
    };

    private static TheoryData<string, string, string> Pairs(IEnumerable<(Tone First, Tone Ground)> pairs) =>
        new(pairs.SelectMany(pair => new[] { "light", "dark", "print" }.Select(palette => (palette, pair.First.Name, pair.Ground.Name))));
}
