using Rostrum.Sheets.Model;

namespace Rostrum.Play.Checking;

/// <summary>What steps can change, with the actions that they call: whatever might happen counts.</summary>
internal sealed class Writes(Sheet sheet)
{
    private readonly HashSet<ActionName> _called = [];
    private bool _cards;

    /// <summary>The marks that are set.</summary>
    public HashSet<Mark> Marks { get; } = [];

    /// <summary>The frame positions that get a value.</summary>
    public HashSet<int> Slots { get; } = [];

    /// <summary>True where things move or change.</summary>
    public bool Things { get; private set; }

    /// <summary>True where something is done that a formula could ask for later.</summary>
    public bool Record { get; private set; }

    /// <summary>True where the turn or the game may end in these steps.</summary>
    public bool MayEnd { get; private set; }

    /// <summary>What these steps can change.</summary>
    public static Writes Of(Sheet sheet, IEnumerable<Step> steps)
    {
        var writes = new Writes(sheet) { MayEnd = sheet.Ends.Any(e => e.Moment is EndMoment.AfterEachAction or EndMoment.BeforeBlock or EndMoment.AfterBlock) };
        writes.Add(steps);
        return writes;
    }

    /// <summary>True where something that a formula hangs on can change.</summary>
    public bool Change(Reads reads) =>
        (Things && reads.Things) || (Record && reads.Record) || Marks.Overlaps(reads.Marks) || Slots.Overlaps(reads.Slots);

    private void Add(IEnumerable<Step> steps)
    {
        foreach (Step step in steps)
        {
            Add(step);
        }
    }

    private void Add(Step step)
    {
        switch (step.Kind)
        {
            case StepKind.Call:
                Record = true;
                AddAction(step.Action!);
                break;
            case StepKind.Swap when step.Terms[0].Sort.Kind == SortKind.Player:
                Things = true;
                Marks.UnionWith(sheet.Marks);
                break;
            case StepKind.Move or StepKind.Change or StepKind.Shuffle or StepKind.Roll or StepKind.Swap or StepKind.Push:
                Things = true;
                break;
            case StepKind.Deal:
                Things = true;
                AddActions(sheet.Places.Select(p => p.WhenShort).OfType<ActionName>());
                break;
            case StepKind.Set or StepKind.Add or StepKind.Take:
                AddMark(step.Terms[0]);
                break;
            case StepKind.EndTurn or StepKind.EndGame:
                MayEnd = true;
                break;
            case StepKind.Do:
                AddCards();
                break;
            case StepKind.TakeTurns:
                Record = true;
                MayEnd |= !sheet.Ends.IsEmpty;
                break;
            case StepKind.InAnyOrder or StepKind.May:
                AddActions(sheet.Actions.Where(a => a.Joins is not null).Select(a => a.Action));
                break;
        }

        Slots.Add(step.Slot);
        Add(step.Inner.Concat(step.Otherwise));
    }

    // Which card it is, is known only at play: whatever stands on one counts.
    private void AddCards()
    {
        if (!_cards)
        {
            _cards = true;
            Add(sheet.CardSteps.SelectMany(s => s));
        }
    }

    private void AddMark(Term changed)
    {
        if (changed is Term.MarkOf mark)
        {
            Marks.Add(mark.Mark);
        }
        else
        {
            Record = true;
        }
    }

    private void AddActions(IEnumerable<ActionName> actions)
    {
        foreach (ActionName action in actions)
        {
            AddAction(action);
        }
    }

    // An action with what hangs on it: hooks, marks that last until its end, prices of powers.
    private void AddAction(ActionName action)
    {
        if (!_called.Add(action))
        {
            return;
        }

        Add(sheet.Actions[action.Index].Steps);
        Add(sheet.Hooks.Where(h => ReferenceEquals(h.Action, action)).SelectMany(h => h.Steps));
        Add(sheet.Powers.SelectMany(p => p.Price));
        Marks.UnionWith(sheet.MarkFacts.Where(f => f.Lasts == action.Name).Select(f => f.Mark));
    }
}
