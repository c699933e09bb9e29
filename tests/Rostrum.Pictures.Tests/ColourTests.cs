using static Rostrum.Pictures.Tests.ReferenceTable;

namespace Rostrum.Pictures.Tests;

/// <summary>Sources of the tables: see Reference/README.md.</summary>
public class ColourTests
{
    public static TheoryData<string[]> SharmaPairs => Rows("ciede2000_sharma2005");

    public static TheoryData<string[]> MachadoMatrices => Rows("cvd_machado2009");

    public static TheoryData<string[]> ContrastPairs => Rows("wcag_contrast_pairs");

    public static TheoryData<string[]> LinearCases => Only("sRGB(0..1) to linear");

    public static TheoryData<string[]> DaylightLabCases => Only("XYZ(0..100) to CIELAB D65 2deg");

    public static TheoryData<string[]> BoothLabCases => Only("XYZ(0..100) to CIELAB D50 2deg");

    [Theory]
    [MemberData(nameof(SharmaPairs))]
    public void Difference_is_the_published_one_in_both_directions(string[] row)
    {
        Lab first = new(Number(row[1]), Number(row[2]), Number(row[3]));
        Lab second = new(Number(row[4]), Number(row[5]), Number(row[6]));

        Assert.Equal(Number(row[7]), ColourDifference.Ciede2000(first, second), 1e-4);
        Assert.Equal(Number(row[7]), ColourDifference.Ciede2000(second, first), 1e-4);
    }

    [Theory]
    [MemberData(nameof(MachadoMatrices))]
    public void Simulation_applies_the_published_matrix(string[] row)
    {
        ColourVision vision = Enum.Parse<ColourVision>(row[0], ignoreCase: true);
        LinearRgb light = new(0.5, 0.25, 0.125);

        LinearRgb seen = ColourVisionSimulation.Simulate(light, vision, int.Parse(row[1], null));

        Assert.Equal((Number(row[2]) / 2) + (Number(row[3]) / 4) + (Number(row[4]) / 8), seen.R, 1e-9);
        Assert.Equal((Number(row[5]) / 2) + (Number(row[6]) / 4) + (Number(row[7]) / 8), seen.G, 1e-9);
        Assert.Equal((Number(row[8]) / 2) + (Number(row[9]) / 4) + (Number(row[10]) / 8), seen.B, 1e-9);
    }

    [Theory]
    [MemberData(nameof(ContrastPairs))]
    public void Contrast_is_the_known_ratio(string[] row) =>
        Assert.Equal(Number(row[3]), Contrast.Ratio(Rgb.Parse(row[0]), Rgb.Parse(row[1])), 1e-5);

    [Theory]
    [MemberData(nameof(LinearCases))]
    public void Gamma_is_decoded_as_published(string[] row)
    {
        Assert.Equal(Number(row[4]), LinearRgb.Decode(Number(row[1])), Number(row[7]));
        Assert.Equal(Number(row[5]), LinearRgb.Decode(Number(row[2])), Number(row[7]));
        Assert.Equal(Number(row[6]), LinearRgb.Decode(Number(row[3])), Number(row[7]));
    }

    [Theory]
    [MemberData(nameof(DaylightLabCases))]
    public void Lab_under_daylight_is_as_published(string[] row) => AssertLab(row, Xyz.D65);

    [Theory]
    [MemberData(nameof(BoothLabCases))]
    public void Lab_in_a_viewing_booth_is_as_published(string[] row) => AssertLab(row, Xyz.D50);

    [Fact]
    public void Encoding_undoes_decoding_for_every_level() => Assert.All(
        Enumerable.Range(0, 256).Select(level => new Rgb((byte)level, (byte)(255 - level), (byte)level)),
        colour => Assert.Equal(colour, LinearRgb.From(colour).ToRgb()));

    [Theory]
    [InlineData("")]
    [InlineData("#fff")]
    [InlineData("1b1a180")]
    [InlineData("#1b1a1g")]
    public void What_is_no_colour_is_refused(string text) => Assert.Throws<FormatException>(() => Rgb.Parse(text));

    [Theory]
    [InlineData(-10)]
    [InlineData(55)]
    [InlineData(110)]
    public void Severity_that_was_never_published_is_refused(int percent) => Assert.Throws<ArgumentOutOfRangeException>(
        () => ColourVisionSimulation.Simulate(new Rgb(1, 2, 3), ColourVision.Protanomaly, percent));

    private static void AssertLab(string[] row, Xyz white)
    {
        Lab lab = Lab.From(new Xyz(Number(row[1]), Number(row[2]), Number(row[3])), white);

        Assert.Equal(Number(row[4]), lab.L, Number(row[7]));
        Assert.Equal(Number(row[5]), lab.A, Number(row[7]));
        Assert.Equal(Number(row[6]), lab.B, Number(row[7]));
    }

    private static TheoryData<string[]> Only(string conversion) =>
        [.. Rows("srgb_linear_lab_checks").Select(row => row.Data).Where(row => row[0] == conversion)];
}
