using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Course;

/// <content>What fits the choices of an action, with the laws that refuse it.</content>
internal sealed partial class OptionFinder
{
    /// <summary>Every candidate of a call that is wanted, legal or not.</summary>
    /// <param name="call">The call.</param>
    /// <param name="wanted">Which candidates are weighed; the others cost little.</param>
    public List<Candidate> Candidates(CallAlternative call, Func<Option, bool> wanted)
    {
        var found = new List<Candidate>();
        Try(new Search(call, [], OnlyOne: false) { Candidates = found, Wanted = wanted }, 0);
        return found;
    }

    private void Weigh(Search search, List<Candidate> candidates)
    {
        Option option = Made(search);
        if (!search.Wanted!(option))
        {
            return;
        }

        List<LawPlan> broken = [.. search.Action.Laws.Where(l => !IsKeptBefore(l))];
        bool isImpossible = false;
        if (search.Action.IsTried)
        {
            broken = Tried(search, option, broken, out isImpossible);
        }

        candidates.Add(new Candidate(option, [.. search.Action.Laws.Where(broken.Contains)], isImpossible));
    }

    // Steps that a law forbids may lead nowhere; then nothing is asked of what they leave.
    private List<LawPlan> Tried(Search search, Option option, List<LawPlan> broken, out bool isImpossible)
    {
        Run run = machine.Run;
        (TableState state, int me, int mark) = (run.State, run.Me, run.Mark);
        try
        {
            return _trial.Breaks(search.Call, option, [.. broken], out isImpossible) ?? [];
        }
        catch (NotPlayableException) when (broken.Count > 0)
        {
            (run.State, run.Me) = (state, me);
            run.Release(mark);
            isImpossible = false;
            return broken;
        }
    }
}

/// <summary>Something that fits the choices of an action, whether or not it is legal.</summary>
/// <param name="Option">What is chosen.</param>
/// <param name="Broken">The laws that refuse it, in the order of the sheet.</param>
/// <param name="IsOverfull">True where it would lay more on a spot than it may hold.</param>
internal sealed record Candidate(Option Option, ImmutableArray<LawPlan> Broken, bool IsOverfull);
