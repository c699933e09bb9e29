using Rostrum.Rulings.Positions;

namespace Rostrum.Rulings.Tests.Positions;

public sealed class ExpectationTests
{
    [Theory]
    [InlineData("jugs: 4", "jugs", "Exactly { Points = 4 }", null)]
    [InlineData("shards: {is: -2, because: two shards}", "shards", "Exactly { Points = -2 }", "two shards")]
    [InlineData("shards: minus 2", "shards", "Exactly { Points = -2 }", null)]
    [InlineData("total: at least 3", "total", "AtLeast { Points = 3 }", null)]
    [InlineData("glaze: {is: unsettled, because: A1 is not given}", "glaze", "Unsettled { }", "A1 is not given")]
    public void Points_are_a_number_or_what_is_known_of_it(string line, string clause, string points, string? because)
    {
        var tally = Assert.IsType<Expectation.Tally>(Assert.Single(Read.Fine($"expect:\n  tally:\n    {line}\n").File.Expectations));

        Assert.Equal((clause, points, because), (tally.Clause, tally.Points.ToString(), tally.Because));
    }

    [Fact]
    public void Points_may_be_given_for_each_reading()
    {
        Read read = Read.Fine("expect:\n  tally:\n    bowls: {is: {as for four: 10, growing on: 15}, because: five bowls, one above the other}\n");

        var tally = Assert.IsType<Expectation.Tally>(Assert.Single(read.File.Expectations));
        var readings = Assert.IsType<ExpectedPoints.ByReading>(tally.Points);
        Assert.Equal([("as for four", 10L), ("growing on", 15L)], readings.Readings.Select(r => (r.Reading, r.Points)));
        Assert.Equal("five bowls, one above the other", tally.Because);
    }

    [Theory]
    [InlineData("tally", null)]
    [InlineData("tally of seat 1", 0)]
    [InlineData("tally of seat 2", 1)]
    [InlineData("tally of  Seat 2", 1)]
    public void Points_may_be_those_of_any_seat(string section, int? seat)
    {
        var tally = Assert.IsType<Expectation.Tally>(Assert.Single(Read.Fine($"players: 2\nexpect:\n  {section}:\n    total: 3\n").File.Expectations));

        Assert.Equal(seat, tally.Seat);
    }

    [Theory]
    [InlineData("tally of seat 3")]
    [InlineData("tally of seat")]
    [InlineData("tally of the moon")]
    public void Points_of_nobody_are_told(string section) => Assert.Equal("ROS0229", Read.Problem($"players: 2\nexpect:\n  {section}:\n    total: 3\n").Id);

    [Theory]
    [InlineData("{is: legal, because: B1 is a plate}", ExpectedVerdict.Legal)]
    [InlineData("illegal", ExpectedVerdict.Illegal)]
    [InlineData("{is: unsettled}", ExpectedVerdict.Unsettled)]
    [InlineData("yes", ExpectedVerdict.Yes)]
    [InlineData("{is: no}", ExpectedVerdict.No)]
    public void A_ruling_has_one_of_five_answers(string value, ExpectedVerdict expected)
    {
        var rule = Assert.IsType<Expectation.Rule>(Assert.Single(Read.Fine($"expect:\n  rule:\n    Commission 1 is met: {value}\n").File.Expectations));

        Assert.Equal(("Commission 1 is met", expected), (rule.Phrase, rule.Verdict));
        Assert.Empty(rule.Breaches);
    }

    [Fact]
    public void A_refusal_names_its_laws_and_its_page()
    {
        Read read = Read.Fine("expect:\n  rule:\n    place copper jug on B2: {illegal: [jugs, copper and ash], because: ash stands at A2, cite: book 5}\n");

        var rule = Assert.IsType<Expectation.Rule>(Assert.Single(read.File.Expectations));
        Assert.Equal(ExpectedVerdict.Illegal, rule.Verdict);
        Assert.Equal(["jugs", "copper and ash"], rule.Breaches.Select(b => b.Name));
        Assert.Equal(("ash stands at A2", "book 5"), (rule.Because, rule.Cite));
        Assert.Equal("copper and ash", rule.Breaches[1].At.Text);
        Assert.Equal("place copper jug on B2", rule.PhraseAt.Text);
    }
}
