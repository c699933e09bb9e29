using Rostrum.Rulings.Positions;
using Rostrum.Text;

namespace Rostrum.Play.Layout;

/// <summary>Why a game, or a moment of it, cannot be played: something that the sheet does not say. Told in one sentence; the heads show it, nothing is guessed.</summary>
public sealed class NotPlayableException : Exception
{
    /// <summary>A reason without a place.</summary>
    public NotPlayableException()
        : this("The game cannot be played.")
    {
    }

    /// <summary>A reason without a place.</summary>
    public NotPlayableException(string message)
        : base(message)
    {
    }

    /// <summary>A reason without a place.</summary>
    public NotPlayableException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A reason with the place in the sheet from which it comes.</summary>
    public NotPlayableException(string message, SourceSpan? at)
        : base(message) => At = at;

    /// <summary>A reason that lies in a position.</summary>
    internal NotPlayableException(string message, PositionSpot? spot, SourceSpan? at = null)
        : base(message) => (At, Spot, IsOfPosition) = (at, spot, true);

    /// <summary>True where a position holds too much, or does not say enough.</summary>
    public bool IsOfPosition { get; }

    /// <summary>The space, slot or place of the position; null where there is no one spot, and where the reason lies in the sheet.</summary>
    internal PositionSpot? Spot { get; }

    /// <summary>Where the sheet says, or leaves out, what is needed; null where there is no one place.</summary>
    public SourceSpan? At { get; }
}
