using System.Collections.Immutable;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>What breaks laws that powers lift.</content>
internal sealed partial class OptionFinder
{
    private void AddWithPowers(Search search, Option option, List<LawPlan> broken)
    {
        PowerPlan[] atHand = [.. search.Action.Powers.Where(machine.IsAtHand)];
        Law[] laws = [.. broken.Select(l => l.Law)];
        foreach (int[] set in Subsets.Of([.. Enumerable.Range(0, atHand.Length)], 1, Math.Min(atHand.Length, laws.Length)))
        {
            ImmutableArray<PowerPlan> powers = [.. set.Select(i => atHand[i])];
            if (Lifting.IsJustEnough(laws, [.. powers.Select(p => p.Power)]) && (powers.Length == 1 || _trial.CanPay(search.Call, option, powers)))
            {
                search.Into.Add(option with { Powers = powers });
            }
        }
    }
}
