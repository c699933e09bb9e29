namespace Rostrum.Rulings.Evaluation;

/// <summary>Puts the elements of a way in their order.</summary>
internal static class WayOrder
{
    /// <summary>The elements from the end with the lower number to the other.</summary>
    /// <param name="count">How many elements there are in all.</param>
    /// <param name="isJoined">The joins of the way, which is one piece with two ends.</param>
    public static int[] Along(int count, Func<int, int, bool> isJoined)
    {
        Graph way = Graph.Of(count, isJoined);
        int[] ends = [.. Enumerable.Range(0, count).Where(i => way.Near(i).Length == 1)];
        return way.ShortestWay(ends[0], ends[1]);
    }
}
