using Rostrum.Rulings.Positions;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Decides by cases what stays unknown because of facts that are not given: each candidate of the first such fact in turn, and so on.</summary>
/// <remarks>Complete where fewer than ten facts are blank and their candidates multiply to 20,000 at the most: a tree with that many leaves, and at
/// least two branches at each fork, has fewer than twice as many nodes. Beyond that it falls back on what is certain without cases.</remarks>
internal sealed class Splitter
{
    private const int MostCases = 20_000;
    private const int MostQuestions = 45_000;
    private int _left = MostQuestions;

    /// <summary>The answer that holds for every completion of the position; unknown where they differ.</summary>
    /// <param name="position">With blanks.</param>
    /// <param name="ask">The question, of a position.</param>
    public Value.Truth Decide(Position position, Func<Position, Value.Truth> ask)
    {
        Value.Truth answer = ask(position);
        if (answer.Is != Kleene.Unknown || FirstFilling(position, answer.Blame) is not { Count: > 0 } fillings)
        {
            return answer;
        }

        Kleene? all = null;
        foreach (Position filling in fillings)
        {
            Kleene one = Decide(filling, ask).Is;
            if (one == Kleene.Unknown || (all is not null && all != one))
            {
                return answer;
            }

            all = one;
        }

        return Value.Of(all == Kleene.Yes);
    }

    /// <summary>The least and greatest number over all completions of the position.</summary>
    /// <param name="position">With blanks.</param>
    /// <param name="ask">The question, of a position; null is no number and counts as 0.</param>
    public Value.Number Bound(Position position, Func<Position, Value.Number> ask)
    {
        Value.Number first = ask(position);
        if (first.IsKnown || !IsWorthwhile(position, first.Blame))
        {
            return first;
        }

        var range = new Range();
        Widen(position, first, ask, range);
        return Value.Between(range.Low, range.High, first.Blame);
    }

    /// <summary>True where going through all cases ends within the budget; otherwise bounds are taken as they are, for half-done cases narrow nothing.</summary>
    public static bool IsWorthwhile(Position position, Blame blame) =>
        blame.Blanks.Aggregate(1L, (product, b) => Math.Min(product * Fillings.Leaves(position, b), 1_000_000)) <= MostCases;

    private void Widen(Position position, Value.Number number, Func<Position, Value.Number> ask, Range range)
    {
        if (range.Holds(number))
        {
            return;
        }

        if (number.IsKnown || FirstFilling(position, number.Blame) is not { Count: > 0 } fillings)
        {
            range.Add(number);
            return;
        }

        foreach (Position filling in fillings)
        {
            Widen(filling, ask(filling), ask, range);
        }
    }

    /// <summary>The ways to fill the first fact that can be filled; null where there is none or where the budget is spent.</summary>
    public IReadOnlyList<Position>? FirstFilling(Position position, Blame blame)
    {
        foreach (Blank blank in blame.Blanks)
        {
            IReadOnlyList<Position> fillings = Fillings.Of(position, blank);
            if (fillings.Count > 0 && fillings.Count <= _left)
            {
                _left -= fillings.Count;
                return fillings;
            }
        }

        return null;
    }

    /// <summary>The numbers met so far.</summary>
    internal sealed class Range
    {
        private bool _isEmpty = true;

        public long? Low { get; private set; }

        public long? High { get; private set; }

        public bool Holds(Value.Number number) =>
            !_isEmpty && (Low is null || number.Low >= Low) && (High is null || number.High <= High);

        public void Add(Value.Number number)
        {
            Low = _isEmpty ? number.Low : Bounds.Least(Low, number.Low);
            High = _isEmpty ? number.High : Bounds.Greatest(High, number.High);
            _isEmpty = false;
        }
    }
}
