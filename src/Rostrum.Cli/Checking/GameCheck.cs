using System.Collections.Immutable;
using Rostrum.Lessons;
using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Cli.Checking;

/// <summary>Reads everything in a game's folder and holds positions and lesson against the sheet.</summary>
/// <param name="game">The game.</param>
/// <param name="stop">Asked between two files.</param>
internal sealed class GameCheck(Game game, CancellationToken stop)
{
    // Each takes a reading of the whole sheet, which holds all of them.
    private const int MostVariants = 100;

    private readonly ProblemList _problems = new();
    private int _expectations;
    private int _held;

    /// <summary>Checks a game.</summary>
    /// <param name="idiomProblems">What is wrong with the idiom library.</param>
    /// <param name="variants">Variants that are to be checked together as well; each is checked by itself anyway.</param>
    /// <remarks>The sheet is read in its base form, then with each single variant; a position with its own variants. A problem that several readings share is told once.</remarks>
    public CheckResult Check(ImmutableArray<Diagnostic> idiomProblems, ImmutableArray<string> variants)
    {
        SheetReading basis = game.Sheet();
        _problems.Add(AllOf(basis));
        Task<LessonReport?> lesson = Task.Run(() => basis.IsSound ? LessonCheck.Of(game) : null, stop);
        ImmutableArray<VariantFacts> offered = basis.Sheet?.Variants ?? [];
        IEnumerable<ImmutableArray<string>> sets = offered.Take(MostVariants).Select(v => ImmutableArray.Create(v.Name)).Append(variants);
        foreach ((ImmutableArray<string> set, Diagnostic[] problems) in sets.Where(s => !s.IsEmpty).AsParallel().AsOrdered().WithCancellation(stop)
            .Select(s => (s, AllOf(game.Sheet(s)).ToArray())))
        {
            _problems.Add(problems, p => CheckProblems.With(set, p));
        }

        Positions(basis.IsSound);
        _problems.Add(lesson.GetAwaiter().GetResult()?.Problems ?? []);
        _problems.Add(idiomProblems);
        return new CheckResult(basis.Sheet?.Game ?? game.Folder.Name, _problems.All, game.PositionNames.Length, _expectations, _held, basis.IsSound) { VariantsLeft = Math.Max(0, offered.Length - MostVariants) };
    }

    // Positions are read and asked on every core, and told in their order.
    private void Positions(bool isSheetSound)
    {
        foreach (CheckedPosition position in game.PositionNames.AsParallel().AsOrdered().WithCancellation(stop).Select(n => Look(n, isSheetSound)))
        {
            _problems.Add(position.OfSheet, p => position.Told(p));
            _problems.Add(position.Own);
            _problems.Add(position.Unmet);
            _expectations += position.Expectations;
            _held += position.Expectations - position.Unmet.Length;
        }
    }

    private static IEnumerable<Diagnostic> AllOf(SheetReading reading) =>
        reading.IsSound ? reading.Problems.Concat(AppearanceCheck.Of(reading.Sheet!)) : reading.Problems;

    private CheckedPosition Look(string name, bool isSheetSound)
    {
        FolderReading reading = game.PositionText(name);
        if (reading.Text is not { } text)
        {
            return CheckedPosition.Of([CheckProblems.UnreadablePosition($"positions/{name}.yaml", reading.Refusal)]);
        }

        if (!isSheetSound)
        {
            // Its names would be measured against a sheet with holes: only what is wrong by itself is told.
            var outline = new DiagnosticBag();
            PositionReader.VariantsOf(text, outline);
            return CheckedPosition.Of(outline.InOrder());
        }

        OpenedPosition opened = game.Open(text);
        CheckedPosition read = CheckedPosition.Of(opened.Problems) with { OfSheet = opened.Sheet.Problems, Told = p => Told(text, opened, p) };
        return opened.Position is { } position
            ? read with { Expectations = opened.File!.Expectations.Length, Unmet = ExpectationCheck.Of(position, opened.File.Expectations) }
            : read;
    }

    // A variant that the sheet does not offer is the position's mistake: it is shown where the position asks for it.
    private static Diagnostic Told(SourceText text, OpenedPosition opened, Diagnostic problem)
    {
        IEnumerable<string> offered = (opened.Sheet.Sheet?.Variants ?? []).Select(v => v.Name);
        ImmutableArray<string> asked = opened.File?.Variants ?? [];
        SourceSpan at = opened.File?.Tree.Find("variants")?.Value.Span ?? text.Span(0, 0);
        return problem.At.Length == 0 && asked.Except(offered).Any(a => problem.Message.Contains($"'{a}'", StringComparison.Ordinal))
            ? problem with { At = at, Fix = null }
            : CheckProblems.With(asked, problem);
    }

    /// <summary>What came of one position.</summary>
    /// <param name="Own">What is wrong with its file.</param>
    private sealed record CheckedPosition(ImmutableArray<Diagnostic> Own)
    {
        public ImmutableArray<Diagnostic> OfSheet { get; init; } = [];

        public Func<Diagnostic, Diagnostic> Told { get; init; } = p => p;

        public int Expectations { get; init; }

        public ImmutableArray<Diagnostic> Unmet { get; init; } = [];

        public static CheckedPosition Of(ImmutableArray<Diagnostic> own) => new(own);
    }
}
