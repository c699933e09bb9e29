using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>Steps that stand on cards.</content>
internal sealed partial class CourseCompiler
{
    // Which card it is decides which steps follow; each card's are laid out once for each step that does them.
    private void EmitDo(Step step, FrameMap frame)
    {
        if (step.Terms[0] is not Term.CardCell cell)
        {
            throw new NotPlayableException($"'{step.Sentence}' names no column of cards.", step.At);
        }

        int card = Number(isThing: true);
        (var done, var ofCard) = (new Label(), new Label?[_layout.Classes.Length]);
        Add(new SetLocal(Compile(cell.Subject, frame), card, false, At(step)));
        Add(new GoToOfCard(card, ofCard, done));
        foreach (CardRow row in RowsOf(cell))
        {
            Label begin = new();
            foreach (int of in _layout.Classes.Where(c => ReferenceEquals(c.Card, row.Card)).Select(c => c.Number))
            {
                ofCard[of] = begin;
            }

            Mark(begin);
            Emit(StepsOf(row.Cells[cell.Column.Index], row), _formulas.Frame());
            Add(new GoTo(done));
        }

        Mark(done);
        ForgetAll([card], []);
    }

    private IEnumerable<CardRow> RowsOf(Term.CardCell cell)
    {
        ImmutableArray<CardRow> all = _sheet.Cards(cell.Column.Kind).Rows;
        return cell.Subject is Term.CardNamed named ? all.Where(r => ReferenceEquals(r.Card, named.Card)) : all;
    }

    private ImmutableArray<Step> StepsOf(Term cell, CardRow row) => cell switch
    {
        Term.Text text => text.Steps,
        Term.Fork fork => StepsOf(fork.Alternatives[_readings(fork.Choice)], row),
        Term.NotModelled gap => throw new NotPlayableException($"What {row.Card.Name} does is not modelled, so the game cannot go on.", gap.Origin.Shown),
        _ => [],
    };
}

/// <summary>Goes on with the steps of a card.</summary>
/// <param name="card">The number slot of the card.</param>
/// <param name="ofCard">By class; null for one without steps.</param>
/// <param name="none">Where there is no card, or none with steps.</param>
internal sealed class GoToOfCard(int card, Label?[] ofCard, Label none) : Instruction(null)
{
    public override int Do(Machine machine, int here) =>
        machine.State.Numbers[card] is >= 0 and var thing && ofCard[machine.Plan.Layout.ClassOf[thing]] is { } begin ? begin.At : none.At;
}
