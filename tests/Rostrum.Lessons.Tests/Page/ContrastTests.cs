using System.Globalization;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>Contrast as WCAG 2.2 defines it (relative luminance and contrast ratio, in its glossary).</summary>
public sealed class ContrastTests
{
    private static readonly Dictionary<string, (string Light, string Dark)> Colours =
        PageTheme.Colours.ToDictionary(colour => colour.Name, colour => (colour.Light, colour.Dark));

    public static TheoryData<string, string, double> Pairs() =>
    [
        .. from ground in PageTheme.Grounds
           from shade in ground.Shades
           from colour in PageTheme.Colours
           where colour.Name.StartsWith($"{ground.Ground}-", StringComparison.Ordinal)
           where !ground.Shades.Contains(colour.Name) && !Regex.IsMatch(colour.Name, "-(line|edge)$")
           select new TheoryDataRow<string, string, double>(colour.Name, shade, colour.Name.EndsWith("-focus", StringComparison.Ordinal) ? 3 : 4.5),
    ];

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Text_stands_out_from_its_ground(string text, string ground, double least)
    {
        Assert.InRange(Ratio(Colours[text].Light, Colours[ground].Light), least, 21);
        Assert.InRange(Ratio(Colours[text].Dark, Colours[ground].Dark), least, 21);
    }

    [Theory]
    [InlineData("#000000", "#ffffff", 21)]
    [InlineData("#777777", "#ffffff", 4.48)]
    [InlineData("#ffffff", "#ffffff", 1)]
    public void Ratio_agrees_with_well_known_pairs(string one, string other, double ratio) => Assert.Equal(ratio, Ratio(one, other), tolerance: 0.005);

    [Theory]
    [InlineData("ground")]
    [InlineData("slips")]
    [InlineData("lesson")]
    [InlineData("aid")]
    [InlineData("index")]
    public void Style_sheets_name_colours_only_by_what_lies_where(string part)
    {
        string css = Regex.Replace(StyleSheets.Read(part), @"(?s)@media print.*", "");

        Assert.DoesNotMatch(@"#[0-9a-fA-F]{3,8}\b|rgba?\(|hsla?\(|oklch\(", css);
        Assert.All(Regex.Matches(css, @"(?<![-\w])color: ([^;]+);").Select(match => match.Groups[1].Value), colour => Assert.Matches(@"^var\(--(ink|faint|link|right|wrong|open)\)$", colour));
    }

    [Fact]
    public void Every_ground_sets_the_colours_that_are_printed_on_it()
    {
        string css = StyleSheets.Read("ground") + StyleSheets.Read("slips") + StyleSheets.Read("lesson") + StyleSheets.Read("aid");

        Assert.All(
            Regex.Matches(css, @"--(ink|faint|link|right|wrong|open|line|focus): var\(--(\w+)-(\w+)\)").Cast<Match>(),
            match => Assert.Equal(match.Groups[1].Value, match.Groups[3].Value));
        Assert.Equal(4, Regex.Count(css, @"--ink: var\(--(surround|table|slip)-ink\)"));
    }

    internal static double Ratio(string one, string other)
    {
        double first = Luminance(one);
        double second = Luminance(other);
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    private static double Luminance(string colour) => (0.2126 * Part(colour, 1)) + (0.7152 * Part(colour, 3)) + (0.0722 * Part(colour, 5));

    private static double Part(string colour, int at)
    {
        double share = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
