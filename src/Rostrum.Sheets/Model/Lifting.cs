using System.Collections.Immutable;

namespace Rostrum.Sheets.Model;

/// <summary>Which laws powers lift together.</summary>
public static class Lifting
{
    /// <summary>True where the powers lift all of the laws, and none of them could be left out. A power for any one law lifts one of them.</summary>
    /// <param name="broken">The laws that are broken; at least one.</param>
    /// <param name="powers">The powers, each used once.</param>
    public static bool IsJustEnough(IReadOnlyCollection<Law> broken, ImmutableArray<Power> powers) =>
        LiftAll(broken, powers) && powers.All(p => !LiftAll(broken, powers.Remove(p)));

    private static bool LiftAll(IReadOnlyCollection<Law> broken, ImmutableArray<Power> powers) =>
        broken.Count(l => powers.All(p => !p.Lifts.Contains(l.Name))) <= powers.Count(p => p.Lifts.IsEmpty);
}
