using static Rostrum.Rulings.Evaluation.Value;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Arithmetic over bounds. A bound beyond 10^15 counts as open, so that no sum ever overflows.</summary>
internal static class Bounds
{
    private const long Limit = 1_000_000_000_000_000;

    /// <summary>The sum.</summary>
    public static Number Plus(Number a, Number b) => Make(a, b, Add(a.Low, b.Low), Add(a.High, b.High));

    /// <summary>The other sign.</summary>
    public static Number Negative(Number a) => Between(-a.High, -a.Low, a.Blame, a.MayBeNothing);

    /// <summary>The product.</summary>
    public static Number Times(Number a, Number b)
    {
        if (a is { Low: { } aLow, High: { } aHigh } && b is { Low: { } bLow, High: { } bHigh })
        {
            Int128[] corners = [(Int128)aLow * bLow, (Int128)aLow * bHigh, (Int128)aHigh * bLow, (Int128)aHigh * bHigh];
            return Make(a, b, Cut(corners.Min()), Cut(corners.Max()));
        }

        bool bothPositive = a.Low >= 0 && b.Low >= 0;
        return Make(a, b, bothPositive ? Cut((Int128)a.Low!.Value * b.Low!.Value) : null, null);
    }

    /// <summary>How far apart.</summary>
    public static Number Difference(Number a, Number b)
    {
        Number d = Plus(a, Negative(b));
        bool crosses = !(d.Low >= 0) && !(d.High <= 0);
        long? far = d.Low is null || d.High is null ? null : Math.Max(Math.Abs(d.Low.Value), Math.Abs(d.High.Value));
        long near = crosses ? 0 : d.Low >= 0 ? d.Low.Value : -d.High!.Value;
        return Between(near, far, d.Blame, d.MayBeNothing);
    }

    /// <summary>The number divided by <paramref name="by"/> (above 0), rounded by a function that never falls.</summary>
    public static Number Divide(Number a, long by, Func<long, long, long> round) =>
        Between(a.Low is { } low ? round(low, by) : null, a.High is { } high ? round(high, by) : null, a.Blame, a.MayBeNothing);

    /// <summary>Rounded towards minus without end.</summary>
    public static long Down(long m, long n) => (m / n) - (m % n < 0 ? 1 : 0);

    /// <summary>Rounded towards plus without end.</summary>
    public static long Up(long m, long n) => -Down(-m, n);

    /// <summary>Rounded to the nearest; a half goes up.</summary>
    public static long Nearest(long m, long n) => Down((2 * m) + n, 2 * n);

    /// <summary>The least interval that holds both.</summary>
    public static Number Hull(Number a, Number b) =>
        Between(Least(a.Low, b.Low), Greatest(a.High, b.High), a.Blame + b.Blame, a.MayBeNothing || b.MayBeNothing);

    /// <summary>The higher of two numbers.</summary>
    public static Number Higher(Number a, Number b)
    {
        long? low = a.Low is null ? b.Low : b.Low is null ? a.Low : Math.Max(a.Low.Value, b.Low.Value);
        return Between(low, Greatest(a.High, b.High), a.Blame + b.Blame);
    }

    /// <summary>The number where it belongs, 0 where it does not: for an element that may or may not count.</summary>
    public static Number OrZero(Number a, Blame why) =>
        Between(a.Low is { } low ? Math.Min(0, low) : null, a.High is { } high ? Math.Max(0, high) : null, a.Blame + why);

    /// <summary>The lower of two lower bounds; open where one is.</summary>
    public static long? Least(long? a, long? b) => a is null || b is null ? null : Math.Min(a.Value, b.Value);

    /// <summary>The lower of two upper bounds; the other where one is open.</summary>
    public static long? Lower(long? a, long? b) => a is null ? b : b is null ? a : Math.Min(a.Value, b.Value);

    /// <summary>The higher of two upper bounds; open where one is.</summary>
    public static long? Greatest(long? a, long? b) => a is null || b is null ? null : Math.Max(a.Value, b.Value);

    private static Number Make(Number a, Number b, long? low, long? high)
    {
        Blame blame = a.Blame + b.Blame;
        if (!blame.IsAny && (low is null || high is null))
        {
            blame = Blame.Of(GapKind.Limit, "a number beyond 1,000,000,000,000,000 is not worked out");
        }

        return Between(low, high, blame, a.MayBeNothing || b.MayBeNothing);
    }

    private static long? Add(long? a, long? b) => a is null || b is null ? null : Cut((Int128)a.Value + b.Value);

    private static long? Cut(Int128 sum) => sum > Limit || sum < -Limit ? null : (long)sum;
}
