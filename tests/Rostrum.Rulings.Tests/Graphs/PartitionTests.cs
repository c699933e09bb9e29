using Rostrum.Rulings.Evaluation;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>The best split, against everything tried and against OR-Tools' solver.</summary>
public sealed class PartitionTests
{
    private const int Seed = 97;

    [Fact]
    public void A_split_is_what_trying_everything_gives()
    {
        string[] wrong = [.. Tasks(1_000, 8, 4).Where(t => PartitionSearch.Best(t.Task).Worth != t.ByForce()).Select(t => $"{t.Task} {t.ByForce()}")];

        Assert.Empty(wrong);
    }

    [Fact]
    public void A_split_is_what_the_solver_finds() => Agrees(Tasks(200, 9, 3));

    [Fact]
    [Trait("Category", "Slow")]
    public void A_thousand_splits_are_what_the_solver_finds() => Agrees(Tasks(1_000, 11, 3));

    [Fact]
    public void The_sets_of_a_split_add_up_and_take_each_thing_once() => Assert.All(Tasks(1_000, 12, 3), t =>
    {
        Partition best = PartitionSearch.Best(t.Task);
        Assert.True(best.IsBest);
        Assert.Equal(best.Worth ?? 0, best.Sets.Sum(s => s.Worth) + best.PlainSizes.Sum(s => t.Task.Plain[s]!.Value));
        Assert.True(best.Worth is null || best.Sets.Sum(s => s.Size) + best.PlainSizes.Sum() == t.Size);
        Assert.All(t.Task.Counts.Select((count, sort) => (count, sort)), c => Assert.InRange(best.Sets.Sum(s => s.Counts[c.sort]), 0, c.count));
    });

    private static void Agrees(IEnumerable<RandomTasks> tasks) => Assert.Empty(tasks
        .Select(t => (Task: t, Solver: Solver.Split(t.Size, [.. Enumerable.Range(1, (1 << t.Size) - 1).Select(s => (s, t.Worth(s))).Where(s => s.Item2 > -500)])))
        .Where(t => PartitionSearch.Best(t.Task.Task).Worth != t.Solver).Select(t => $"ours {PartitionSearch.Best(t.Task.Task).Worth}, solver {t.Solver}, force {t.Task.ByForce()}: {t.Task}"));

    private static IEnumerable<RandomTasks> Tasks(int count, int most, int mostInSet)
    {
        var random = new Random(Seed);
        return Enumerable.Range(0, count).Select(_ => RandomTasks.Make(random, most, mostInSet));
    }
}
