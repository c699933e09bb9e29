using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading;

/// <summary>Binds words from outside a sheet, such as a question on the command line or a claim of a lesson, in the sheet's own names.</summary>
public static class OutsideFormula
{
    /// <summary>The formula with its frame size; null where something is wrong, which is reported.</summary>
    /// <param name="sheet">Gives the names.</param>
    /// <param name="words">The formula, where it stands.</param>
    /// <param name="wanted">The sort that is wanted; <see cref="Sort.Any"/> for any.</param>
    /// <param name="problems">Where messages go.</param>
    public static (Term Term, int FrameSize)? Bind(Sheet sheet, FormulaText words, Sort wanted, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var own = new DiagnosticBag();
        var scope = new Scope();
        Syntax syntax = new FormulaParser(words, sheet.Names, own).ReadAll();
        var binder = new Binder(sheet.Scope, scope, own, []);
        Term? term = syntax is Syntax.Broken ? null : wanted.Kind switch
        {
            SortKind.Any => binder.Bind(syntax),
            SortKind.Truth => binder.BindTruth(syntax),
            _ => binder.Expect(syntax, wanted),
        };
        problems.AddRange(own.InOrder());
        return term is null || own.HasErrors ? null : (term, scope.FrameSize);
    }

    /// <summary>The look that words tell, such as <c>copper jug</c>; null where something is wrong, which is reported.</summary>
    public static Look? Look(Sheet sheet, FormulaText words, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new FormulaParser(words, sheet.Names, problems).ReadAllAsLook() is Syntax.Looks looks ? new Binder(sheet.Scope, new Scope(), problems, []).BindLook(looks) : null;
    }
}
