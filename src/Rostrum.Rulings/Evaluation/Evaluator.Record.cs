using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>What was done before, where the position has a record of the game.</content>
internal sealed partial class Evaluator
{
    private Value.Truth Done(Term.Done done, Value[] frame)
    {
        if (position.Record is not { } record)
        {
            return Value.Maybe(GameRecord.NotGiven);
        }

        if (done.By is null)
        {
            return Known(record.Was(done.Action, done.When, null), GameRecord.NotGiven);
        }

        return Evaluate(done.By, frame) switch
        {
            Value.PlayerAt player => Known(record.Was(done.Action, done.When, player.Seat), GameRecord.NotGiven),
            Value.Unknown unknown when record.Was(done.Action, done.When, null) != Kleene.No => Value.Maybe(unknown.Blame),
            _ => Value.No,
        };
    }

    private Value Last(Term.LastChoice last) => position.Record is { } record
        ? Proposal.Again(record.Last(last.Action, last.Choice, last.Mine ? me : null), position)
        : new Value.Unknown(GameRecord.NotGiven);

    private static Value.Truth Known(Kleene holds, Blame why) => holds == Kleene.Unknown ? Value.Maybe(why) : Value.Of(holds == Kleene.Yes);
}
