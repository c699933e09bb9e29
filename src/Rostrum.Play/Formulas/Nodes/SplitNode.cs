using System.Collections.Immutable;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Evaluation;
using Rostrum.Text;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The greatest sum of worths over all ways to part elements into sets.</summary>
/// <param name="through">The elements.</param>
/// <param name="letter">The letter that stands for a set while its worth is asked.</param>
/// <param name="worth">What the set is worth.</param>
/// <param name="sorts">A letter for an element, then everything in which elements must agree to stand for each other; null where none can.</param>
/// <param name="at">Where the sheet asks for it.</param>
internal sealed class SplitNode(ManyNode through, int letter, Node worth, Node[]? sorts, SourceSpan at) : Node
{
    private const int MostSplit = 24;
    private const int MostSets = 200_000;

    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int[] elements = JoinedGraph.Elements(run, through);
        if (elements.Length > MostSplit)
        {
            throw new NotPlayableException($"The best split is not worked out above {MostSplit} things.", at);
        }

        Partition best = PartitionSearch.Best(Task(run, Sorted(run, elements)));
        run.Release(mark);
        return best.IsBest ? checked((int)(best.Worth ?? 0)) : throw new NotPlayableException($"The best split is not worked out above {PartitionSearch.MostSteps:N0} steps.", at);
    }

    private List<List<int>> Sorted(Run run, int[] elements)
    {
        var all = new List<List<int>>();
        foreach (int element in elements)
        {
            if (sorts is not null && all.Find(s => AreAlike(run, s[0], element)) is { } alike)
            {
                alike.Add(element);
            }
            else
            {
                all.Add([element]);
            }
        }

        return all;
    }

    private bool AreAlike(Run run, int one, int other)
    {
        int it = ((LetterNode)sorts![0]).At;
        foreach (Node sort in sorts.AsSpan(1))
        {
            run.Letters[it] = one;
            int value = sort.Value(run);
            run.Letters[it] = other;
            if (value != sort.Value(run))
            {
                return false;
            }
        }

        return true;
    }

    private PartitionTask Task(Run run, List<List<int>> all)
    {
        ImmutableArray<int> counts = [.. all.Select(s => s.Count)];
        if (counts.Aggregate(1L, (product, c) => Math.Min(product * (c + 1), int.MaxValue)) > MostSets)
        {
            throw new NotPlayableException($"The best split is not worked out above {MostSets:N0} different sets.", at);
        }

        var sets = ImmutableArray.CreateBuilder<WorthySet>();
        Form(run, all, new int[all.Count], 0, sets);
        return new PartitionTask(counts, [.. Enumerable.Repeat((long?)null, counts.Sum() + 1)], sets.ToImmutable());
    }

    private void Form(Run run, List<List<int>> all, int[] counts, int sort, ImmutableArray<WorthySet>.Builder sets)
    {
        if (sort == counts.Length)
        {
            if (counts.Any(c => c > 0))
            {
                sets.Add(new WorthySet([.. counts], Ask(run, all, counts)));
            }

            return;
        }

        for (counts[sort] = all[sort].Count; counts[sort] >= 0; counts[sort]--)
        {
            Form(run, all, counts, sort + 1, sets);
        }

        counts[sort] = 0;
    }

    private int Ask(Run run, List<List<int>> all, int[] counts)
    {
        int mark = run.Mark;
        Elements set = run.Rent();
        for (int sort = 0; sort < counts.Length; sort++)
        {
            for (int i = 0; i < counts[sort]; i++)
            {
                set.Add(all[sort][i]);
            }
        }

        run.Letters[letter] = run.Keep(set);
        int found = worth.Value(run);
        run.Release(mark);
        return found == Nothing ? 0 : found;
    }
}

/// <summary>Whether a thing has a look.</summary>
internal sealed class LookNode(Node thing, LookTest look) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => thing.Value(run) is var at && at != Nothing && look.Holds(run, at) ? 1 : 0;
}
