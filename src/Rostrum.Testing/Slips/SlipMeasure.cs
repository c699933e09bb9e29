using System.Collections.Immutable;

namespace Rostrum.Testing.Slips;

/// <summary>Makes many slips in everything that is shipped and says what came of each.</summary>
public static class SlipMeasure
{
    /// <summary>How many slips the figures of <c>docs/performance.md</c> rest on.</summary>
    public const int Whole = 3_000;

    /// <summary>The seed of those figures.</summary>
    public const ulong Seed = 20_261_125;

    // A sheet that still reads is asked so many positions, so that a measure takes minutes.
    private const int SampledPositions = 5;

    /// <summary>What came of slips, in their order.</summary>
    /// <param name="numbers">Their numbers, each 0 or more.</param>
    public static ImmutableArray<SlipFinding> Of(IEnumerable<int> numbers)
    {
        ImmutableArray<SlipGame> games = SlipGame.All;
        ShippedText[] texts = [.. games.SelectMany(g => g.Texts)];
        var maker = new SlipMaker([.. texts.Where(t => !t.IsPosition)], [.. texts.Where(t => t.IsPosition)], Seed);
        var judge = new SlipJudge(games, SampledPositions);
        return [.. numbers.AsParallel().AsOrdered().Select(n => judge.Judge(maker.Make(n)))];
    }
}
