using Rostrum.Text;

namespace Rostrum.Play;

/// <summary>What keeps a game from being played, as problems that the heads show with their place in the sheet.</summary>
internal static class PlayProblems
{
    /// <summary>The game, or what comes next in it, cannot be played.</summary>
    public static Diagnostic NotPlayable(SourceSpan at, string why) =>
        new("ROS0901", Severity.Error, at, why, "Rulings and tallies are answered all the same; whole games need it.");
}
