using Rostrum.Play.Course;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Play.Checking;

/// <summary>Tells of moves in a player's action that found fewer things than their number says.</summary>
/// <remarks>
/// A move takes what is there, so an action whose supply has run out is still offered, and lines of play are counted that the rules do not have. Only actions that
/// a player decides on are looked at, and only numbers that are written: a block of steps that fills up or pays out does so as far as it goes.
/// </remarks>
internal sealed class ShortMoves
{
    private readonly Dictionary<SourceSpan, Step> _steps = [];

    /// <summary>The moves of a sheet that may come up short.</summary>
    public ShortMoves(Sheet sheet)
    {
        foreach (ActionFacts action in sheet.Actions.Where(a => IsDecided(sheet, a)))
        {
            foreach (Step step in action.Steps.SelectMany(s => s.All).Where(s => s is { Kind: StepKind.Move, Terms: [Term.Number or Term.Constant, Term.LookOf, not Term.Nothing, ..] }))
            {
                _steps.TryAdd(step.At, step);
            }
        }
    }

    /// <summary>The problem of a move that came up short, the first time that this step does; null for other steps.</summary>
    /// <param name="instruction">What was carried out.</param>
    /// <param name="found">How many there were.</param>
    /// <param name="player">Who acted.</param>
    /// <param name="turn">From 1; 0 before the first turn, of which nothing is told.</param>
    /// <param name="seed">The seed of the game.</param>
    public Diagnostic? Tell(Instruction instruction, int found, string player, int turn, ulong seed)
    {
        if (turn == 0 || instruction.At is not { } at || !_steps.Remove(at, out Step? step))
        {
            return null;
        }

        (Look look, string from) = (((Term.LookOf)step.Terms[1]).Look, Prose.Fold(step.Terms[2].Origin.At.Text));
        long wanted = step.Terms[0] is Term.Constant constant ? constant.Which.Amount : ((Term.Number)step.Terms[0]).Amount;
        string many = $"{Many(look)} in {from}";
        return CourseProblems.NotThere(
            at, Prose.Fold(at.Text), found, player, turn, seed,
            wanted == 1 ? $"any({many})" : $"count({many}) is at least {wanted}", wanted == 1 ? $"{Prose.A(look.Words)} in {from}" : null);
    }

    private static string Many(Look look) =>
        look.Kind is { } kind && look.Words.EndsWith(kind.Name, StringComparison.OrdinalIgnoreCase) ? look.Words[..^kind.Name.Length] + kind.Plural : look.Words;

    private static bool IsDecided(Sheet sheet, ActionFacts action) =>
        action.Choices.Any(c => c.Amount != ChoiceAmount.Given)
        || ((sheet.Tree.Find("actions")?.Value as OutlineMapping)?.Find(action.Action.Name)?.Value as OutlineMapping)?.Find("phrase") is not null;
}
