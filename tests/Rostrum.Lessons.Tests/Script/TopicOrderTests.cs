using System.Collections.Immutable;
using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Order;

namespace Rostrum.Lessons.Tests.Script;

/// <summary>The best order of topics, held against all orders.</summary>
public sealed class TopicOrderTests
{
    private static readonly Gen<long[,]> Small = Gen.Int[1, 7].SelectMany(n => Weights(n, 4));

    [Fact]
    public void No_order_of_a_few_topics_costs_less() => Small.Hold(weights =>
    {
        TopicOrder best = TopicOrder.Best(weights);
        long least = Orders([.. Enumerable.Range(0, weights.GetLength(0))]).Min(o => TopicOrder.CostOf(weights, o));
        return best.IsExact && best.Cost == least && best.Cost == TopicOrder.CostOf(weights, best.Topics);
    });

    [Fact]
    public void Of_the_best_orders_the_one_nearest_to_the_present_is_taken() => Small.Hold(weights =>
    {
        TopicOrder best = TopicOrder.Best(weights);
        int nearest = Orders([.. Enumerable.Range(0, weights.GetLength(0))]).Where(o => TopicOrder.CostOf(weights, o) == best.Cost).Min(Turned);
        return Turned(best.Topics) == nearest;
    });

    [Fact]
    public void Twenty_topics_are_weighed_exactly_and_more_are_improved()
    {
        Weights(20, 3).Hold(w => TopicOrder.Best(w).IsExact, cases: 2);
        Weights(30, 3).Hold(
            w =>
            {
                TopicOrder better = TopicOrder.Best(w);
                return !better.IsExact && better.Cost <= TopicOrder.CostOf(w, [.. Enumerable.Range(0, 30)]) && better.Topics.Order().SequenceEqual(Enumerable.Range(0, 30));
            },
            cases: 50);
    }

    [Fact]
    public void What_costs_nothing_stays() => Assert.Equal([0, 1, 2], TopicOrder.Best(new long[3, 3] { { 9, 0, 0 }, { 2, 9, 0 }, { 0, 1, 9 } }).Topics);

    private static Gen<long[,]> Weights(int topics, int most) => Gen.Int[-most, most].Array[topics * topics].Select(cells =>
    {
        long[,] weights = new long[topics, topics];
        for (int i = 0; i < cells.Length; i++)
        {
            weights[i / topics, i % topics] = Math.Max(0, cells[i]);
        }

        return weights;
    });

    private static int Turned(ImmutableArray<int> order) =>
        Enumerable.Range(0, order.Length).Sum(i => Enumerable.Range(i + 1, order.Length - i - 1).Count(j => order[i] > order[j]));

    private static IEnumerable<ImmutableArray<int>> Orders(ImmutableArray<int> topics) =>
        topics.IsEmpty ? [[]] : topics.SelectMany(t => Orders(topics.Remove(t)).Select(o => o.Insert(0, t)));
}
