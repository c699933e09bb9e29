namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The connected parts of some elements, each in order, by their first element.</summary>
/// <param name="through">The elements.</param>
/// <param name="join">Which belong together.</param>
/// <param name="letter">The letter of an element, for the value in which they must be alike.</param>
/// <param name="alike">That value; null where nothing more is asked.</param>
/// <param name="likeness">When two such values are the same.</param>
/// <param name="spots">How many spots the table has.</param>
internal sealed class GroupsNode(ManyNode through, JoinTest join, int letter, Node? alike, Likeness likeness, int spots) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int start = into.Count;
        Elements? room = through.Room(run);
        ReadOnlySpan<int> elements = through.Span(run, room);
        Elements parts = run.Rent();
        int count = Part(run, elements, parts);
        for (int i = 0; i < count; i++)
        {
            into.Add(run.Keep(run.Rent()));
        }

        for (int i = 0; i < elements.Length; i++)
        {
            run.List(into[start + parts[i]]).Add(elements[i]);
        }

        run.Return(parts);
        Leave(run, room);
    }

    /// <inheritdoc />
    public override int Count(Run run)
    {
        Elements? room = through.Room(run);
        Elements parts = run.Rent();
        int count = Part(run, through.Span(run, room), parts);
        run.Return(parts);
        Leave(run, room);
        return count;
    }

    /// <inheritdoc />
    public override bool Any(Run run) => through.Any(run);

    /// <summary>The size of the largest part.</summary>
    public int Largest(Run run)
    {
        int mark = run.Mark;
        Elements groups = run.Rent();
        Fill(run, groups);
        int most = 0;
        foreach (int group in groups.Span)
        {
            most = Math.Max(most, run.List(group).Count);
        }

        run.Return(groups);
        run.Release(mark);
        return most;
    }

    // Gives each element the number of its part; how many parts there are.
    private int Part(Run run, ReadOnlySpan<int> elements, Elements parts)
    {
        Elements values = run.Rent();
        Elements places = run.Rent();
        Elements waiting = run.Rent();
        foreach (int element in elements)
        {
            parts.Add(-1);
            if (alike is not null)
            {
                run.Letters[letter] = element;
                values.Add(alike.Value(run));
            }
        }

        bool isMapped = join.Near is not null && Map(elements, places);
        int count = 0;
        for (int i = 0; i < elements.Length; i++)
        {
            if (parts[i] < 0)
            {
                parts[i] = count++;
                waiting.Add(i);
                Flood(run, elements, parts, values, isMapped ? places : null, waiting);
            }
        }

        run.Return(waiting);
        run.Return(places);
        run.Return(values);
        return count;
    }

    private void Flood(Run run, ReadOnlySpan<int> elements, Elements parts, Elements values, Elements? places, Elements waiting)
    {
        while (waiting.Count > 0)
        {
            int at = waiting[waiting.Count - 1];
            waiting.Cut(waiting.Count - 1);
            if (places is null)
            {
                for (int j = 0; j < elements.Length; j++)
                {
                    Reach(run, elements, parts, values, waiting, at, j, join.AreNear(elements[at], elements[j]));
                }

                continue;
            }

            foreach (int near in join.Near![elements[at]])
            {
                Reach(run, elements, parts, values, waiting, at, places[near], places[near] >= 0);
            }
        }
    }

    private void Reach(Run run, ReadOnlySpan<int> elements, Elements parts, Elements values, Elements waiting, int from, int to, bool isNear)
    {
        if (isNear && parts[to] < 0 && AreAlike(run, values, from, to) && join.JoinsNear(run, elements[from], elements[to]))
        {
            parts[to] = parts[from];
            waiting.Add(to);
        }
    }

    private bool AreAlike(Run run, Elements values, int one, int other) =>
        alike is null || (values[one] != Nothing && values[other] != Nothing && likeness.AreSame(run, values[one], values[other]));

    // By spot, which element it is; false where an element is no spot or is there twice.
    private bool Map(ReadOnlySpan<int> elements, Elements places)
    {
        places.Fill(-1, spots);
        for (int i = 0; i < elements.Length; i++)
        {
            if (elements[i] < 0 || elements[i] >= spots || places[elements[i]] >= 0)
            {
                return false;
            }

            places[elements[i]] = i;
        }

        return true;
    }
}
