using System.Collections.Immutable;

namespace Rostrum.Testing.Slips;

/// <summary>How many of some slips are told, where, and how well they are mended.</summary>
/// <param name="findings">What came of each.</param>
public sealed class SlipShares(ImmutableArray<SlipFinding> findings)
{
    /// <summary>What came of each.</summary>
    public ImmutableArray<SlipFinding> Findings => findings;

    /// <summary>Those that give a message.</summary>
    public ImmutableArray<SlipFinding> Told { get; } = [.. findings.Where(f => f.Outcome == SlipOutcome.Told)];

    /// <summary>Of those that give a message, the share whose first message stands at the slip's own place; 0 to 1.</summary>
    public double FirstAtPlace => Share(f => f.IsFirstAtPlace);

    /// <summary>Of those that give a message, the share that gives exactly one.</summary>
    public double OneMessage => Share(f => f.IsOne);

    /// <summary>Of those that give a message, the share where a safe fix brings back what stood there, or the same meaning.</summary>
    public double MendedSafely => Share(f => f.Safe >= FixWorth.SameMeaning);

    /// <summary>The same for any fix that is offered.</summary>
    public double Mended => Share(f => f.Offered >= FixWorth.SameMeaning);

    /// <summary>Of those that give a message, the share where any fix brings back the same bytes.</summary>
    public double Restored => Share(f => f.Offered == FixWorth.Restored);

    /// <summary>How many came out in a certain way.</summary>
    public int Count(SlipOutcome outcome) => findings.Count(f => f.Outcome == outcome);

    // 0 of 0 is not 100 %.
    private double Share(Func<SlipFinding, bool> which) => Told.Length == 0 ? double.NaN : (double)Told.Count(which) / Told.Length;
}
