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
}
