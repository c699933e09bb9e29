using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Text;
using Rostrum.Text.Mending;

namespace Rostrum.Rulings.Games;

/// <summary>Everything that is wrong with a position: each cause once, what merely follows from it left out.</summary>
/// <param name="Problems">What is wrong with the file, and what its author expects and does not come out.</param>
/// <param name="OfSheet">What is wrong with the sheet as the position asks for it.</param>
/// <param name="Expectations">How many expectations were asked; 0 where nothing can be asked.</param>
/// <param name="Unmet">How many of them are not met.</param>
public sealed record PositionCheck(ImmutableArray<Diagnostic> Problems, ImmutableArray<SheetProblem> OfSheet, int Expectations, int Unmet)
{
    private const int MostReadings = 40;
    private const int MostCharacters = 400_000;

    private static readonly OutlineGuesses Guesses = new(PositionDialect.Outline);

    /// <summary>Checks a position.</summary>
    /// <param name="game">The game; its sheets are read once.</param>
    /// <param name="text">The position's file.</param>
    public static PositionCheck Of(Game game, SourceText text)
    {
        ArgumentNullException.ThrowIfNull(game);
        PositionCheck found = Look(game, text);
        // What a warning is about stands; nothing follows from it.
        if (found.Problems.Count(p => p.Severity == Severity.Error) <= found.Unmet)
        {
            return found;
        }

        var trial = new TrialMending(t => All(Look(game, t[0])), Guesses.About, Guesses.Keeps, Math.Clamp(MostCharacters / (text.Content.Length + 1), 1, MostReadings));
        return found with { Problems = Echoes.Fold(trial.CausesOf(found.Problems)) };
    }

    private static ImmutableArray<Diagnostic> All(PositionCheck found) => [.. found.OfSheet.Select(p => p.Problem), .. found.Problems];

    private static PositionCheck Look(Game game, SourceText text)
    {
        OpenedPosition opened = game.Open(text);
        ImmutableArray<Diagnostic> unmet = opened.Position is { } position ? ExpectationCheck.Of(position, opened.File!.Expectations) : [];
        (ImmutableArray<Diagnostic> asked, ImmutableArray<SheetProblem> ofSheet) = OfVariants(text, opened);
        return new PositionCheck([.. asked, .. opened.Problems, .. unmet], ofSheet, opened.Position is null ? 0 : opened.File!.Expectations.Length, unmet.Length);
    }

    // A variant that the sheet does not offer is the position's mistake: it is shown where the position asks for it.
    private static (ImmutableArray<Diagnostic> Own, ImmutableArray<SheetProblem> OfSheet) OfVariants(SourceText text, OpenedPosition opened)
    {
        ImmutableArray<string> asked = opened.File?.Variants ?? [];
        string[] unknown = [.. asked.Except((opened.Sheet.Sheet?.Variants ?? []).Select(v => v.Name))];
        SourceSpan at = opened.File?.Tree.Find("variants")?.Value.Span ?? text.Span(0, 0);
        ILookup<bool, Diagnostic> own = opened.Sheet.Problems.ToLookup(p => p.At.Length == 0 && unknown.Any(a => p.Message.Contains($"'{a}'", StringComparison.Ordinal)));
        return ([.. own[true].Select(p => p with { At = at, Fix = null })], [.. own[false].Select(p => new SheetProblem(p, asked))]);
    }
}
