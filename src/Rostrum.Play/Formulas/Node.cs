namespace Rostrum.Play.Formulas;

/// <summary>A formula made ready for play: it gives one number, or fills a list, on the state that a run holds. The second executor of the typed tree.</summary>
/// <remarks>
/// What the number is, by sort. Number: itself. Truth: 1 or 0. Space, slot: the number of the spot. Place: the number of the holder. Thing: its number. Player: the
/// 0-based seat. Value: its number in the table of values. Direction, line, drawing, fit, text, look: its number in the plan's tables. Set and list: the number
/// of a list of the run (see <see cref="Run"/>). There is none: <see cref="Nothing"/>.
/// </remarks>
internal abstract class Node
{
    /// <summary>The number that stands for nothing, of every sort.</summary>
    public const int Nothing = int.MinValue;

    /// <summary>The value; of a set or list, a list of the run that holds it.</summary>
    public abstract int Value(Run run);

    /// <summary>Adds the elements of a set or list to a list; of anything else (a place, a line, a fit that stands for what it holds) nothing.</summary>
    public virtual void Fill(Run run, Elements into) => throw new InvalidOperationException($"{GetType().Name} is no set.");

    /// <summary>The value as a truth; nothing is no.</summary>
    public bool Holds(Run run) => Value(run) is var value && value != Nothing && value != 0;
}

/// <summary>A set or list: its elements are what counts, its value is a list of the run.</summary>
internal abstract class ManyNode : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        Elements kept = run.Rent();
        Fill(run, kept);
        return run.Keep(kept);
    }

    /// <inheritdoc />
    public abstract override void Fill(Run run, Elements into);
}
