using System.Collections.Immutable;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Why a value is unknown: the facts that are not given and the gaps of the sheet, each once, in the order met.</summary>
internal sealed class Blame
{
    private Blame(ImmutableArray<Blank> blanks, ImmutableArray<Gap> gaps)
    {
        Blanks = blanks;
        Gaps = gaps;
    }

    /// <summary>Nothing is to blame: the value is known.</summary>
    public static Blame None { get; } = new([], []);

    /// <summary>What the position does not give.</summary>
    public ImmutableArray<Blank> Blanks { get; }

    /// <summary>What the sheet does not say.</summary>
    public ImmutableArray<Gap> Gaps { get; }

    /// <summary>True where there is a cause.</summary>
    public bool IsAny => !Blanks.IsEmpty || !Gaps.IsEmpty;

    /// <summary>One fact is to blame.</summary>
    public static Blame Of(Blank blank) => new([blank], []);

    /// <summary>One gap is to blame.</summary>
    public static Blame Of(GapKind kind, string what) => new([], [new Gap(kind, what)]);

    /// <summary>The same causes with other facts in their stead.</summary>
    public Blame Map(Func<Blank, Blank> instead) => Blanks.IsEmpty ? this : new Blame([.. Blanks.Select(instead).Distinct()], Gaps);

    /// <summary>Both together.</summary>
    public static Blame operator +(Blame first, Blame second)
    {
        if (ReferenceEquals(first, second) || !second.IsAny)
        {
            return first;
        }

        return !first.IsAny ? second : new Blame(Join(first.Blanks, second.Blanks), Join(first.Gaps, second.Gaps));
    }

    private static ImmutableArray<T> Join<T>(ImmutableArray<T> first, ImmutableArray<T> second)
    {
        if (second.IsEmpty)
        {
            return first;
        }

        return first.IsEmpty ? second : first.AddRange(second.Where(b => !first.Contains(b)));
    }
}
