using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>Choices of several: every set that may be chosen.</content>
internal sealed partial class OptionFinder
{
    /// <summary>How many sets of things to choose are tried at the most.</summary>
    public const int MostSets = 100_000;

    private int _sets;

    /// <summary>Adds an option for each set of a loop that is left, those that look alike once: the position of the set, and the set.</summary>
    public bool Collect(NextSetAlternative next, List<Option> into)
    {
        var seen = new HashSet<string>();
        int[][] left = next.Kept.Left(machine.State);
        for (int i = 0; i < left.Length; i++)
        {
            if (next.Sort != SortKind.Thing || seen.Add(string.Join(' ', left[i].Select(Likeness).Order())))
            {
                into.Add(new Option(next, [i], [left[i]]));
            }
        }

        return left.Length > 0;
    }

    private bool TrySets(Search search, int at, ChoicePlan choice, int[] domain)
    {
        (int fewest, int most) = choice.Facts.Amount switch
        {
            ChoiceAmount.Exactly => ((int)choice.Facts.Number, (int)choice.Facts.Number),
            ChoiceAmount.UpTo => (0, (int)choice.Facts.Number),
            ChoiceAmount.Some => (1, domain.Length),
            _ => (0, domain.Length),
        };
        _sets = 0;
        bool isThing = choice.Facts.From.Sort.Element?.Kind == SortKind.Thing;
        var seen = isThing ? new HashSet<string>() : null;
        foreach (int[] set in Subsets.Of(domain, fewest, Math.Min(most, domain.Length)))
        {
            if (++_sets > MostSets)
            {
                throw new NotPlayableException($"There are more than {MostSets:N0} ways to choose '{choice.Facts.Words}'.", choice.Facts.At);
            }

            if (seen is not null && !seen.Add(string.Join(' ', set.Select(Likeness).Order())))
            {
                continue;
            }

            Elements list = machine.Run.Rent();
            list.AddRange(set);
            machine.Run.Letters[choice.Letter] = machine.Run.Keep(list);
            if (Try(search, at + 1))
            {
                return true;
            }
        }

        return false;
    }
}
