using Rostrum.Play.Formulas.Nodes;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Words of the sheet, cells of cards, tables.</content>
internal sealed partial class FormulaCompiler
{
    private readonly Dictionary<Word, Said> _words = [];

    /// <summary>A word made ready: its subjects go into these letters, then its meaning is asked.</summary>
    private sealed record Said(int[] Letters, Node Body);

    // Words never contain themselves, so each has its letters for itself.
    private Said SaidOf(Word word)
    {
        if (!_words.TryGetValue(word, out Said? said))
        {
            FrameMap frame = Frame();
            int[] subjects = [.. word.Subjects.Select((s, slot) => frame.Letter(slot, s.Sort))];
            _words[word] = said = new Said(subjects, Compile(Sheet.Meanings[word.Index].Body, frame));
        }

        return said;
    }

    private Node Call(Term.Call call, FrameMap frame)
    {
        Said said = SaidOf(call.Word);
        Node[] subjects = [.. call.Subjects.Select((s, i) => Of(s, call.Word.Subjects[i].Sort, frame))];
        if (said.Body is ManyNode many)
        {
            return subjects.Length == 0 ? many : new ManyCall(subjects, said.Letters, many);
        }

        bool keeps = call.Word.Subjects.Any(s => s.Sort.IsMany);
        return subjects.Length switch
        {
            0 => said.Body,
            1 when !keeps => new CallOfOne(subjects[0], said.Letters[0], said.Body),
            2 when !keeps => new CallOfTwo(subjects[0], subjects[1], said.Letters[0], said.Letters[1], said.Body),
            _ => new CallNode(subjects, said.Letters, said.Body),
        };
    }

    private Node Cell(Term.CardCell cell, FrameMap frame)
    {
        Node subject = Compile(cell.Subject, frame);
        Node?[] byClass = [.. layout.Classes.Select(c => c.Card is { } card && ReferenceEquals(card.Kind, cell.Column.Kind) ? CellOf(card, cell.Column) : null)];
        if (cell.Sort.IsMany)
        {
            return new ManyCell(subject, [.. byClass.Select(c => c as ManyNode)]);
        }

        return byClass.All(c => c is null or Constant)
            ? new ClassNode(subject, [.. byClass.Select(c => c is Constant constant ? constant.Amount : Node.Nothing)])
            : new CellNode(subject, byClass);
    }

    private readonly Dictionary<(Card, Column), Node> _cells = [];

    private Node CellOf(Card card, Column column)
    {
        if (!_cells.TryGetValue((card, column), out Node? cell))
        {
            Term term = Sheet.Cards(card.Kind).Rows[card.Index].Cells[column.Index];
            _cells[(card, column)] = cell = Of(term, column.Sort, Frame());
        }

        return cell;
    }

    private Node LookUp(Term.LookUp term, FrameMap frame)
    {
        Node key = Compile(term.Key, frame);
        TableFacts facts = Sheet.Tables[term.Table.Index];
        TableVersion version = facts.Versions[facts.Choice is null ? 0 : readings(facts.Choice)];
        var rows = new TableRows(version, e => Of(e, term.Sort, Frame()));
        return term.Key.Sort.Kind == SortKind.Value
            ? new ChosenEntry(key, [.. layout.Values.All.Select(rows.OfValue)])
            : rows.IsDense ? rows.Dense(key) : new RowNode(key, rows);
    }
}
