using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>What the course of play asks for beside terms.</content>
internal sealed partial class FormulaCompiler
{
    /// <summary>The spaces of a line, a board or a set of spaces.</summary>
    public ManyNode SpacesIn(Term container, FrameMap frame) => Spaces(container, frame);

    /// <summary>The space one step away; -1 past the edge.</summary>
    /// <param name="space">The number of a spot.</param>
    /// <param name="direction">The number of a direction.</param>
    public int StepFrom(int space, int direction) => _boards.Steps[direction][space] is var to && to == Node.Nothing ? Rostrum.Play.Layout.TableState.None : to;

    /// <summary>The name of a direction by its number.</summary>
    public string DirectionName(int number) => _boards.Name(number);

    /// <summary>The points of a scoring clause: of all its elements together, within its limits.</summary>
    public Node Points(ScoreBody body, FrameMap frame)
    {
        Node sum = body.Each is null
            ? Number(body.Points, frame)
            : Compile(new Term.Apply(Operations.Of(Op.Sum), body.Each, [body.Points], Sort.Number, body.Points.Origin), frame);
        return new WithinLimits(sum, body.AtLeast is null ? null : Number(body.AtLeast, frame), body.AtMost is null ? null : Number(body.AtMost, frame));
    }
}

/// <summary>A number held between two limits; nothing counts as 0.</summary>
internal sealed class WithinLimits(Node number, Node? least, Node? most) : Node
{
    public override int Value(Run run)
    {
        int value = number.Value(run) is var points && points == Nothing ? 0 : points;
        value = most?.Value(run) is { } high && high != Nothing ? Math.Min(value, high) : value;
        return least?.Value(run) is { } low && low != Nothing ? Math.Max(value, low) : value;
    }
}
