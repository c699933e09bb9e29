namespace Rostrum.Play.Formulas.Nodes;

/// <summary>A word said of one subject.</summary>
internal sealed class CallOfOne(Node subject, int letter, Node body) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        run.Letters[letter] = subject.Value(run);
        return body.Value(run);
    }
}

/// <summary>A word said of two subjects.</summary>
internal sealed class CallOfTwo(Node one, Node other, int letter, int otherLetter, Node body) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int first = one.Value(run);
        int second = other.Value(run);
        run.Letters[letter] = first;
        run.Letters[otherLetter] = second;
        return body.Value(run);
    }
}

/// <summary>A word said of any subjects, sets among them.</summary>
internal sealed class CallNode(Node[] subjects, int[] letters, Node body) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        Put(run, subjects, letters);
        int value = body.Value(run);
        run.Release(mark);
        return value;
    }

    /// <summary>Works all subjects out, then puts them into the letters, for a subject may say the same word.</summary>
    public static void Put(Run run, Node[] subjects, int[] letters)
    {
        Span<int> values = stackalloc int[subjects.Length];
        for (int i = 0; i < subjects.Length; i++)
        {
            values[i] = subjects[i].Value(run);
        }

        for (int i = 0; i < subjects.Length; i++)
        {
            run.Letters[letters[i]] = values[i];
        }
    }
}

/// <summary>A word that gives a set or list.</summary>
internal sealed class ManyCall(Node[] subjects, int[] letters, ManyNode body) : ManyNode
{
    /// <inheritdoc />
    public override bool NeedsRoom => body.NeedsRoom;

    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        CallNode.Put(run, subjects, letters);
        body.Fill(run, into);
    }

    /// <inheritdoc />
    public override ReadOnlySpan<int> Span(Run run, Elements? room)
    {
        CallNode.Put(run, subjects, letters);
        return body.Span(run, room);
    }
}
