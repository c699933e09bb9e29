using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>What a player can do.</content>
internal sealed partial class Evaluator
{
    private Value CanDo(Term.CanDo can, Value[] frame)
    {
        if (_index.AsksItself(can.Action))
        {
            return new Value.Unknown(Blame.Of(GapKind.ByPlay, $"whether '{can.Action.Phrase.InWords}' can be done"));
        }

        return Evaluate(can.Player, frame) switch
        {
            Value.PlayerAt player when player.Seat < position.Seats =>
                new ActionSearch(position, player.Seat, can.Action, [.. can.Given.Select(g => Evaluate(g, frame))], setting, touched).Exists(),
            Value.Unknown unknown => unknown,
            _ => Value.No,
        };
    }
}
