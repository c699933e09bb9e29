using Rostrum.Testing.Slips;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>One slip in a shipped sheet or position gives one message at its place, and a fix that is called safe is safe. The first 640 slips are
/// judged each time, all of them in the slow run.</summary>
public sealed class SlipTests
{
    private const int Quick = 640;

    private static readonly Lazy<SlipShares> First = new(() => new SlipShares(SlipMeasure.Of(Enumerable.Range(0, Quick))));

    private static readonly Lazy<SlipShares> All = new(() => new SlipShares(SlipMeasure.Of(Enumerable.Range(0, SlipMeasure.Whole))));

    [Fact]
    public void Of_the_first_slips_the_first_message_stands_at_its_place() => Assert.InRange(First.Value.FirstAtPlace, 0.95, 1);

    [Fact]
    public void Of_the_first_slips_each_gives_one_message() => Assert.InRange(First.Value.OneMessage, 0.90, 1);

    [Fact]
    public void Of_the_first_slips_no_safe_fix_changes_another_ruling() => Assert.Empty(Unsafe(First.Value));

    [Fact]
    public void Every_kind_of_slip_is_made_and_told() =>
        Assert.Equal(Enum.GetValues<SlipKind>(), First.Value.Told.Select(f => f.Slip.Kind).Distinct().Order());

    [Fact]
    public void A_slip_is_made_again_by_its_number()
    {
        string[] once = [.. SlipMeasure.Of([17, 400]).Select(f => $"{f.Slip} {f.Outcome} {f.Messages.Length}")];

        Assert.Equal(once, SlipMeasure.Of([17, 400]).Select(f => $"{f.Slip} {f.Outcome} {f.Messages.Length}"));
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Of_all_slips_the_first_message_stands_at_its_place() => Assert.InRange(All.Value.FirstAtPlace, 0.95, 1);

    [Fact]
    [Trait("Category", "Slow")]
    public void Of_all_slips_each_gives_one_message() => Assert.InRange(All.Value.OneMessage, 0.90, 1);

    [Fact]
    [Trait("Category", "Slow")]
    public void Of_all_slips_no_safe_fix_changes_another_ruling() => Assert.Empty(Unsafe(All.Value));

    private static IEnumerable<string> Unsafe(SlipShares shares) => shares.Findings.Where(f => f.Unsafe is not null).Select(f => $"{f.Slip}: {f.Unsafe}");
}
