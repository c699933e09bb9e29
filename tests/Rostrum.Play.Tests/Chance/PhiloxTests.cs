using Rostrum.Play.Chance;

namespace Rostrum.Play.Tests.Chance;

/// <summary>The generator gives the published words.</summary>
/// <remarks>The three known answers of philox4x32 with ten rounds in Random123, tests/kat_vectors, commit 9545ff64, copyright 2010-2012 D. E. Shaw Research,
/// BSD 3-clause; J. Salmon and others, "Parallel Random Numbers: As Easy as 1, 2, 3", SC11, 2011.</remarks>
public sealed class PhiloxTests
{
    [Theory]
    [InlineData(0x00000000, 0x00000000, 0x00000000, 0x00000000, 0x00000000, 0x00000000, 0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8)]
    [InlineData(0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff, 0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd)]
    [InlineData(0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344, 0xa4093822, 0x299f31d0, 0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1)]
    public void Words_are_the_published_ones(uint a, uint b, uint c, uint d, uint firstKey, uint secondKey, uint w, uint x, uint y, uint z) =>
        Assert.Equal((w, x, y, z), Philox.At((a, b, c, d), ((ulong)secondKey << 32) | firstKey));
}
