using System.Collections.Immutable;

namespace Rostrum.Play.Chance;

/// <summary>A stream of random numbers for one purpose of one game. Equal for equal seed, game and stream, whoever draws and in how many threads.</summary>
/// <remarks>
/// Key: the seed. Counter: block number in the stream, game number (lower and upper half), stream. Layout version 1. Streams: 0 for what happens by chance on
/// the table, 1 and up for the choices of each seat. Not safe to share between threads.
/// </remarks>
/// <param name="seed">The seed that the user names.</param>
/// <param name="game">The number of the game in a batch, from 0.</param>
/// <param name="stream">What is drawn for.</param>
internal sealed class Draws(ulong seed, ulong game, uint stream)
{
    private readonly uint[] _words = new uint[4];
    private uint _block;
    private int _next = 4;

    /// <summary>A number from 0 to one less than the bound, each equally likely: multiplied and shifted, and what would be uneven drawn again.</summary>
    /// <remarks>D. Lemire, "Fast Random Integer Generation in an Interval", ACM TOMACS 29(1), 2019.</remarks>
    /// <param name="bound">At least 1.</param>
    public uint Below(uint bound)
    {
        unchecked
        {
            ulong product = (ulong)Word() * bound;
            uint uneven = (uint)-(int)bound % bound;
            while ((uint)product < uneven)
            {
                product = (ulong)Word() * bound;
            }

            return (uint)(product >> 32);
        }
    }

    /// <summary>An outcome, each as likely as its weight says.</summary>
    /// <param name="weights">At least one; their sum is below 2^62.</param>
    public int Weighted(ImmutableArray<long> weights)
    {
        long sum = 0;
        foreach (long weight in weights)
        {
            sum = checked(sum + weight);
        }

        long drawn = (long)Below((ulong)sum);
        int outcome = 0;
        while (drawn >= weights[outcome])
        {
            drawn -= weights[outcome++];
        }

        return outcome;
    }

    private ulong Below(ulong bound)
    {
        if (bound <= uint.MaxValue)
        {
            return Below((uint)bound);
        }

        // Whole multiples of the bound that fit into 64 bits; what lies beyond is drawn again.
        ulong fits = ulong.MaxValue - (ulong.MaxValue % bound);
        ulong drawn;
        do
        {
            drawn = ((ulong)Word() << 32) | Word();
        }
        while (drawn >= fits);
        return drawn % bound;
    }

    private uint Word()
    {
        if (_next == 4)
        {
            (_words[0], _words[1], _words[2], _words[3]) = Philox.At((_block++, (uint)game, (uint)(game >> 32), stream), seed);
            _next = 0;
        }

        return _words[_next++];
    }
}
