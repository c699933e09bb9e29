namespace Rostrum.Play.Formulas;

/// <summary>A formula made ready for play: it gives one number, or fills a list, on the state that a run holds. The second executor of the typed tree.</summary>
/// <remarks>
/// What the number is, by sort. Number: itself. Truth: 1 or 0. Space, slot: the number of the spot. Place: the number of the holder. Thing: its number. Player: the
/// 0-based seat. Value: its number in the table of values. Direction, line, drawing, fit, text, look: its number in the plan's tables. Set and list: the number
/// of a list of the run (see <see cref="Run"/>). There is none: <see cref="Nothing"/>. Where a thing is, is the number of its spot, whatever holds it.
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

    /// <summary>The entry of a table; <see cref="Nothing"/> where there is none.</summary>
    protected static int Entry(int[] table, int at) => at >= 0 && at < table.Length ? table[at] : Nothing;
}

/// <summary>A set or list: its elements are what counts, its value is a list of the run.</summary>
internal abstract class ManyNode : Node
{
    /// <summary>True where <see cref="Span"/> puts the elements into the list that it is given; false where they stand in a table already.</summary>
    public virtual bool NeedsRoom => true;

    /// <inheritdoc />
    public override int Value(Run run)
    {
        Elements kept = run.Rent();
        Fill(run, kept);
        return run.Keep(kept);
    }

    /// <inheritdoc />
    public abstract override void Fill(Run run, Elements into);

    /// <summary>The elements in order, to be read before anything else is put into the list.</summary>
    /// <param name="run">Where they are asked.</param>
    /// <param name="room">An empty list; may be null where <see cref="NeedsRoom"/> is false.</param>
    public virtual ReadOnlySpan<int> Span(Run run, Elements? room)
    {
        Fill(run, room!);
        return room!.Span;
    }

    /// <summary>How many elements there are.</summary>
    public virtual int Count(Run run)
    {
        Elements? room = Room(run);
        int count = Span(run, room).Length;
        Leave(run, room);
        return count;
    }

    /// <summary>True where there is at least one.</summary>
    public virtual bool Any(Run run) => Count(run) > 0;

    /// <summary>The list that <see cref="Span"/> needs; null where it needs none.</summary>
    public Elements? Room(Run run) => NeedsRoom ? run.Rent() : null;

    /// <summary>Gives the list of <see cref="Room"/> back.</summary>
    public static void Leave(Run run, Elements? room)
    {
        if (room is not null)
        {
            run.Return(room);
        }
    }
}

/// <summary>A set or list whose elements stand in a table, so that it is gone through without being copied.</summary>
internal abstract class TableMany : ManyNode
{
    /// <inheritdoc />
    public override bool NeedsRoom => false;

    /// <summary>The elements in order.</summary>
    public abstract ReadOnlySpan<int> Table(Run run);

    /// <inheritdoc />
    public sealed override ReadOnlySpan<int> Span(Run run, Elements? room) => Table(run);

    /// <inheritdoc />
    public sealed override void Fill(Run run, Elements into) => into.AddRange(Table(run));

    /// <inheritdoc />
    public sealed override int Count(Run run) => Table(run).Length;
}
