using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>What <c>if</c> and <c>for each</c> leave, asked by laws about the table afterwards.</summary>
public sealed class StepsBelowStepsTests
{
    private const string Path = """
        pieces: {coin: {attributes: {metal: [gold, tin]}}, lamp: {states: {flame: [dark, lit]}}}
        boards: {path: {track: s1 to s6, spaces: stone}}
        places: {purse: {heap of: coin, of: each player}, bowl: {heap of: coin}}
        marks: {goal: {holds: stone}, fame: {holds: 0 to 2}}
        actions:
          act:
            phrase: act
            do:
        """;

    private const string Coins = "path: {s1: tin coin, s3: [gold coin, tin coin], s6: gold coin}\nseat 1:\n  purse: [2 gold coins, tin coin]\nbowl: []\ngoal: nothing\nfame: 1\n";

    [Theory]
    [InlineData("- for each c in my purse: move c to bowl", "no(my purse) and count(bowl) is 3")]
    [InlineData("- for each c in my purse where c is gold: move c to bowl", "count(my purse) is 1 and count(gold coins in bowl) is 2")]
    [InlineData("- for each s in path where s shows a gold coin: move all coins from s to my purse", "count(my purse) is 4")]
    [InlineData("- for each s in path where s is not empty, by order of s, lowest first: set goal to s", "goal is s6")]
    [InlineData("- for each s in path where s is not empty, by order of s, highest first: set goal to s", "goal is s1")]
    [InlineData("- if s1 is empty: move all coins from s3 to bowl\n- otherwise: move all coins from s6 to bowl", "count(bowl) is 1 and s6 is empty")]
    [InlineData("- if s1 is empty: move all coins from s3 to bowl\n- otherwise if s2 is empty: move all coins from s1 to bowl", "s1 is empty and s3 is not empty")]
    [InlineData("- for each s in path where s is not empty:\n    - if s shows a tin coin: move all coins from s to bowl\n    - otherwise: set goal to s", "count(bowl) is 3 and goal is s6")]
    [InlineData("- if s1 is empty: set goal to s1", "goal is nothing")]
    [InlineData("- add count(my purse) to fame", "fame is 2")]
    [InlineData("- take 3 from fame", "fame is 0")]
    [InlineData("- set fame to 7", "fame is 2")]
    [InlineData("- change top of s1 to lit", "s1 shows a tin coin")]
    public void Steps_leave(string steps, string left) => Assert.Equal("legal", Verdict(steps, left));

    [Theory]
    [InlineData("- for each c in my purse, in the order I choose: move c to bowl", "no(my purse)")]
    [InlineData("- for each d in bowl where d is gold:\n    - roll dice", "no(bowl)")]
    public void What_hangs_on_a_choice_or_on_chance_is_not_called_legal(string steps, string left) => Assert.Equal("unsettled", Verdict(steps, left));

    [Fact]
    public void A_condition_that_is_not_given_leaves_what_nobody_knows() =>
        Assert.Equal("unsettled", Verdict("- if s1 is empty: move all coins from s6 to bowl", "s6 is empty", Coins.Replace("s1: tin coin", "s1: ?", StringComparison.Ordinal)));

    private static string Verdict(string steps, string left, string coins = Coins)
    {
        string dice = steps.Contains("dice", StringComparison.Ordinal) ? "dice: {die: {plural: dice, count: 1, faces: 1 to 6}}\n" : "";
        Sheet sheet = Game.Of($"{dice}{Path}\n{string.Concat(steps.Split('\n').Select(s => $"      {s}\n"))}laws:\n  afterwards: {{binds: act, must leave: \"{left}\"}}\n");
        return Ruling.On(Game.Position(sheet, coins), "act").Ruling!.Verdict;
    }
}
