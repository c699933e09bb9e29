using System.Collections.Immutable;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>What is wrong with a sound sheet once its game is to be played: clauses that clash, never hold or never end; a sheet without a turn or course is left alone.</summary>
public static class PlayCheck
{
    /// <summary>The findings, all of them warnings; first those about what is written, then what a few games by chance brought out.</summary>
    /// <param name="sheet">A sheet without errors. With variants on, no games are played.</param>
    /// <remarks>The same for the same sheet; the work is bounded by counts.</remarks>
    public static ImmutableArray<Diagnostic> Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (sheet.Blocks.All(b => b.Name is not ("turn" or "course")))
        {
            return [];
        }

        ImmutableArray<Diagnostic> written = [.. CourseCheck.Circles(sheet), .. CourseCheck.Endless(sheet), .. ClauseCheck.Laws(sheet)];
        ImmutableArray<Diagnostic> unseen = [.. new SightCheck(sheet).All(), .. new TurnBeforeCheck(sheet).All()];
        return written.IsEmpty ? [.. unseen, .. Played(sheet)] : [.. written, .. unseen];
    }

    // What play brings out follows from clauses that clash, so nothing is played where some do.
    private static List<Diagnostic> Played(Sheet sheet)
    {
        var found = new List<Diagnostic>();
        try
        {
            var bounds = new Bounds(TableLayout.Of(sheet, sheet.MostPlayers ?? sheet.FewestPlayers ?? 1));
            found.AddRange(ClauseCheck.Conditions(sheet, bounds));
            found.AddRange(ClauseCheck.Cards(sheet, bounds));
            var table = GameTable.Of(sheet);
            if (sheet.VariantsOn.IsEmpty && found.Count == 0)
            {
                found.AddRange(TrialPlay.Of(table));
            }
        }
        catch (NotPlayableException why)
        {
            found.Add(GameTable.Problem(why, sheet) with { Severity = Severity.Warning });
        }

        return found;
    }
}
