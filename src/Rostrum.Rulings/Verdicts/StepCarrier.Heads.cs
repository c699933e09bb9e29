using System.Collections.Immutable;
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

    // The steps of a card have names of their own; things that they move are followed in the names outside, too.
    private bool DoCard(Step step)
    {
        if (step.Terms[0] is not Term.CardCell cell)
        {
            return false;
        }

        Value subject = Evaluator.Evaluate(cell.Subject, frame);
        Card? card = subject is Value.CardIs named ? named.Card : (subject as Value.ThingAt)?.Thing.Card;
        if (card is null || !ReferenceEquals(card.Kind, cell.Column.Kind))
        {
            return subject is Value.Nothing || (card is not null && !ReferenceEquals(card.Kind, cell.Column.Kind)) || Unknown(subject.WhyUnknown);
        }

        CardRow row = _position.Sheet.Cards(card.Kind).Rows[card.Index];
        Term said = row.Cells[cell.Column.Index];
        said = said is Term.Fork fork ? fork.Alternatives[Read(fork.Choice)] : said;
        return said is not Term.Text text ? said is Term.Nothing : WithFrame(Evaluation.Evaluator.Frame(row.FrameSize), text.Steps);
    }

    private int Read(Choice choice)
    {
        touched.Add(choice.Id);
        return setting.Of(choice);
    }

    private bool WithFrame(Value[] own, ImmutableArray<Step> steps)
    {
        Value[] outer = frame;
        _elements.Push(outer);
        frame = own;
        bool isDone = All(steps);
        frame = outer;
        _elements.Pop();
        return isDone;
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
