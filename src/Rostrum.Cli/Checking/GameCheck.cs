using System.Collections.Immutable;
using Rostrum.Lessons;
using Rostrum.Lessons.Published;
using Rostrum.Pictures.Positions;
using Rostrum.Play.Checking;
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
        Task<LessonReport?> lesson = Task.Run(() => basis.IsSound ? LessonCheck.Of(game) : null, stop);
        ImmutableArray<VariantFacts> offered = basis.Sheet?.Variants ?? [];
        IEnumerable<ImmutableArray<string>> sets = offered.Take(MostVariants).Select(v => ImmutableArray.Create(v.Name)).Append(variants);
        foreach (SheetProblem problem in new SheetCheck(game, s => AppearanceCheck.Of(s).Concat(PlayCheck.Of(s))).Of(sets.Where(s => !s.IsEmpty), stop))
        {
            _problems.Add([problem.Problem], Told(problem.Variants));
        }

        Positions(basis.IsSound);
        _problems.Add(lesson.GetAwaiter().GetResult()?.Problems ?? []);
        _problems.Add(Published());
        _problems.Add(idiomProblems);
        return new CheckResult(basis.Sheet?.Game ?? game.Folder.Name, _problems.All, game.PositionNames.Length, _expectations, _held, basis.IsSound) { VariantsLeft = Math.Max(0, offered.Length - MostVariants) };
    }

    // Only whether the file can be read: what the videos say is asked with --published.
    private ImmutableArray<Diagnostic> Published() => game.Folder.Read(PublishedFile.FileName) switch
    {
        { Text: { } text } => PublishedFile.Read(text).Problems,
        { Refusal: FolderRefusal.Missing } => [],
        var refused => [CheckProblems.Unreadable(PublishedFile.FileName, refused.Refusal)],
    };

    // Positions are read and asked on every core, and told in their order.
    private void Positions(bool isSheetSound)
    {
        foreach (PositionCheck position in game.PositionNames.AsParallel().AsOrdered().WithCancellation(stop).Select(n => Look(n, isSheetSound)))
        {
            foreach (SheetProblem problem in position.OfSheet)
            {
                _problems.Add([problem.Problem], Told(problem.Variants));
            }

            _problems.Add(position.Problems);
            _expectations += position.Expectations;
            _held += position.Expectations - position.Unmet;
        }
    }

    private static Func<Diagnostic, Diagnostic> Told(ImmutableArray<string> variants) => p => variants.IsEmpty ? p : CheckProblems.With(variants, p);

    private PositionCheck Look(string name, bool isSheetSound)
    {
        FolderReading reading = game.PositionText(name);
        if (reading.Text is not { } text)
        {
            return new PositionCheck([CheckProblems.Unreadable($"positions/{name}.yaml", reading.Refusal)], [], 0, 0);
        }

        if (isSheetSound)
        {
            return PositionCheck.Of(game, text);
        }

        // Its names would be measured against a sheet with holes: only what is wrong by itself is told.
        var outline = new DiagnosticBag();
        PositionReader.VariantsOf(text, outline);
        return new PositionCheck(outline.InOrder(), [], 0, 0);
    }
}
