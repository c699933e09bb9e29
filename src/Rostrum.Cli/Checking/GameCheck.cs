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
        ImmutableArray<VariantFacts> offered = basis.Sheet?.Variants ?? [];
        IEnumerable<ImmutableArray<string>> sets = offered.Take(MostVariants).Select(v => ImmutableArray.Create(v.Name)).Append(variants);
        foreach ((ImmutableArray<string> set, Diagnostic[] problems) in sets.Where(s => !s.IsEmpty).AsParallel().AsOrdered().WithCancellation(stop)
            .Select(s => (s, AllOf(game.Sheet(s)).ToArray())))
        {
            _problems.Add(problems, p => CheckProblems.With(set, p));
        }

        Positions(basis.IsSound);

        _problems.Add(basis.IsSound && LessonCheck.Of(game) is { } lesson ? lesson.Problems : []);
        _problems.Add(idiomProblems);
        return new CheckResult(basis.Sheet?.Game ?? game.Folder.Name, _problems.All, game.PositionNames.Length, _expectations, _held, basis.IsSound) { VariantsLeft = Math.Max(0, offered.Length - MostVariants) };
    }

    // Reading shares the game's sheets and goes one by one; what positions expect is asked on every core, and told in their order.
    private void Positions(bool isSheetSound)
    {
        var opened = new List<OpenedPosition>();
        foreach (string name in game.PositionNames)
        {
            stop.ThrowIfCancellationRequested();
            if (Open(name, isSheetSound) is { Position: not null } position)
            {
                opened.Add(position);
            }
        }

        foreach (ImmutableArray<Diagnostic> unmet in opened.AsParallel().AsOrdered().WithCancellation(stop).Select(o => ExpectationCheck.Of(o.Position!, o.File!.Expectations)))
        {
            _held -= unmet.Length;
            _problems.Add(unmet);
        }

        _expectations = opened.Sum(o => o.File!.Expectations.Length);
        _held += _expectations;
    }

    private static IEnumerable<Diagnostic> AllOf(SheetReading reading) =>
        reading.IsSound ? reading.Problems.Concat(AppearanceCheck.Of(reading.Sheet!)) : reading.Problems;

    private OpenedPosition? Open(string name, bool isSheetSound)
    {
        FolderReading reading = game.PositionText(name);
        if (reading.Text is not { } text)
        {
            _problems.Add([CheckProblems.UnreadablePosition($"positions/{name}.yaml", reading.Refusal)]);
            return null;
        }

        if (!isSheetSound)
        {
            // Its names would be measured against a sheet with holes: only what is wrong by itself is told.
            var outline = new DiagnosticBag();
            PositionReader.VariantsOf(text, outline);
            _problems.Add(outline.InOrder());
            return null;
        }

        OpenedPosition opened = game.Open(text);
        AddSheetProblems(text, opened);
        _problems.Add(opened.Problems);
        return opened;
    }

    // A variant that the sheet does not offer is the position's mistake: it is shown where the position asks for it.
    private void AddSheetProblems(SourceText text, OpenedPosition opened)
    {
        ImmutableArray<string> offered = [.. (opened.Sheet.Sheet?.Variants ?? []).Select(v => v.Name)];
        ImmutableArray<string> asked = opened.File?.Variants ?? [];
        SourceSpan at = opened.File?.Tree.Find("variants")?.Value.Span ?? text.Span(0, 0);
        _problems.Add(opened.Sheet.Problems, p => asked.Any(a => !offered.Contains(a) && p.Message.Contains($"'{a}'", StringComparison.Ordinal)) && p.At.Length == 0
            ? p with { At = at, Fix = null }
            : CheckProblems.With(asked, p));
    }
}
