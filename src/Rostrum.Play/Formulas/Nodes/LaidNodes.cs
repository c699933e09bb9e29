using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The things of a look in some spots, lowest first, where some may lie on several of the spots: each is one, where it is met first.</summary>
/// <param name="spots">Where they are looked for.</param>
/// <param name="look">Which ones; null for all.</param>
internal sealed class LaidThings(ManyNode spots, LookTest? look) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        TableState state = run.State;
        int start = into.Count;
        Elements? room = spots.Room(run);
        foreach (int spot in spots.Span(run, room))
        {
            for (int foot = spot < 0 ? TableState.None : state.Bottom(spot); foot != TableState.None; foot = state.Above(foot))
            {
                int thing = state.Layout.ThingOfFoot[foot];
                bool isMet = state.Layout.SecondFoot[thing] >= 0 && into.Span[start..].Contains(thing);
                if (!isMet && (look is null || look.Holds(run, thing)))
                {
                    into.Add(thing);
                }
            }
        }

        Leave(run, room);
    }
}

/// <summary>The spaces on which things lie, thing by thing; of a piece larger than a space each of them.</summary>
/// <param name="things">The things.</param>
/// <param name="spaceOfSpot">By spot: itself for a space of a board, nothing elsewhere.</param>
internal sealed class ThingSpaces(ManyNode things, int[] spaceOfSpot) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        TableState state = run.State;
        Elements? room = things.Room(run);
        foreach (int thing in things.Span(run, room))
        {
            for (int i = 0; thing >= 0 && i < state.Layout.Class(thing).Feet; i++)
            {
                int spot = state.Spot(state.Layout.Foot(thing, i));
                if (spot != TableState.None && spaceOfSpot[spot] != Nothing)
                {
                    into.Add(spot);
                }
            }
        }

        Leave(run, room);
    }
}

/// <summary>Yes where a thing lies on at least one of some spots.</summary>
internal sealed class LiesInNode(Node thing, ManyNode spots) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int of = thing.Value(run);
        if (of < 0)
        {
            return 0;
        }

        TableState state = run.State;
        Elements? room = spots.Room(run);
        bool isThere = false;
        foreach (int spot in spots.Span(run, room))
        {
            for (int i = 0; i < state.Layout.Class(of).Feet && !isThere; i++)
            {
                isThere = spot >= 0 && state.Spot(state.Layout.Foot(of, i)) == spot;
            }
        }

        ManyNode.Leave(run, room);
        return isThere ? 1 : 0;
    }
}
