namespace Rostrum.Testing.Slips;

/// <summary>The draws that make one slip: a function of the seed, the slip's number and how many draws were made, so that each slip can be made by itself.</summary>
/// <remarks>The mixing function of SplitMix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators"), used as a counter-based generator.</remarks>
/// <param name="seed">The same for a whole measure.</param>
/// <param name="number">The slip's number.</param>
internal sealed class SlipDraws(ulong seed, int number)
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    private ulong _count;

    /// <summary>A number from 0 up to and without a bound.</summary>
    /// <param name="bound">At least 1, and far below 2^32, so that the remainder's bias does not matter.</param>
    public int Below(int bound)
    {
        unchecked
        {
            _count++;
            return (int)(Mix(Mix(seed + (Golden * (ulong)(number + 1))) + (Golden * _count)) % (ulong)bound);
        }
    }

    /// <summary>One of a list.</summary>
    public T Of<T>(IReadOnlyList<T> list) => list[Below(list.Count)];

    private static ulong Mix(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
