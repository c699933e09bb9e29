using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

public sealed class ClaimsSummaryTests
{
    [Theory]
    [InlineData(0, 0, 0, 0, "Nothing on this page has been held against the rules yet.")]
    [InlineData(1, 0, 0, 0, "1 statement held against the rules: all agree.")]
    [InlineData(116, 0, 0, 0, "116 statements held against the rules: all agree.")]
    [InlineData(29, 1, 0, 0, "30 statements held against the rules: 29 agree, 1 does not.")]
    [InlineData(1, 2, 3, 0, "6 statements held against the rules: 1 agrees, 2 do not, 3 cannot be settled.")]
    [InlineData(2, 3, 0, 3, "5 statements held against the rules: 2 agree, 3 do not; 3 more not understood.")]
    [InlineData(2, 0, 0, 1, "2 statements held against the rules: 2 agree; 1 more not understood.")]
    [InlineData(0, 0, 0, 1, "1 statement not understood; nothing on this page has been held against the rules yet.")]
    public void Outcome_is_told_in_one_sentence(int right, int wrong, int unsettled, int unasked, string told) =>
        Assert.Equal(told, new ClaimsSummary(right, wrong, unsettled, unasked, []).Sentence);
}
