using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <content>Inside an idiom, what a clause picks among several words settles some conditions: only the part that is meant stays, so that nobody is told
/// that 1 is 1.</content>
internal sealed partial class Binder
{
    private Term BindLogic(Syntax.Logic logic)
    {
        ImmutableArray<Term> operands = [.. logic.Operands.Select(BindTruth)];
        if (operands.FirstOrDefault(o => Settled(o) == !logic.IsAnd) is { } deciding)
        {
            return deciding;
        }

        ImmutableArray<Term> open = [.. operands.Where(o => Settled(o) is null)];
        return open switch
        {
            [] => operands[0],
            [var only] when operands.Length > 1 => only,
            _ => Operation(logic.IsAnd ? Op.And : Op.Or, Sort.Truth, logic, [.. open]),
        };
    }

    // The words of a clause are numbers in the meaning of its idiom.
    private bool? Settled(Term truth) => through.IsDefaultOrEmpty ? null : truth switch
    {
        Term.Apply { Operation.Id: Op.Same, Arguments: [Term.Number one, Term.Number other] } => one.Amount == other.Amount,
        _ => null,
    };
}
