using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Testing.Slips;

/// <summary>The shares as a table of <c>docs/performance.md</c>, and the slips that are told worst.</summary>
public static class SlipTable
{
    /// <summary>A row for each kind of slip, and one for all.</summary>
    public static IEnumerable<string> Rows(ImmutableArray<SlipFinding> findings)
    {
        yield return "| slip | made | told | first message at its place | one message | mended, safe fix | mended, any fix | byte for byte | prose | same meaning | seen by expectations | other meaning |";
        yield return "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |";
        foreach (IGrouping<SlipKind, SlipFinding> kind in findings.GroupBy(f => f.Slip.Kind).OrderBy(k => k.Key))
        {
            yield return Row(Slip.InWords(kind.Key), [.. kind]);
        }

        yield return Row("in sheets", [.. findings.Where(f => !f.Slip.File.IsPosition)]);
        yield return Row("in positions", [.. findings.Where(f => f.Slip.File.IsPosition)]);
        yield return Row("**all**", findings);
    }

    /// <summary>The slips that miss a target, each with its messages; those with most messages first.</summary>
    public static IEnumerable<string> Worst(ImmutableArray<SlipFinding> findings) =>
        findings.Where(f => f.Outcome == SlipOutcome.Told && !(f.IsFirstAtPlace && f.IsOne))
            .OrderByDescending(f => f.Messages.Length)
            .SelectMany(f => f.Messages.Take(4).Select(m => $"    {m.Id} {m.At} '{Rostrum.Text.Prose.Clip(m.At.Text)}' {m.Message} {m.Hint.ReplaceLineEndings(" / ")}")
                .Prepend($"{f.Messages.Length} messages{(f.IsFirstAtPlace ? "" : ", first elsewhere")}: {f.Slip}"));

    /// <summary>The slips that nothing tells although the text says something else.</summary>
    public static IEnumerable<string> Silent(ImmutableArray<SlipFinding> findings) =>
        findings.Where(f => f.Outcome is SlipOutcome.OtherMeaning or SlipOutcome.SameMeaning).OrderBy(f => f.Outcome).ThenBy(f => f.Slip.Kind).Select(f => $"{f.Outcome}: {f.Slip}");

    private static string Row(string name, ImmutableArray<SlipFinding> findings)
    {
        var shares = new SlipShares(findings);
        string[] counts = [.. ((SlipOutcome[])[SlipOutcome.Prose, SlipOutcome.SameMeaning, SlipOutcome.SeenByExpectations, SlipOutcome.OtherMeaning]).Select(o => $"{shares.Count(o)}")];
        string[] percents = [.. ((double[])[shares.FirstAtPlace, shares.OneMessage, shares.MendedSafely, shares.Mended, shares.Restored]).Select(Percent)];
        return $"| {name} | {findings.Length} | {shares.Told.Length} | {string.Join(" | ", percents)} | {string.Join(" | ", counts)} |";
    }

    private static string Percent(double share) => double.IsNaN(share) ? "" : (100 * share).ToString("0.0", CultureInfo.InvariantCulture) + " %";
}
