using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Mending;

namespace Rostrum.Rulings.Games;

/// <summary>Everything that is wrong with a sheet, its variants one by one included: each cause once, what merely follows from it left out.</summary>
/// <param name="game">The game.</param>
/// <param name="also">What else is wrong with a sound sheet, such as how its pieces look.</param>
public sealed class SheetCheck(Game game, Func<Sheet, IEnumerable<Diagnostic>> also)
{
    // Readings of one sheet that are made to find out which problem follows from which; fewer of a long one or of one with wide boards.
    private const int MostReadings = 48;
    private const int MostCharacters = 400_000;

    // Variants whose problems are looked at again after each mend.
    private const int MostVariants = 3;

    /// <summary>The problems, each with the variants that bring it out; errors before warnings.</summary>
    /// <param name="sets">The sets of variants with which the sheet is read, in order; the base game comes first by itself.</param>
    /// <param name="stop">Asked between two readings.</param>
    public ImmutableArray<SheetProblem> Of(IEnumerable<ImmutableArray<string>> sets, CancellationToken stop = default)
    {
        ImmutableArray<string>[] every = [[], .. sets];
        ImmutableArray<SheetProblem> all = Once(every.AsParallel().AsOrdered().WithCancellation(stop).SelectMany(s => Problems(game, s).Select(p => new SheetProblem(p, s))));
        if (!all.Any(p => MayHaveEchoes(p.Problem)) || game.Folder.Read(SheetReader.FileName).Text is null)
        {
            return all;
        }

        ImmutableArray<string>[] again = [.. all.Select(p => p.Variants).DistinctBy(v => string.Join('\n', v)).Take(MostVariants)];
        int readings = ReadingCost.Readings(game, MostCharacters, MostReadings);
        var guesses = new SheetGuesses(game);
        var trial = new TrialMending(mended => [.. Look(mended, again)], guesses.About, guesses.Keeps, Math.Max(1, readings / again.Length));
        int doubts = Math.Max(1, readings / every.Length);
        IEnumerable<Diagnostic> causes = Echoes.Fold(trial.CausesOf([.. all.Select(p => p.Problem)]))
            .Select(c => MayBreak(c, every) && doubts-- > 0 ? Doubted(c, all, every) : c).Select(StandsInPosition);
        return [.. causes.Select(c => new SheetProblem(c, all.FirstOrDefault(p => p.Problem.At == c.At)?.Variants ?? all[0].Variants))];
    }

    // What a warning is about stands, and nothing follows from it; but for a key that a sentence swallowed.
    private static bool MayHaveEchoes(Diagnostic problem) => problem.Severity == Severity.Error || problem.Id == "ROS0119";

    private static bool MayBreak(Diagnostic cause, ImmutableArray<string>[] every) => cause.Fix is { Grade: FixGrade.Safe } && every.Length > 1;

    // A fix may hold for the base game and break a variant that bears the other name.
    private Diagnostic Doubted(Diagnostic cause, ImmutableArray<SheetProblem> all, ImmutableArray<string>[] every)
    {
        Fix fix = cause.Fix!;
        SourceText source = fix.Edits[0].At.Source;
        HashSet<(string, string)> known = [.. all.Select(p => (p.Problem.Id, p.Problem.Message))];
        IEnumerable<Diagnostic> left = Look([new SourceText(source.Name, TextEdit.Apply(source.Content, fix.Edits))], every);
        return left.All(p => known.Contains((p.Id, p.Message))) ? cause : cause with { Fix = fix with { Grade = FixGrade.Choice } };
    }

    // A word that positions use too is most likely the right one, and what it would be replaced by is misspelt where it is declared.
    private Diagnostic StandsInPosition(Diagnostic cause) =>
        cause.Fix is { Grade: FixGrade.Safe, Edits: [{ At: var at, NewText.Length: > 1 }, ..] } fix && at.Length > 1 && at.Text.All(c => char.IsLetter(c) || c is ' ' or '-' or '\'')
            && game.PositionNames.Any(p => game.Folder.Read($"positions/{p}.yaml").Text is { } text && Holds(text.Content, at.Text))
            ? cause with { Fix = fix with { Grade = FixGrade.Choice } }
            : cause;

    private static bool Holds(string content, string words)
    {
        for (int i = content.IndexOf(words, StringComparison.OrdinalIgnoreCase); i >= 0; i = content.IndexOf(words, i + 1, StringComparison.OrdinalIgnoreCase))
        {
            if ((i == 0 || !char.IsLetter(content[i - 1])) && (i + words.Length == content.Length || !char.IsLetter(content[i + words.Length])))
            {
                return true;
            }
        }

        return false;
    }

    private IEnumerable<Diagnostic> Look(ImmutableArray<SourceText> mended, ImmutableArray<string>[] sets)
    {
        Game trial = mended.Aggregate(game, (g, file) => g.With(file));
        return Once(sets.SelectMany(s => Problems(trial, s).Select(p => new SheetProblem(p, s)))).Select(p => p.Problem);
    }

    private IEnumerable<Diagnostic> Problems(Game read, ImmutableArray<string> variants)
    {
        SheetReading reading = read.Sheet(variants);
        return reading.IsSound ? reading.Problems.Concat(also(reading.Sheet!)) : reading.Problems;
    }

    private static ImmutableArray<SheetProblem> Once(IEnumerable<SheetProblem> problems) =>
        [.. problems.DistinctBy(p => (p.Problem.Id, p.Problem.At.Source.Name, p.Problem.At.Start, p.Problem.At.Length, p.Problem.Message)).OrderByDescending(p => p.Problem.Severity)];
}

/// <summary>A problem of a sheet.</summary>
/// <param name="Problem">What is wrong.</param>
/// <param name="Variants">The variants with which it comes out; empty for the base game.</param>
public sealed record SheetProblem(Diagnostic Problem, ImmutableArray<string> Variants);
