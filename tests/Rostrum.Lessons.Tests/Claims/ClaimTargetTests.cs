using Rostrum.Lessons.Claims;

namespace Rostrum.Lessons.Tests.Claims;

public class ClaimTargetTests
{
    public static TheoryData<string, ClaimTarget> Targets => new()
    {
        { "tally:E1/total", new ClaimTarget.Tally("E1", "total", null, null) },
        { "tally:E1 seat 2/bowls", new ClaimTarget.Tally("E1", "bowls", 2, null) },
        { "tally:E3/total if growing on", new ClaimTarget.Tally("E3", "total", null, "growing on") },
        { "tally:E3/total%20if%20growing%20on", new ClaimTarget.Tally("E3", "total", null, "growing on") },
        { "rule:copper-ash/place copper jug on B2", new ClaimTarget.Rule("copper-ash", "place copper jug on B2") },
        { "value:worth of Commission 12", new ClaimTarget.Value("worth of Commission 12") },
        { "fact:ware", new ClaimTarget.Fact("ware") },
    };

    [Theory]
    [MemberData(nameof(Targets))]
    public void Targets_are_read(string target, ClaimTarget expected) => Assert.Equal(expected, ClaimTarget.Read(target));

    [Theory]
    [InlineData("tally:E1")]
    [InlineData("tally:/total")]
    [InlineData("rule:copper-ash/")]
    [InlineData("fact:")]
    public void A_target_that_lacks_a_part_is_none(string target) => Assert.Null(ClaimTarget.Read(target));
}
