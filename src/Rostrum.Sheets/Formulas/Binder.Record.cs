using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <content>What was done before, and what somebody can do.</content>
internal sealed partial class Binder
{
    private Term BindOfLast(Syntax.OfLast last)
    {
        ActionName action = last.Action.Senses.Select(s => s.Symbol).OfType<ActionName>().First();
        KnownChoices? known = declared.ChoicesOf(action);
        string[] names = known is null ? [.. action.Phrase.Parts.Where(p => p.IsGap).Select(p => p.Words)] : [.. known.Names];
        int choice = Array.FindIndex(names, n => string.Equals(n, last.Choice.Words, StringComparison.OrdinalIgnoreCase));
        if (choice < 0)
        {
            problems.Add(Placed(FormulaProblems.UnknownName(last.Choice.Span, last.Choice.Words, NearSpelling.Find(last.Choice.Words, names), action)));
            return Broken(last);
        }

        if (known is not null && known.SortOf(choice) is null)
        {
            problems.Add(Placed(FormulaProblems.ChoiceBySelf(last.Span, names[choice], action.Name)));
        }

        return new Term.LastChoice(action, choice, last.IsMine, known?.SortOf(choice) ?? Sort.Any, From(last));
    }

    private Term BindDone(Syntax.Done done)
    {
        Term? by = done.By is null ? null : Expect(done.By, Sort.Player);
        ActionName? action = done.Action.Words == "this action" ? scope.Action : done.Action.Senses.Select(s => s.Symbol).OfType<ActionName>().First();
        if (action is null)
        {
            problems.Add(Placed(FormulaProblems.NoThisAction(done.Action.Span)));
            return Broken(done, Sort.Truth);
        }

        Term was = new Term.Done(action, DoneTimes.Named(done.When) ?? DoneWhen.Before, by, From(done));
        return done.IsNegated ? Operation(Op.Not, Sort.Truth, done, was) : was;
    }

    private Term.CanDo BindCan(Syntax.Can can)
    {
        Term player = Expect(can.Subject, Sort.Player);
        string[] gaps = [.. can.Action.Phrase.Parts.Where(p => p.IsGap).Select(p => p.Words)];
        return new Term.CanDo(player, can.Action, [.. can.Given.Select((g, i) => BindGap(g, can.Action, gaps[i]))], From(can));
    }

    // What stands in a gap must be something that can be chosen there.
    private Term BindGap(Syntax given, ActionName action, string gap)
    {
        KnownChoices? known = declared.ChoicesOf(action);
        int choice = known?.Names.IndexOf(gap) ?? -1;
        return choice >= 0 && known!.SortOf(choice) is { Kind: not (SortKind.Look or SortKind.Any) } wanted ? Expect(given, wanted) : Bind(given);
    }
}
