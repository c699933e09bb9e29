namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The elements for which a truth holds; counted and found without a list.</summary>
internal sealed class FilteredNode(ManyNode domain, int letter, Node where) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            if (where.Holds(run))
            {
                into.Add(element);
            }
        }

        Leave(run, room);
    }

    /// <inheritdoc />
    public override int Count(Run run)
    {
        int count = 0;
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            count += where.Holds(run) ? 1 : 0;
        }

        Leave(run, room);
        return count;
    }

    /// <inheritdoc />
    public override bool Any(Run run)
    {
        bool isAny = false;
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            if (where.Holds(run))
            {
                isAny = true;
                break;
            }
        }

        Leave(run, room);
        return isAny;
    }
}

/// <summary>How many there are.</summary>
internal sealed class CountNode(ManyNode many) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int count = many.Count(run);
        run.Release(mark);
        return count;
    }
}

/// <summary>Whether there is any.</summary>
internal sealed class AnyNode(ManyNode many, bool wanted) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        bool isAny = many.Any(run);
        run.Release(mark);
        return isAny == wanted ? 1 : 0;
    }
}

/// <summary>The numbers of all of them added up; nothing is skipped.</summary>
internal sealed class SumNode(ManyNode domain, int letter, Node? where, Node each) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int sum = 0;
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            if (where is null || where.Holds(run))
            {
                sum += each.Value(run) is var number && number == Nothing ? 0 : number;
            }
        }

        ManyNode.Leave(run, room);
        run.Release(mark);
        return sum;
    }
}

/// <summary>The greatest or least of the numbers; 0 where there are none.</summary>
internal sealed class ExtremeNode(ManyNode domain, int letter, Node? where, Node each, bool isLargest) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int best = Nothing;
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            if ((where is null || where.Holds(run)) && each.Value(run) is var number && number != Nothing
                && (best == Nothing || (isLargest ? number > best : number < best)))
            {
                best = number;
            }
        }

        ManyNode.Leave(run, room);
        run.Release(mark);
        return best == Nothing ? 0 : best;
    }
}

/// <summary>How many different values they have; nothing is skipped.</summary>
internal sealed class DifferentNode(ManyNode domain, int letter, Node? where, Node each, Likeness likeness) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        Elements seen = run.Rent();
        Elements? room = domain.Room(run);
        foreach (int element in domain.Span(run, room))
        {
            run.Letters[letter] = element;
            if ((where is null || where.Holds(run)) && each.Value(run) is var value && value != Nothing && !likeness.IsIn(run, value, seen.Span))
            {
                seen.Add(value);
            }
        }

        int count = seen.Count;
        ManyNode.Leave(run, room);
        run.Return(seen);
        run.Release(mark);
        return count;
    }
}
