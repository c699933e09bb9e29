using Rostrum.Play.Chance;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>What the making of one sheet draws: equal for equal seed and number, so that each sheet can be made by itself.</summary>
/// <param name="seed">The same for a whole run.</param>
/// <param name="number">The number of the sheet in the run.</param>
/// <param name="stream">What is drawn for.</param>
internal sealed class Picks(ulong seed, int number, uint stream)
{
    private readonly Draws _draws = new(seed, (ulong)number, stream);

    /// <summary>A number from 0 to one less than a bound.</summary>
    public int Below(int bound) => (int)_draws.Below((uint)bound);

    /// <summary>A number between two, both included.</summary>
    public int From(int lowest, int highest) => lowest + Below(highest - lowest + 1);

    /// <summary>True so many times in a hundred.</summary>
    public bool Percent(int percent) => Below(100) < percent;

    /// <summary>One of several.</summary>
    public T Of<T>(params IReadOnlyList<T> all) => all[Below(all.Count)];

    /// <summary>One of several; null where there is none.</summary>
    public T? OrNone<T>(IEnumerable<T> all)
        where T : class => all.ToArray() is { Length: > 0 } some ? Of(some) : null;

    /// <summary>Some of several in their order, so many at the most.</summary>
    public IReadOnlyList<T> Some<T>(IEnumerable<T> all, int most)
    {
        List<T> left = [.. all];
        while (left.Count > most)
        {
            left.RemoveAt(Below(left.Count));
        }

        return left;
    }
}
