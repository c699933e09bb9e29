using System.Collections.Immutable;

namespace Rostrum.Play.Course;

/// <summary>Why play waits. Closed: the four below and no more.</summary>
internal abstract record Moment
{
    private Moment()
    {
    }

    /// <summary>A player decides.</summary>
    /// <param name="Seat">Who, 0-based.</param>
    /// <param name="Options">Every legal option, none twice; never empty.</param>
    /// <param name="IsSecret">True where the others do not see it before everybody has chosen.</param>
    public sealed record Decision(int Seat, ImmutableArray<Option> Options, bool IsSecret) : Moment;

    /// <summary>Chance decides.</summary>
    /// <param name="Event">What happens by chance.</param>
    public sealed record Chance(ChanceEvent Event) : Moment;

    /// <summary>A turn is over and the next one begins; only told where it is asked for.</summary>
    public sealed record TurnOver : Moment;

    /// <summary>The game is over.</summary>
    public sealed record GameOver : Moment;
}

/// <summary>Something that happens by chance: its outcomes with their weights.</summary>
/// <remarks>Outcomes that nobody could tell apart are one outcome with the sum of their weights.</remarks>
internal abstract class ChanceEvent
{
    /// <summary>The weight of each outcome; the chance of one is its weight over their sum.</summary>
    public abstract ImmutableArray<long> Weights { get; }

    /// <summary>Makes it so.</summary>
    public abstract void Carry(Layout.TableState state, int outcome);
}
