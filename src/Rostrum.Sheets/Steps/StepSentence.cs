using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Steps;

/// <summary>Tells a step as a sentence for the read-back: a step by itself ends in a full stop, the head of others in a colon.</summary>
internal static class StepSentence
{
    /// <summary>The sentence.</summary>
    public static string Of(StepSyntax step) => step.Kind switch
    {
        StepKind.Again => "The same player has another turn.",
        StepKind.EndTurn => "The turn is over.",
        StepKind.Nothing => "Nothing happens.",
        StepKind.EndGame => $"The game ends by '{step.End}'.",
        StepKind.OneOf => "Do one of these:",
        StepKind.FirstPossible => "Do the first of these that is possible:",
        StepKind.InAnyOrder => "Do these in any order:",
        StepKind.AllAtOnce => "All players at once, unseen by each other:",
        StepKind.Must => "You must:",
        StepKind.May => "You " + StepPrinter.Print(step) + ":",
        _ => Rostrum.Text.Prose.Sentence(StepPrinter.Print(step)) + (step.IsHead ? ":" : "."),
    };
}
