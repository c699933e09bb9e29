using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>Finds steps that never end: actions in a circle, loops that nothing stops, a game without an end.</summary>
internal static class CourseCheck
{
    /// <summary>Actions that are steps of each other, each circle once.</summary>
    public static IEnumerable<Diagnostic> Circles(Sheet sheet)
    {
        var told = new HashSet<ActionName>();
        foreach (ActionFacts action in sheet.Actions)
        {
            if (!told.Contains(action.Action) && Circle(sheet, action.Action) is { } circle)
            {
                told.UnionWith(circle);
                yield return CourseProblems.ActionsInCircle(action.Action.DeclaredAt!.Value, [.. circle.Select(a => a.Name)]);
            }
        }
    }

    /// <summary>Loops that nothing stops, and turns without an end of the game.</summary>
    public static IEnumerable<Diagnostic> Endless(Sheet sheet)
    {
        foreach (Step loop in sheet.AllSteps.Where(s => s.Kind == StepKind.Repeat && s.Terms[0] is Term.Nothing))
        {
            if (Loop(sheet, loop) is { } problem)
            {
                yield return problem;
            }
        }

        bool goesByTurns = sheet.Blocks.All(b => b.Name != "course");
        if (goesByTurns && sheet.Ends.All(e => e.If is null) && sheet.AllSteps.All(s => s.Kind != StepKind.EndGame))
        {
            yield return CourseProblems.GameWithoutEnd(sheet.Tree.Find("turn")?.Key.Span ?? sheet.Tree.Span);
        }
    }

    // Terms: times, until, while.
    private static Diagnostic? Loop(Sheet sheet, Step loop)
    {
        var writes = Writes.Of(sheet, loop.Inner);
        if (writes.MayEnd)
        {
            return null;
        }

        Term? condition = loop.Terms.Skip(1).FirstOrDefault(t => t is not Term.Nothing);
        return condition is null ? CourseProblems.LoopWithoutEnd(loop.At)
            : writes.Change(Reads.Of(sheet, condition)) ? null
            : CourseProblems.LoopNeverChanges(condition.Origin.At, Prose.Fold(condition.Origin.At.Text));
    }

    // The actions on a way from an action back to itself, the shortest; null where there is none.
    private static List<ActionName>? Circle(Sheet sheet, ActionName start)
    {
        var before = new Dictionary<ActionName, ActionName>();
        var waiting = new Queue<ActionName>([start]);
        while (waiting.TryDequeue(out ActionName? action))
        {
            foreach (ActionName called in Called(sheet, action))
            {
                if (ReferenceEquals(called, start))
                {
                    return Way(before, start, action);
                }

                if (before.TryAdd(called, action))
                {
                    waiting.Enqueue(called);
                }
            }
        }

        return null;
    }

    private static List<ActionName> Way(Dictionary<ActionName, ActionName> before, ActionName start, ActionName last)
    {
        var way = new List<ActionName> { last };
        while (!ReferenceEquals(way[0], start))
        {
            way.Insert(0, before[way[0]]);
        }

        return way;
    }

    private static IEnumerable<ActionName> Called(Sheet sheet, ActionName action) =>
        sheet.Actions[action.Index].Steps.Concat(sheet.Hooks.Where(h => ReferenceEquals(h.Action, action)).SelectMany(h => h.Steps))
            .SelectMany(s => s.All).Select(s => s.Action).OfType<ActionName>();
}
