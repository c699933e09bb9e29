using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Claims;

/// <summary>Checks <c>value:FORMULA</c>: a formula that needs no position, such as <c>worth of Commission 12</c>.</summary>
internal static class ValueClaims
{
    public static CheckedClaim Of(SheetReading reading, LessonRun.Claim claim, ClaimTarget.Value target)
    {
        if (!reading.IsSound || reading.Sheet is not { } sheet)
        {
            return ClaimCheck.Unasked(claim, LessonProblems.Unknown(claim.TargetAt, "sound sheet for", target.Formula, []));
        }

        var problems = new DiagnosticBag();
        if (OutsideFormula.Bind(sheet, FormulaText.Of(target.Formula, "target"), Sort.Number, problems) is not { } bound)
        {
            Diagnostic first = problems.InOrder()[0];
            return ClaimCheck.Unasked(claim, first with { At = claim.TargetAt, Fix = null });
        }

        NumberAnswer answer = NumberAnswer.Of(Position.Blank(sheet, "no position", 1), bound.Term, bound.FrameSize);
        if (answer.Points.Certain is not { } number || answer.IsOpen)
        {
            string why = answer.IsOpen ? "readings disagree" : answer.Points.InWords;
            return new CheckedClaim(claim, ClaimStatus.Unsettled, null, LessonProblems.UnsettledClaim(claim.At, claim.Words, why));
        }

        Citation? cite = CiteOf(sheet, bound.Term);
        return ClaimCheck.Numbers(claim, number, new ClaimAnswer.OfValue(number, cite, target.Formula) { Table = (bound.Term as Term.LookUp)?.Table.Name }, $"It stands on {Citation.Tell(cite)}.");
    }

    private static Citation? CiteOf(Sheet sheet, Term term) => term switch
    {
        Term.LookUp look => sheet.Tables[look.Table.Index].Cite,
        Term.CardCell { Subject: Term.CardNamed named } => sheet.Cards(named.Card.Kind).Rows[named.Card.Index].Cite ?? sheet.KindOf(named.Card.Kind).Cite,
        Term.Call call => sheet.Meanings[call.Word.Index].Cite,
        _ => null,
    };
}
