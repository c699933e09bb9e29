using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Which topic mentions which slip.</summary>
internal static class PageMentions
{
    /// <summary>The checked values of a topic in reading order.</summary>
    public static IEnumerable<PageRun.Value> ValuesIn(PageTopic topic) =>
        topic.Blocks.SelectMany(RunsOf).OfType<PageRun.Value>();

    /// <summary>For each topic the slips that it is the first to mention, in order of mention; one last entry for the slips never mentioned. Without the opening slip.</summary>
    public static ImmutableArray<ImmutableArray<PageSlip>> ByTopic(LessonPage page)
    {
        var left = page.Slips.Where(slip => slip.Id != page.OpeningSlipId).ToDictionary(slip => slip.Id, StringComparer.Ordinal);
        var sorted = ImmutableArray.CreateBuilder<ImmutableArray<PageSlip>>();
        foreach (PageTopic topic in page.Topics)
        {
            var mentioned = ImmutableArray.CreateBuilder<PageSlip>();
            foreach (PageRun.Value value in ValuesIn(topic))
            {
                if (left.Remove(value.SlipId, out PageSlip? slip))
                {
                    mentioned.Add(slip);
                }
            }

            sorted.Add(mentioned.ToImmutable());
        }

        sorted.Add([.. page.Slips.Where(slip => left.ContainsKey(slip.Id))]);
        return sorted.ToImmutable();
    }

    private static IEnumerable<PageRun> RunsOf(PageBlock block) => block switch
    {
        PageBlock.Paragraph paragraph => paragraph.Runs,
        PageBlock.List list => list.Items.SelectMany(item => item),
        PageBlock.Quote quote => quote.Runs,
        _ => [],
    };
}
