namespace Rostrum.Play.Formulas.Nodes;

/// <summary>Those with the greatest or least number, in their order; such as have none are left out.</summary>
internal sealed class ChosenNode(ManyNode domain, int letter, Node each, bool isMost) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int start = into.Count;
        int best = Nothing;
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            int number = each.Value(run);
            if (number == Nothing || (best != Nothing && (isMost ? number < best : number > best)))
            {
                continue;
            }

            if (number != best)
            {
                into.Cut(start);
                best = number;
            }

            into.Add(element);
        }

        Leave(run, room);
    }
}

/// <summary>All that have a number, greatest first; equal ones keep their order.</summary>
internal sealed class RankedNode(ManyNode domain, int letter, Node each) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int start = into.Count;
        Elements numbers = run.Rent();
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            int number = each.Value(run);
            if (number != Nothing)
            {
                numbers.Add(number);
                into.Add(element);
                Settle(numbers.Items, into.Items[start..]);
            }
        }

        Leave(run, room);
        run.Return(numbers);
    }

    // The last one goes in front of all with a smaller number.
    private static void Settle(Span<int> numbers, Span<int> elements)
    {
        for (int i = numbers.Length - 1; i > 0 && numbers[i - 1] < numbers[i]; i--)
        {
            (numbers[i - 1], numbers[i]) = (numbers[i], numbers[i - 1]);
            (elements[i - 1], elements[i]) = (elements[i], elements[i - 1]);
        }
    }
}

/// <summary>Everything that is in the set of at least one of them, each once.</summary>
internal sealed class TogetherNode(ManyNode domain, int letter, Node? where, ManyNode each, Likeness likeness) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int start = into.Count;
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            if (where is null || where.Holds(run))
            {
                UnionNode.AddNew(run, each, into, start, likeness);
            }
        }

        Leave(run, room);
    }
}
