using System.Collections.Immutable;

namespace Rostrum.Sheets.Model;

/// <summary>A way to tell players of equal total apart.</summary>
/// <param name="Words">As the author wrote it, such as <c>fewer my shards</c>.</param>
/// <param name="HigherWins">True where the higher number comes first.</param>
/// <param name="Number">What is compared, asked of each player as <c>me</c>; null for <c>shared</c>, which leaves them equal.</param>
public sealed record TieBreak(string Words, bool HigherWins, Term? Number)
{
    /// <summary>How many frame positions the number needs.</summary>
    public int FrameSize { get; init; }
}

/// <summary>What players play for.</summary>
/// <param name="Kind">Which total is best, or what it is measured against.</param>
/// <param name="Target">The total that decides, for <see cref="AimKind.AtLeast"/> and <see cref="AimKind.MoreThan"/>; null otherwise.</param>
public sealed record Aim(AimKind Kind, long? Target)
{
    /// <summary>The highest total wins, as in most games.</summary>
    public static Aim Highest { get; } = new(AimKind.HighestTotal, null);
}

/// <summary>Which total is best.</summary>
public enum AimKind
{
    /// <summary>The highest total wins.</summary>
    HighestTotal,

    /// <summary>The lowest total wins.</summary>
    LowestTotal,

    /// <summary>Who has at least the target wins; the others lose.</summary>
    AtLeast,

    /// <summary>Who has more than the target wins; the others lose.</summary>
    MoreThan,
}

/// <summary>Players who win and lose together.</summary>
/// <param name="Name">How the team is called.</param>
/// <param name="Seats">Its seats, 0-based, in the order of the sheet; every seat is in exactly one team.</param>
public sealed record Team(string Name, ImmutableArray<int> Seats);
