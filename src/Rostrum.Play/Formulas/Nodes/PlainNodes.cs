using Rostrum.Play.Layout;
using Rostrum.Text;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>Always the same.</summary>
internal sealed class Constant(int value) : Node
{
    /// <summary>Nothing, whatever the state.</summary>
    public static Constant None { get; } = new(Nothing);

    /// <summary>What it always is.</summary>
    public int Amount => value;

    /// <inheritdoc />
    public override int Value(Run run) => value;
}

/// <summary>The seat that is asked for.</summary>
internal sealed class MeNode : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => run.Me;
}

/// <summary>Who sits beside a player; seats are counted clockwise, so who sits to the left comes next.</summary>
internal sealed class BesideNode(Node player, int steps, int seats) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => player.Value(run) is var seat && seat == Nothing ? Nothing : (seat + steps) % seats;
}

/// <summary>An entry of a table by the seat that <c>me</c> is.</summary>
internal sealed class OfMe(int[] table) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => Entry(table, run.Me);
}

/// <summary>An entry of a table by a value.</summary>
internal sealed class LookedUp(Node of, int[] table) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => Entry(table, of.Value(run));
}

/// <summary>A number of the course, such as a choice, or a mark of the table.</summary>
internal sealed class StateNumber(int at) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => run.State.Numbers[at];
}

/// <summary>A number of the course by a seat, such as a player's mark.</summary>
internal sealed class StateNumberOf(Node seat, int first, int seats) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => seat.Value(run) is var at && at >= 0 && at < seats ? run.State.Numbers[first + at] : Nothing;
}

/// <summary>A number of the course by a space, such as the mark of a space.</summary>
internal sealed class StateNumberBy(Node space, int[] at) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => Entry(at, space.Value(run)) is var number && number >= 0 ? run.State.Numbers[number] : Nothing;
}

/// <summary>A letter of the run.</summary>
internal sealed class LetterNode(int at) : Node
{
    /// <summary>Which letter.</summary>
    public int At => at;

    /// <inheritdoc />
    public override int Value(Run run) => run.Letters[at];
}

/// <summary>A part that the sheet leaves out, or that nothing is said of: it cannot be asked.</summary>
internal sealed class Missing(string sentence, SourceSpan at) : ManyNode
{
    /// <inheritdoc />
    public override int Value(Run run) => throw new NotPlayableException(sentence, at);

    /// <inheritdoc />
    public override void Fill(Run run, Elements into) => throw new NotPlayableException(sentence, at);
}
