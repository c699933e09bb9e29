using Rostrum.Sheets.Model;

namespace Rostrum.Play.Checking;

/// <summary>What a formula hangs on: marks, letters, things, and what was done. What is not known to hang on nothing hangs on things.</summary>
internal sealed class Reads(Sheet sheet)
{
    private readonly HashSet<Word> _words = [];

    /// <summary>The marks that it names.</summary>
    public HashSet<Mark> Marks { get; } = [];

    /// <summary>The frame positions of its letters.</summary>
    public HashSet<int> Slots { get; } = [];

    /// <summary>True where it asks what lies where, or how it looks.</summary>
    public bool Things { get; private set; }

    /// <summary>True where it asks what was done, what can be done, whose turn it is, which round it is.</summary>
    public bool Record { get; private set; }

    /// <summary>What a formula of the sheet hangs on.</summary>
    public static Reads Of(Sheet sheet, Term term)
    {
        var reads = new Reads(sheet);
        reads.Add(term);
        return reads;
    }

    private void Add(Term term)
    {
        switch (term)
        {
            case Term.MarkOf mark:
                Marks.Add(mark.Mark);
                break;
            case Term.Variable variable:
                Slots.Add(variable.Slot);
                break;
            case Term.Call call:
                AddWord(call.Word);
                break;
            case Term.Done or Term.CanDo or Term.LastChoice or Term.Counter or Term.StartPlayer or Term.NotYet or Term.NotModelled:
                Record = true;
                break;
            case Term.Number or Term.Truth or Term.Nothing or Term.Value or Term.Text or Term.Constant or Term.Me or Term.Seat or Term.If or Term.Listed or Term.Fork or Term.Idiomatic or Term.DirectionNamed:
                break;
            case Term.Apply { Operation.Id: Op.And or Op.Or or Op.Not or Op.Same or Op.IsNothing or Op.AtLeast or Op.AtMost or Op.MoreThan or Op.LessThan or Op.Between or Op.Plus or Op.Minus or Op.Negative or Op.Times or Op.Difference }:
                break;
            default:
                Things = true;
                break;
        }

        foreach (Term part in TermParts.Of(term))
        {
            Add(part);
        }
    }

    private void AddWord(Word word)
    {
        if (_words.Add(word) && sheet.Meanings.FirstOrDefault(m => ReferenceEquals(m.Word, word)) is { } meaning)
        {
            Add(meaning.Body);
        }
    }
}
