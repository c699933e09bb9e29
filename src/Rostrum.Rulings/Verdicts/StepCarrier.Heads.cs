using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <content>Steps with steps below them.</content>
internal sealed partial class StepCarrier
{
    private bool If(Step step)
    {
        Value.Truth holds = Evaluator.Ask(step.Terms[0], frame);
        return holds.Is == Kleene.Unknown ? Unknown(holds.Blame) : All(holds.Is == Kleene.Yes ? step.Inner : step.Otherwise);
    }

    // What is gone through is fixed before the first of it; things that move on the way are followed.
    private bool ForEach(Step step)
    {
        var pick = new Pick(step.Slot, "", step.Terms[0], step.Terms[1] is Term.Nothing ? null : step.Terms[1], Sort.Any);
        Value.Many through = Evaluator.Through(pick, frame);
        bool isChosen = step.Terms[3] is Term.Truth { IsYes: true } && through.Members.Length > 1;
        if (!through.IsCertain || isChosen)
        {
            return Unknown(through.WhyUnknown);
        }

        Value[] elements = [.. through.Members.Select(m => m.Value)];
        if (step.Terms[2] is not Term.Nothing)
        {
            long?[] order = [.. elements.Select(e => Evaluator.With(pick, e, frame, step.Terms[2], Evaluator.Evaluate) is Value.Number { IsKnown: true } number ? number.Low : null)];
            if (order.Contains(null))
            {
                return false;
            }

            Array.Sort(order, elements);
        }

        _elements.Push(elements);
        bool isDone = true;
        for (int i = 0; i < elements.Length && isDone; i++)
        {
            frame[step.Slot] = elements[i];
            isDone = All(step.Inner);
        }

        _elements.Pop();
        return isDone;
    }
}
