namespace Rostrum.Rulings.Evaluation;

/// <summary>How the pieces of a way stand at the open elements of a sweep: five bits for each place of the front, 25 places at the most.</summary>
/// <remarks>
/// Bits 5p to 5p+4 tell of the element at place p: 0 it is left out or the place is free; 1 the way goes through it; 2 it is on no join yet; 3 it is an end of a
/// piece whose other end can never be joined again; 4+q it is an end of a piece whose other end is at place q, 0 to 24. So 29 is never used, and 125 bits suffice.
/// </remarks>
/// <param name="Bits">The places.</param>
internal readonly record struct SweepState(UInt128 Bits)
{
    /// <summary>How many places there are.</summary>
    public const int MostPlaces = 25;

    /// <summary>Left out, or no element there.</summary>
    public const int Off = 0;

    /// <summary>The way goes through; no join may be added.</summary>
    public const int Through = 1;

    /// <summary>On no join yet.</summary>
    public const int Loose = 2;

    /// <summary>An end of a piece whose other end is settled.</summary>
    public const int HalfSettled = 3;

    private const int FirstPartner = 4;

    /// <summary>A quick hash: what differs in few bits must fall far apart.</summary>
    public override int GetHashCode()
    {
        unchecked
        {
            ulong mixed = ((ulong)Bits * 0x9E37_79B9_7F4A_7C15) ^ ((ulong)(Bits >> 64) * 0xC2B2_AE3D_27D4_EB4F);
            return (int)((mixed ^ (mixed >> 29)) >> 16);
        }
    }

    /// <summary>What is at a place.</summary>
    public int this[int place] => Low(Bits >> (5 * place));

    /// <summary>The same with something else at a place.</summary>
    public SweepState With(int place, int what) => new((Bits & ~((UInt128)31 << (5 * place))) | ((UInt128)(uint)what << (5 * place)));

    /// <summary>Joins two elements of the front; null where that is not allowed. The join may close the whole way, see <paramref name="isClosed"/>.</summary>
    public SweepState? Join(int a, int b, out bool isClosed)
    {
        (int atA, int atB) = (this[a], this[b]);
        isClosed = atA == HalfSettled && atB == HalfSettled;
        if (atA < Loose || atB < Loose || atA == FirstPartner + b)
        {
            return null;
        }

        SweepState joined = With(a, atA == Loose ? Loose : Through).With(b, atB == Loose ? Loose : Through);
        int endA = atA == Loose ? a : atA - FirstPartner;
        int endB = atB == Loose ? b : atB - FirstPartner;
        joined = endA < 0 ? joined : joined.With(endA, endB < 0 ? HalfSettled : FirstPartner + endB);
        return endB < 0 ? joined : joined.With(endB, endA < 0 ? HalfSettled : FirstPartner + endA);
    }

    /// <summary>Takes an element off the front that no further join can come to; null where its piece could never become part of one way.</summary>
    /// <param name="place">Where it is.</param>
    /// <param name="isClosed">True where a piece has no end left that could be joined: it is a whole way, if it is the only piece.</param>
    public SweepState? Leave(int place, out bool isClosed)
    {
        int at = this[place];
        isClosed = at == HalfSettled;
        SweepState left = With(place, Off);
        if (at < FirstPartner)
        {
            return left;
        }

        return left.Count(HalfSettled) < 2 ? left.With(at - FirstPartner, HalfSettled) : null;
    }

    // The lowest five bits; the cut is meant.
    private static int Low(UInt128 bits) => unchecked((int)(uint)bits) & 31;

    /// <summary>How many places say this.</summary>
    public int Count(int what)
    {
        int count = 0;
        for (UInt128 left = Bits; left != 0; left >>= 5)
        {
            count += Low(left) == what ? 1 : 0;
        }

        return count;
    }

    /// <summary>True where no piece with a join is open.</summary>
    public bool HasNoPiece
    {
        get
        {
            for (UInt128 left = Bits; left != 0; left >>= 5)
            {
                if (Low(left) >= HalfSettled)
                {
                    return false;
                }
            }

            return true;
        }
    }
}
