using Rostrum.Rulings.Evaluation;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>The most pairs, against OR-Tools' greatest flow and QuikGraph's matching.</summary>
public sealed class PairTests
{
    private const int Boards = 1_000;
    private const int Seed = 41;

    [Fact]
    public void As_many_pairs_as_two_libraries_find()
    {
        string[] wrong = [.. Tables(Boards, 24).Where(t => Pairs(t).Length != Solver.PairsByFlow(t) || Pairs(t).Length != Solver.PairsByGraph(t))
            .Select(t => $"{t.GetLength(0)} by {t.GetLength(1)}: ours {Pairs(t).Length}, flow {Solver.PairsByFlow(t)}, graph {Solver.PairsByGraph(t)}")];

        Assert.Empty(wrong);
    }

    [Fact]
    public void Two_hundred_by_two_hundred_agree_with_the_greatest_flow() =>
        Assert.All(Tables(4, 200), t => Assert.Equal(Solver.PairsByFlow(t), Pairs(t).Length));

    [Fact]
    public void The_pairs_are_joined_and_nothing_is_used_twice() => Assert.All(Tables(Boards, 12), t =>
    {
        (int One, int Other)[] pairs = Pairs(t);
        Assert.All(pairs, p => Assert.True(t[p.One, p.Other]));
        Assert.Equal(pairs.Length, pairs.Select(p => p.One).Distinct().Count());
        Assert.Equal(pairs.Length, pairs.Select(p => p.Other).Distinct().Count());
    });

    private static (int One, int Other)[] Pairs(bool[,] joins) => Matching.Most(joins.GetLength(0), joins.GetLength(1), (i, j) => joins[i, j]);

    // Few joins for each element: where there are many, everything finds a partner.
    private static IEnumerable<bool[,]> Tables(int count, int most)
    {
        var random = new Random(Seed);
        for (int k = 0; k < count; k++)
        {
            var joins = new bool[random.Next(1, most + 1), random.Next(1, most + 1)];
            int joined = random.Next(1, 4) * joins.GetLength(0);
            for (int n = 0; n < joined; n++)
            {
                joins[random.Next(joins.GetLength(0)), random.Next(joins.GetLength(1))] = true;
            }

            yield return joins;
        }
    }
}
