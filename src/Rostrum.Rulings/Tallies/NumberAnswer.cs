using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tallies;

/// <summary>What a formula that gives a number gives on a position.</summary>
/// <param name="Points">The number, or its bounds.</param>
/// <param name="IsOpen">True where an open reading would give another number.</param>
public sealed record NumberAnswer(Points Points, bool IsOpen)
{
    /// <summary>Works out a formula.</summary>
    /// <param name="position">The position; a blank one for a formula that needs none.</param>
    /// <param name="formula">A formula that gives a number.</param>
    /// <param name="frameSize">How many frame positions it needs.</param>
    public static NumberAnswer Of(Position position, Term formula, int frameSize)
    {
        ArgumentNullException.ThrowIfNull(position);
        ArgumentNullException.ThrowIfNull(formula);
        var touched = new SortedSet<int>();
        Points first = On(position, formula, frameSize, Setting.First, touched);
        bool isOpen = position.Sheet.Choices.Where(c => touched.Contains(c.Id))
            .Any(c => Enumerable.Range(0, c.Names.Length).Any(a => On(position, formula, frameSize, Setting.First.With(c, a), new SortedSet<int>()) != first));
        return new NumberAnswer(first, isOpen);
    }

    private static Points On(Position position, Term formula, int frameSize, Setting setting, SortedSet<int> touched)
    {
        var evaluator = new Evaluator(position, position.Me, setting, touched);
        return Evaluator.AsNumber(evaluator.Evaluate(formula, Evaluator.Frame(frameSize))) is { } number ? new Points(number.Low, number.High) : default;
    }
}
