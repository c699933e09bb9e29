using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>A game made ready for play: the table, the code of its course, its laws, ends and scores. Never changes; safe to share between threads.</summary>
internal sealed record CoursePlan(TableLayout Layout)
{
    /// <summary>The instructions; the first is where a game begins.</summary>
    public required ImmutableArray<Instruction> Code { get; init; }

    /// <summary>By instruction: the block of the sheet in whose course it stands, such as <c>turn</c>, <c>after turn</c> or an action.</summary>
    public required ImmutableArray<string> Blocks { get; init; }

    /// <summary>True where the game goes by turns; false where the sheet has a course of its own.</summary>
    public required bool HasTurns { get; init; }

    /// <summary>Where a turn begins, once whose turn it is stands in the state; null where the course has no one such place.</summary>
    public required int? TurnStart { get; init; }

    /// <summary>How many numbers a state keeps.</summary>
    public required int Numbers { get; init; }

    /// <summary>How many sets a state keeps.</summary>
    public required int Sets { get; init; }

    /// <summary>The choices and names of steps among the numbers and the sets of a state, all forgotten at the end of a turn.</summary>
    public required (Range Numbers, Range Sets) Locals { get; init; }

    /// <summary>How many letters a run needs.</summary>
    public required int Letters { get; init; }

    /// <summary>Where the marks begin among the numbers of a state.</summary>
    public required int MarkBase { get; init; }

    /// <summary>By position among the numbers of a state: true where it holds a thing; for the sets likewise.</summary>
    public required (ImmutableArray<bool> Numbers, ImmutableArray<bool> Sets) ThingSlots { get; init; }

    /// <summary>The numbers of a state when a game begins; choices and names of steps are forgotten by becoming these again.</summary>
    public required ImmutableArray<int> Blank { get; init; }

    /// <summary>The ends, in the order of the sheet.</summary>
    public required ImmutableArray<EndPlan> Ends { get; init; }

    /// <summary>The scoring clauses: the points of each for the seat that a run names.</summary>
    public required ImmutableArray<ScorePlan> Score { get; init; }

    /// <summary>The tie-breaks, in order.</summary>
    public required ImmutableArray<(TieBreak Tie, Node? Number)> Ties { get; init; }

    /// <summary>Who plays next; null for the next one clockwise.</summary>
    public required Node? NextToPlay { get; init; }

    /// <summary>Every action, by <see cref="ActionName.Index"/>.</summary>
    public required ImmutableArray<ActionPlan> Actions { get; init; }

    /// <summary>What marks forget at the end of a turn and at the end of a round: (position, how many, what they hold then).</summary>
    public required (ImmutableArray<MarkReset> Turn, ImmutableArray<MarkReset> Round) Resets { get; init; }

    /// <summary>True where formulas ask for the number of the turn, and of the round; else they are not kept, so that like positions are alike.</summary>
    public required (bool Turn, bool Round) Counts { get; init; }

    /// <summary>The names of lines, by their number at play.</summary>
    public required ImmutableArray<string> LineNames { get; init; }

    /// <summary>The name of a direction, by its number at play.</summary>
    public required Func<int, string> DirectionName { get; init; }

    /// <summary>The spaces of a fit of a drawing, by its number at play.</summary>
    public required Func<int, int[]> FitSpaces { get; init; }

    /// <summary>What numbers of a state stand for.</summary>
    public required StateValues Values { get; init; }

    /// <summary>The sheet.</summary>
    public Sheet Sheet => Layout.Sheet;

    /// <summary>The state before anything of the course was done: things where they begin.</summary>
    public TableState Start()
    {
        var state = new TableState(Layout, Numbers, Sets);
        StartTable.Fill(state);
        Blank.CopyTo(state.Numbers);
        return state;
    }
}

/// <summary>A mark that forgets.</summary>
/// <param name="At">Its first position among the numbers of a state.</param>
/// <param name="Count">How many numbers it has.</param>
/// <param name="To">What each holds then.</param>
internal readonly record struct MarkReset(int At, int Count, int To);

/// <summary>An end made ready.</summary>
/// <param name="Rule">The end.</param>
/// <param name="If">When it comes; null where a step calls it.</param>
/// <param name="Winner">Who wins: a player or a set of players; null for the other ways.</param>
internal sealed record EndPlan(EndRule Rule, Node? If, Node? Winner)
{
    /// <summary>Where its last steps begin; null for none.</summary>
    public Label? Steps { get; set; }
}

/// <summary>A scoring clause made ready.</summary>
/// <param name="Clause">The clause.</param>
/// <param name="Points">Its points, limits included.</param>
internal sealed record ScorePlan(ScoreClause Clause, Node Points);
