using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests.Outline;

/// <summary>Steps down a tree.</summary>
internal static class NodeExtensions
{
    /// <summary>The value of a key that is there.</summary>
    public static OutlineNode Child(this OutlineNode node, string key) => ((OutlineMapping)node).Find(key)!.Value;

    /// <summary>All nodes below, each with the node that holds it.</summary>
    public static IEnumerable<(OutlineNode Parent, OutlineNode Child)> Pairs(this OutlineNode node)
    {
        IEnumerable<OutlineNode> children = node switch
        {
            OutlineMapping m => m.Entries.SelectMany(e => new[] { e.Key, e.Value }),
            OutlineSequence s => s.Items,
            _ => [],
        };
        return children.SelectMany(c => c.Pairs().Prepend((node, c)));
    }
}
