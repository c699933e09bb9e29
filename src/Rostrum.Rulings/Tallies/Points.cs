namespace Rostrum.Rulings.Tallies;

/// <summary>Points between two bounds, both included; one number where they meet.</summary>
/// <param name="Low">The least that it can be; null where nobody can say.</param>
/// <param name="High">The greatest that it can be; null where nobody can say.</param>
public readonly record struct Points(long? Low, long? High)
{
    /// <summary>A known number of points.</summary>
    public static Points Of(long points) => new(points, points);

    /// <summary>True for one known number.</summary>
    public bool IsCertain => Low is not null && Low == High;

    /// <summary>The number, where it is known; null otherwise.</summary>
    public long? Certain => IsCertain ? Low : null;

    /// <summary>True where not even a bound is known.</summary>
    public bool IsUnknown => Low is null && High is null;

    /// <summary>As a person says it: <c>35</c>, <c>minus 2</c>, <c>12 to 15</c>, <c>at least 12</c>.</summary>
    public string InWords => (Low, High) switch
    {
        ({ } low, { } high) when low == high => Say(low),
        ({ } low, { } high) => $"{Say(low)} to {Say(high)}",
        ({ } low, null) => $"at least {Say(low)}",
        (null, { } high) => $"at most {Say(high)}",
        _ => "unknown",
    };

    private static string Say(long points) => points < 0 ? $"minus {-points}" : $"{points}";
}
