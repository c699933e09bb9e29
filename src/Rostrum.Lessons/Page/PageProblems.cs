using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Finds what would make a page promise more than it holds.</summary>
public static class PageProblems
{
    /// <summary>One sentence for each value without a slip, doubled name and sum that does not come out; empty for a sound page.</summary>
    public static ImmutableArray<string> Of(LessonPage page)
    {
        ArgumentNullException.ThrowIfNull(page);
        return
        [
            .. Doubled("slip", page.Slips.Select(slip => slip.Id)),
            .. Doubled("topic", page.Topics.Select(topic => topic.Slug)),
            .. Dangling(page),
            .. page.Slips.SelectMany(Sums),
        ];
    }

    private static IEnumerable<string> Doubled(string what, IEnumerable<string> names) =>
        names.GroupBy(name => name, StringComparer.Ordinal)
            .Where(same => same.Skip(1).Any())
            .Select(same => $"Two {what}s are called '{same.Key}'.");

    private static IEnumerable<string> Dangling(LessonPage page)
    {
        var slips = page.Slips.Select(slip => slip.Id).ToHashSet(StringComparer.Ordinal);
        return page.Topics.SelectMany(PageMentions.ValuesIn)
            .Where(value => !slips.Contains(value.SlipId))
            .Select(value => $"'{value.Said}' points to the slip '{value.SlipId}', which is not on the page.")
            .Concat(page.OpeningSlipId is { } opening && !slips.Contains(opening) ? [$"The opening slip '{opening}' is not on the page."] : []);
    }

    private static IEnumerable<string> Sums(PageSlip slip)
    {
        if (slip.Answer is SlipAnswer.Total total && !slip.Lines.IsEmpty && Sum(slip.Lines) != total.Points)
        {
            yield return $"The lines of slip '{slip.Id}' add up to {Sum(slip.Lines)}, not to {total.Points}.";
        }

        foreach (SlipLine line in slip.Lines.Where(line => !line.Because.IsEmpty && Sum(line.Because) != line.Points))
        {
            yield return $"In slip '{slip.Id}' the parts of '{line.Words}' add up to {Sum(line.Because)}, not to {line.Points}.";
        }
    }

    private static long Sum(ImmutableArray<SlipLine> lines) => lines.Sum(line => line.Points);
}
