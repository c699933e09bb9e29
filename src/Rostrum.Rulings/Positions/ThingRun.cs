using System.Collections.Immutable;

namespace Rostrum.Rulings.Positions;

/// <summary>Equal things that follow each other.</summary>
/// <param name="Thing">Each of them.</param>
/// <param name="Count">How many; at least 1.</param>
internal readonly record struct ThingRun(Thing Thing, int Count)
{
    /// <summary>Some things as runs, in order.</summary>
    public static ImmutableArray<ThingRun> Of(ImmutableArray<Thing> things)
    {
        var runs = ImmutableArray.CreateBuilder<ThingRun>();
        foreach (Thing thing in things)
        {
            if (runs.Count > 0 && runs[^1].Thing.Equals(thing))
            {
                runs[^1] = runs[^1] with { Count = runs[^1].Count + 1 };
            }
            else
            {
                runs.Add(new ThingRun(thing, 1));
            }
        }

        return runs.ToImmutable();
    }
}
