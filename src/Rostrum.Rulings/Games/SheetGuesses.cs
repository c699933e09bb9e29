using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Mending;

namespace Rostrum.Rulings.Games;

/// <summary>What may have slipped near a problem of a sheet: a name misspelt where it is declared, or a slip of the outline.</summary>
/// <param name="sheet">The sheet with its problems; null where it could not be read at all.</param>
internal sealed class SheetGuesses(Sheet? sheet)
{
    private readonly OutlineGuesses _outline = new(SheetDialect.Sheets);

    /// <summary>The guesses, likeliest first, each with a fix.</summary>
    public IEnumerable<Diagnostic> About(SourceText text, Diagnostic problem) => Declared(text, problem).Concat(_outline.About(text, problem));

    // A word that nothing bears, and a declared name near it: then the declaration may be what is misspelt.
    private IEnumerable<Diagnostic> Declared(SourceText text, Diagnostic problem)
    {
        string written = Prose.Fold(problem.At.Text);
        if (sheet is null || !problem.Id.StartsWith("ROS02", StringComparison.Ordinal) || written.Length is 0 or > 60)
        {
            yield break;
        }

        foreach (Named named in sheet.Names.All.Select(n => n.Symbol).Distinct())
        {
            if (named.DeclaredAt is { } at && at.Source.Name == text.Name && NearSpelling.Find(written, [named.Name]) is not null && text.Span(at.Start, at.Length).Text.Contains(named.Name, StringComparison.Ordinal))
            {
                yield return GameProblems.DeclaredOtherwise(text.Span(at.Start + text.Span(at.Start, at.Length).Text.IndexOf(named.Name, StringComparison.Ordinal), named.Name.Length), named.Name, written);
            }
        }
    }
}
