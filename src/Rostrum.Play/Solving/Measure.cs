using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Solving;

/// <summary>What is asked of a position where play stops: a whole number.</summary>
internal delegate int Measure(Machine machine);

/// <summary>The measures that a sheet gives by itself.</summary>
internal static class Measures
{
    /// <summary>The points of one scoring clause.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="clause">The name of the clause, as the sheet writes it.</param>
    /// <param name="seat">0-based.</param>
    /// <exception cref="ArgumentException">The sheet has no such clause.</exception>
    public static Measure Points(CoursePlan plan, string clause, int seat)
    {
        ScorePlan score = plan.Score.FirstOrDefault(s => s.Clause.Name == clause) ?? throw new ArgumentException($"The sheet has no scoring clause '{clause}'.", nameof(clause));
        return machine => Reckoning.Points(machine, score, seat);
    }

    /// <summary>The total of a seat.</summary>
    /// <param name="seat">0-based.</param>
    public static Measure Total(int seat) => machine => Reckoning.Total(machine, seat);

    /// <summary>A mark: of a seat, or of the table.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="name">The name of the mark, as the sheet writes it.</param>
    /// <param name="seat">0-based; of a mark of the table 0.</param>
    /// <exception cref="ArgumentException">The sheet has no such mark.</exception>
    public static Measure Mark(CoursePlan plan, string name, int seat)
    {
        Mark mark = plan.Sheet.Marks.FirstOrDefault(m => m.Name == name) ?? throw new ArgumentException($"The sheet has no mark '{name}'.", nameof(name));
        int at = plan.MarkBase + plan.Layout.MarkStart[mark.Index] + seat;
        return machine => machine.State.Numbers[at];
    }

    /// <summary>How a game of two came out for the first seat: 1 for a win, -1 for a loss, 0 where both or neither win.</summary>
    public static int Outcome(Machine machine)
    {
        ImmutableArray<int> winners = Reckoning.Of(machine).Winners;
        return winners.Length == 1 ? (winners[0] == 0 ? 1 : -1) : 0;
    }

    /// <summary>By how much the total of the first seat is above that of the second.</summary>
    public static int Difference(Machine machine) => Reckoning.Total(machine, 0) - Reckoning.Total(machine, 1);
}

/// <summary>Where an analysis begins.</summary>
internal static class Beginning
{
    /// <summary>The state in which a game's first turn begins.</summary>
    /// <exception cref="NotPlayableException">The set-up itself hangs on chance or on a decision; begin at a position then.</exception>
    public static TableState FirstTurn(CoursePlan plan)
    {
        var machine = new Machine(plan) { State = plan.Start(), StopsAfterTurns = true };
        return machine.Advance() is Moment.TurnOver
            ? machine.State
            : throw new NotPlayableException("The set-up of this game hangs on chance or on a decision, so its first turn begins in more than one way.");
    }
}
