namespace Rostrum.Play.Chance;

/// <summary>The counter-based generator Philox4x32-10: the words at a counter are a pure function of key and counter, so that work can be split anyhow.</summary>
/// <remarks>J. Salmon, M. Moraes, R. Dror, D. Shaw, "Parallel Random Numbers: As Easy as 1, 2, 3", SC11, 2011. Wrap-around is meant.</remarks>
internal static class Philox
{
    private const int Rounds = 10;
    private const uint First = 0xD2511F53;
    private const uint Second = 0xCD9E8D57;
    private const uint FirstStep = 0x9E3779B9;
    private const uint SecondStep = 0xBB67AE85;

    /// <summary>The four words at a counter.</summary>
    /// <param name="counter">Four words.</param>
    /// <param name="key">Two words in one: the lower half is the first.</param>
    public static (uint A, uint B, uint C, uint D) At((uint A, uint B, uint C, uint D) counter, ulong key)
    {
        unchecked
        {
            (uint a, uint b, uint c, uint d) = counter;
            (uint one, uint two) = ((uint)key, (uint)(key >> 32));
            for (int round = 0; round < Rounds; round++)
            {
                ulong left = (ulong)First * a;
                ulong right = (ulong)Second * c;
                (a, b, c, d) = ((uint)(right >> 32) ^ b ^ one, (uint)right, (uint)(left >> 32) ^ d ^ two, (uint)left);
                one += FirstStep;
                two += SecondStep;
            }

            return (a, b, c, d);
        }
    }
}
