using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Steps;

/// <summary>The words with which steps begin: the one list for reading, suggestions and the check of phrases.</summary>
internal static class StepWords
{
    /// <summary>Steps that stand alone, longest words first.</summary>
    public static ImmutableArray<(string Words, StepKind Kind)> Verbs { get; } =
    [
        ("end the game by", StepKind.EndGame), ("end turn", StepKind.EndTurn), ("move", StepKind.Move), ("deal", StepKind.Deal), ("change", StepKind.Change),
        ("flip", StepKind.Change), ("shuffle", StepKind.Shuffle), ("roll", StepKind.Roll), ("swap", StepKind.Swap), ("push", StepKind.Push),
        ("show", StepKind.Show), ("set", StepKind.Set), ("add", StepKind.Add), ("take", StepKind.Take), ("let", StepKind.Let), ("do", StepKind.Do),
        ("again", StepKind.Again), ("nothing", StepKind.Nothing),
    ];

    /// <summary>Heads of steps that hold other steps, longest words first.</summary>
    public static ImmutableArray<(string Words, StepKind Kind)> Heads { get; } =
    [
        ("first possible of", StepKind.FirstPossible), ("each other player", StepKind.EachPlayer), ("all at once", StepKind.AllAtOnce), ("in any order", StepKind.InAnyOrder),
        ("each player", StepKind.EachPlayer), ("take turns", StepKind.TakeTurns), ("for each", StepKind.ForEach), ("one of", StepKind.OneOf),
        ("otherwise", StepKind.If), ("repeat", StepKind.Repeat), ("must", StepKind.Must), ("may", StepKind.May), ("if", StepKind.If),
    ];

    /// <summary>Every beginning of a step.</summary>
    public static IEnumerable<string> All => Verbs.Concat(Heads).Select(w => w.Words);

    // What an action is often called that has the name of a step, and a word like it that no step begins with.
    private static readonly (string Step, string Like)[] Alike =
    [
        ("move", "walk"), ("deal", "hand out"), ("change", "exchange"), ("flip", "tip over"), ("shuffle", "mix"), ("roll", "throw"), ("swap", "trade places"),
        ("push", "shove"), ("show", "reveal"), ("set", "place"), ("add", "put on"), ("take", "pick up"), ("again", "once more"), ("nothing", "pass"), ("end turn", "stop"),
        ("repeat", "redo"),
    ];

    /// <summary>The beginning of a step that a name is; null where it is none.</summary>
    public static string? Named(string name) => All.FirstOrDefault(w => string.Equals(w, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Another name for an action that is called like a step; null where none comes to mind, or it is taken.</summary>
    /// <param name="step">The beginning of a step.</param>
    /// <param name="taken">The names of the sheet's actions.</param>
    public static string? Instead(string step, IEnumerable<string> taken) => Alike.FirstOrDefault(a => a.Step == step).Like is { } like && !taken.Contains(like) ? like : null;
}
