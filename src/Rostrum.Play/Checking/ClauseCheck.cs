using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>Finds clauses that clash or never hold: laws against each other, ends and powers that never come, cards that nobody can meet.</summary>
internal static class ClauseCheck
{
    /// <summary>Two laws that ask the opposite of each other for one action, where nothing lifts one of them.</summary>
    public static IEnumerable<Diagnostic> Laws(Sheet sheet)
    {
        foreach (ActionFacts action in sheet.Actions)
        {
            Asked[] asked = [.. sheet.Laws.SelectMany(l => Demands(sheet, l, action.Action))];
            foreach ((Asked one, int at) in asked.Select((a, i) => (a, i)))
            {
                if (asked.Take(at).FirstOrDefault(a => a.Words == one.Words && a.IsAfter == one.IsAfter && a.Wanted != one.Wanted) is { } other)
                {
                    yield return CourseProblems.LawsContradict(one.At, action.Action.Name, one.Law, other.Law, other.At);
                }
            }
        }
    }

    /// <summary>Ends, powers and steps under a condition that can never hold.</summary>
    public static IEnumerable<Diagnostic> Conditions(Sheet sheet, Bounds bounds)
    {
        IEnumerable<(string Owner, Term? If)> conditions = sheet.Ends.Where(e => e.Choice is null).Select(e => ($"the end '{e.Name}'", e.If))
            .Concat(sheet.Powers.Select(p => ($"the power '{p.Name}'", p.If)))
            .Concat(sheet.AllSteps.Where(s => s.Kind == StepKind.If).Select(s => ("this", (Term?)s.Terms[0])));
        return from condition in conditions
               where condition.If is not null
               let why = bounds.WhyNever(condition.If)
               where why is not null
               select CourseProblems.NeverHolds(condition.If.Origin.At, condition.Owner, why);
    }

    /// <summary>Cards that ask for more than there is.</summary>
    public static IEnumerable<Diagnostic> Cards(Sheet sheet, Bounds bounds) =>
        from table in sheet.CardTables
        from row in table.Rows
        from cell in row.Cells
        let why = cell is Term.Drawn drawn ? WhyNever(sheet, bounds, drawn.Drawing) : cell.Sort.Kind == SortKind.Truth ? bounds.WhyNever(cell) : null
        where why is not null
        select CourseProblems.CardNeverMet(cell.Origin.At, row.Card.Name, why);

    private static string? WhyNever(Sheet sheet, Bounds bounds, Drawing drawing)
    {
        if (!sheet.Boards.IsEmpty && sheet.Boards.All(b => b.Spaces.Length < drawing.Cells.Length))
        {
            return $"it draws {Prose.Count(drawing.Cells.Length, "space", "spaces")}, and no board has so many";
        }

        return drawing.Cells.Where(c => c.Asks is { SpotNoun: null }).GroupBy(c => c.Asks!.Words)
            .Where(g => g.Count() > bounds.Things(g.First().Asks!))
            .Select(g => $"it draws '{Prose.Clip(g.Key)}' {Prose.Count(g.Count(), "time", "times")}, and there are only {bounds.Things(g.First().Asks!)}").FirstOrDefault();
    }

    private static IEnumerable<Asked> Demands(Sheet sheet, Law law, ActionName action)
    {
        bool isLifted = sheet.Powers.Any(p => p.Lifts.IsEmpty || p.Lifts.Contains(law.Name));
        int at = law.Binds.IndexOf(action);
        if (law.Choice is not null || isLifted || at < 0 || law.Bodies[0][at] is not { Unless: null, Idiom: null } body)
        {
            return [];
        }

        return body.Demands.Select(d => new Asked(
            law.Name, Prose.Fold(d.Truth.Origin.At.Text), d.Kind is DemandKind.MustLeave or DemandKind.MustNotLeave, d.Kind is DemandKind.Needs or DemandKind.MustLeave, d.Truth.Origin.At));
    }

    private sealed record Asked(string Law, string Words, bool IsAfter, bool Wanted, SourceSpan At);
}
