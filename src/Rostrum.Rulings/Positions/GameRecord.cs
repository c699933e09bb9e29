using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>What is known of the game so far: which actions were done, when, by whom, and what was chosen then. Only this solution makes records: a position
/// file tells one, and a game that is played keeps one.</summary>
public abstract class GameRecord
{
    /// <summary>Whether an action was done.</summary>
    /// <param name="action">The action.</param>
    /// <param name="when">How far back is looked.</param>
    /// <param name="by">The 0-based seat that must have done it; null for anybody.</param>
    internal abstract Kleene Was(ActionName action, DoneWhen when, int? by);

    /// <summary>What was chosen when an action was done last; nothing where it was never done, unknown where the record does not say.</summary>
    /// <param name="action">The action.</param>
    /// <param name="choice">The position of the choice in <see cref="ActionFacts.Choices"/>.</param>
    /// <param name="by">The 0-based seat that must have done it; null for anybody.</param>
    internal abstract Value Last(ActionName action, int choice, int? by);

    /// <summary>This record, where it is known who starts the rounds.</summary>
    /// <param name="start">The 0-based seat.</param>
    internal virtual GameRecord StartedBy(int start) => this;

    /// <summary>What nobody can say.</summary>
    internal static Blame NotGiven { get; } = Blame.Of(GapKind.NotGiven, "what was done before");
}
