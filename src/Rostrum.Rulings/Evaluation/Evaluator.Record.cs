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
        ? Found(record.Last(last.Action, last.Choice, last.Mine ? me : null))
        : new Value.Unknown(GameRecord.NotGiven);

    // The steps of an action may have moved a thing from where the record has it; then nobody says here which one it is.
    private Value Found(Value chosen) => chosen switch
    {
        Value.ThingAt { Spot.Kind: SpotKind.Space or SpotKind.Slot } at when !Lies(at) => new Value.Unknown(Blame.Of(GapKind.NotYet, "where the thing of before lies afterwards")),
        Value.Many many when many.Members.Any(m => Found(m.Value) is Value.Unknown) => Found(many.Members.First(m => Found(m.Value) is Value.Unknown).Value),
        _ => Proposal.Again(chosen, position),
    };

    private bool Lies(Value.ThingAt at)
    {
        Stack there = at.Spot.In(position);
        return at.Index >= 0 && at.Index < there.Things.Length && there.Things[at.Index] is var thing && ReferenceEquals(thing.Kind, at.Thing.Kind) && ReferenceEquals(thing.Card, at.Thing.Card)
            && at.Thing.Values.Zip(thing.Values).All(v => v.First is null || v.First == v.Second);
    }

    private static Value.Truth Known(Kleene holds, Blame why) => holds == Kleene.Unknown ? Value.Maybe(why) : Value.Of(holds == Kleene.Yes);
}
