using System.Diagnostics;
using CsCheck;
using Rostrum.Testing;
using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests.Outline;

/// <summary>Slips: all of them are told in one run, what is right beside them is read, and hostile texts are answered fast.</summary>
public sealed class SlipTests
{
    private const int OneMegabyte = 1024 * 1024;

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "an anchor, an alias, a tag", "a: &x 1\nb: *x\nc: !t 2\nd: 3", "ROS0106 1,4; ROS0106 2,4; ROS0106 3,4", "{a: ‹&x 1›, b: ‹*x›, c: ‹!t 2›, d: ‹3›}" },
        { "a merge key", "a: 1\n<<: x\nb: 2", "ROS0107 2,1", "{a: ‹1›, <<: ‹x›, b: ‹2›}" },
        { "duplicate keys at two levels", "a: 1\nb:\n  c: 1\n  c: 2\na: 3", "ROS0108 4,3; ROS0108 5,1", "{a: ‹1›, b: {c: ‹1›}}" },
        { "tabs on three lines", "a:\n\tb: 1\n\tc: 2\nd: {e: 1,\n\tf: 2}", "ROS0101 2,1", "{a: {b: ‹1›, c: ‹2›}, d: {e: ‹1›, f: ‹2›}}" },
        { "blanks that are not plain", "a:\n\u00A0\u00A0b: 1", "ROS0101 2,1", "{a: {b: ‹1›}}" },
        { "several of several kinds", "a:1\nb: {c}\n%d\ne: [f\ng: h: i\nj: \"k\nl: ok", "ROS0111 1,2; ROS0115 2,5; ROS0103 3,1; ROS0104 4,4; ROS0117 5,5; ROS0105 6,4", "{a: ‹1›, b: {}, e: [‹f›], g: ‹h: i›, j: ‹\"k›, l: ‹ok›}" },
        { "a misfit level is one slip", "a:\n    b: 1\n  c: 2\n  d: 3\ne: 4", "ROS0102 2,5", "{a: {b: ‹1›, c: ‹2›, d: ‹3›}, e: ‹4›}" },
        { "no outline at all", "Once upon a time\nthere was a game.\n", "ROS0103 1,1; ROS0103 2,1", "{}" },
        { "a text that only has a list", "- a\n- b", "ROS0103 1,1", "{}" },
        { "a page of another kind", "<html>\n<body class=\"x\">\n</html>", "ROS0103 1,1; ROS0103 2,1; ROS0103 3,1", "{}" },
        { "a second text behind the first", "a: 1\n---\nb: 2", "ROS0113 2,1", "{a: ‹1›}" },
        { "a brace that the next key ends", "a: {b: 1\nc: 2", "ROS0104 1,4", "{a: {b: ‹1›}, c: ‹2›}" },
        { "a comma forgotten before a known key", "a: {needs: x cite: 5}", "ROS0123 1,14", "{a: {needs: ‹x›, cite: ‹5›}}" },
        { "two commas forgotten", "a: {needs: x y cite: 5 needs: z}", "ROS0123 1,16; ROS0108 1,24; ROS0123 1,24", "{a: {needs: ‹x y›, cite: ‹5›}}" },
        { "a no-break space behind a colon", "needs:\u00A0x", "ROS0111 1,7", "{needs: ‹\u00A0x›}" },
        { "a known key with its colon too tight", "a: {needs:x, cite:5}", "ROS0111 1,10; ROS0111 1,18", "{a: {needs: ‹x›, cite: ‹5›}}" },
    };

    public static TheoryData<string, string> Hostile => new()
    {
        { "[", "" }, { "{", "" }, { "\"", "" }, { "'", "" }, { "(", "" }, { "- ", "" }, { "a: [", "" }, { "{a: ", "" }, { ",", "a: [" }, { ",", "a: {b: x" }, { ": ", "" },
        { "a\n", "" }, { "a:1\n", "" }, { "&a [*a,", "" }, { "a: \"\n", "" }, { "a\u200B\n", "" }, { "x, ", "a: {b: " }, { "\"\\q", "a: " }, { "\r", "" }, { "a: {\n", "" }, { " #", "a: b" },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void Slips_are_all_told_and_the_rest_is_read(string name, string content, string problems, string told)
    {
        Reading reading = Reading.Of(content);

        Assert.Equal((name, problems), (name, string.Join("; ", reading.Problems.Select(p => $"{p.Id} {p.At.StartPosition}"))));
        Assert.Equal(told, reading.Told);
    }

    [Theory]
    [InlineData("a: ", "[", 63, 0)]
    [InlineData("a: ", "[", 64, 1)]
    [InlineData("a: ", "[", 200, 1)]
    [InlineData("a:\n  ", "- ", 62, 0)]
    [InlineData("a:\n  ", "- ", 64, 1)]
    [InlineData("a:\n  ", "- ", 200, 1)]
    public void Levels_beyond_the_bound_are_one_problem(string before, string level, int levels, int problems)
    {
        string content = before + string.Concat(Enumerable.Repeat(level, levels)) + (level == "[" ? new string(']', levels) : "x");

        Assert.Equal(problems, Reading.Of(content).Ids.Count(i => i == "ROS0109"));
    }

    [Fact]
    public void Nine_levels_of_nine_aliases_stay_text()
    {
        string content = "a0: &a0 [x, x]\n" + string.Concat(Enumerable.Range(1, 9).Select(i => $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 9))}]\n"));

        Reading reading = Reading.Of(content);

        Assert.Equal(["ROS0106"], reading.Ids.Distinct());
        Assert.True(reading.Tree.Pairs().Count() < 400);
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void One_megabyte_of_one_thing_are_answered_in_linear_time(string piece, string before)
    {
        string content = before + string.Concat(Enumerable.Repeat(piece, OneMegabyte / piece.Length));
        var problems = new DiagnosticBag();
        var watch = Stopwatch.StartNew();

        OutlineReader.Read(new SourceText("sheet.yaml", content), Reading.Dialect, problems);

        // Measured: less than half a second; with a square in it, minutes.
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 60);
        Assert.InRange(problems.Count, 0, DiagnosticBag.Most);
    }

    [Fact]
    public void No_text_of_odd_signs_stops_the_reader() =>
        Gen.OneOf("a", ": ", ":", "\n", "\n  ", " ", "- ", "{", "}", "[", "]", "\"", "'", ",", " #", "|", ">", "\t", "says", "needs", "\\", "*", "%", "---\n", "(", ")", "\r\n", "\uD800", "\u200B", "é").Array[0, 40].Hold(
            pieces =>
            {
                Reading reading = Reading.Of(string.Concat(pieces));

                Assert.All(reading.Problems, p => Assert.True(reading.Tree.Span.Source.Whole.Contains(p.At)));
                Assert.All(reading.Tree.Pairs(), p => Assert.True(reading.Tree.Span.Source.Whole.Contains(p.Child.Span)));
                Assert.All(reading.Problems, p => Assert.NotEmpty(DiagnosticText.Render(p, 80)));
            },
            cases: 5000);
}
