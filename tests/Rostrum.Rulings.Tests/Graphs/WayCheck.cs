using Rostrum.Rulings.Evaluation;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>Whether a way is one at all.</summary>
internal static class WayCheck
{
    /// <summary>True for elements that differ, each joined with the next; of a bare way no others are joined.</summary>
    public static bool IsWay(Graph graph, int[] way, bool isBare) =>
        way.Distinct().Count() == way.Length
        && Enumerable.Range(0, way.Length).All(i => Enumerable.Range(i + 1, way.Length - i - 1).All(j => Fits(graph.Near(way[i]).Contains(way[j]), j == i + 1, isBare)));

    private static bool Fits(bool isJoined, bool isNext, bool isBare) => isNext ? isJoined : !isJoined || !isBare;
}
