using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Rostrum.Pictures;

/// <summary>The flaws that a sheet can give to pieces.</summary>
public static class Flaws
{
    /// <summary>Broken in two along a jagged gap, one part leaning away, with a badge.</summary>
    public static Flaw Cracked { get; } = new("cracked");

    /// <summary>Crossed out: used up, exhausted, out of play.</summary>
    public static Flaw Spent { get; } = new("spent");

    /// <summary>Face down: only a hollow, dashed silhouette.</summary>
    public static Flaw Hidden { get; } = new("hidden");

    /// <summary>All of them.</summary>
    public static ImmutableArray<Flaw> All { get; } = [Cracked, Spent, Hidden];

    /// <summary>Looks a flaw up by its word; false where there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out Flaw? flaw) => Catalogue.TryFind(All, name, out flaw);

    /// <summary>The flaw of that word.</summary>
    /// <exception cref="ArgumentException">There is none; the message lists those there are.</exception>
    public static Flaw Find(string name) => Catalogue.Find(All, name, "flaw");
}
