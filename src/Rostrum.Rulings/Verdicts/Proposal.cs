using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <summary>An action with everything chosen, on the position in which it is judged.</summary>
/// <param name="Action">The action.</param>
/// <param name="Position">The position, with what was assumed to be at hand laid into it.</param>
/// <param name="Chosen">What was chosen, in the order of the action's choices; null for a value that follows.</param>
/// <param name="Assumed">What was taken for granted, in words.</param>
internal sealed record Proposal(ActionFacts Action, Position Position, ImmutableArray<Value?> Chosen, ImmutableArray<string> Assumed)
{
    /// <summary>The choices, by index, that were given a thing which cannot lie where the action takes it from, each with the reason.</summary>
    public ImmutableDictionary<int, string> Impossible { get; init; } = ImmutableDictionary<int, string>.Empty;

    /// <summary>The choices, by index, whose thing is taken to lie in the supply or the box, of which no position says what they hold.</summary>
    public ImmutableHashSet<int> Granted { get; init; } = [];

    /// <summary>The frame in which steps, laws and powers speak of the choices.</summary>
    /// <param name="evaluator">Of a completion of the position.</param>
    /// <param name="size">How many frame positions are needed.</param>
    public Value[] Frame(Evaluator evaluator, int size)
    {
        Value[] frame = Evaluator.Frame(Math.Max(size, Action.FrameSize));
        for (int i = 0; i < Action.Choices.Length; i++)
        {
            ActionChoice choice = Action.Choices[i];
            frame[choice.Slot] = Chosen[i] is { } chosen ? Again(chosen, evaluator.Position) : evaluator.Evaluate(choice.From, frame);
        }

        return frame;
    }

    /// <summary>A value as a fuller position gives it: a thing keeps its place, and what was blank of it may be known now.</summary>
    public static Value Again(Value value, Position position) => value switch
    {
        Value.ThingAt { Spot.Kind: SpotKind.Space or SpotKind.Slot, Index: >= 0 } at when at.Index < at.Spot.In(position).Things.Length =>
            at with { Thing = at.Spot.In(position).Things[at.Index] },
        Value.Many many => many with { Members = [.. many.Members.Select(m => m with { Value = Again(m.Value, position) })] },
        _ => value,
    };
}
