namespace Rostrum.Rulings.Evaluation;

/// <summary>The most pairs of one and one other, none used twice.</summary>
/// <remarks>J. E. Hopcroft and R. M. Karp, An n^(5/2) algorithm for maximum matchings in bipartite graphs, SIAM Journal on Computing 2 (1973): rounds of
/// shortest chains that each make one pair more.</remarks>
internal sealed class Matching
{
    private const int Free = -1;

    private readonly int[][] _near;
    private readonly int[] _partner;
    private readonly int[] _taken;
    private readonly int[] _round;

    private Matching(int[][] near, int others)
    {
        _near = near;
        _partner = new int[near.Length];
        _taken = new int[others];
        _round = new int[near.Length];
        Array.Fill(_partner, Free);
        Array.Fill(_taken, Free);
    }

    /// <summary>As many pairs as can be made, by the number of the one; the same ones for the same question.</summary>
    /// <param name="ones">How many there are on one side.</param>
    /// <param name="others">How many there are on the other side.</param>
    /// <param name="isPair">Whether a one and an other, both 0-based, may be a pair.</param>
    public static (int One, int Other)[] Most(int ones, int others, Func<int, int, bool> isPair)
    {
        int[][] near = [.. Enumerable.Range(0, ones).Select(i => Enumerable.Range(0, others).Where(j => isPair(i, j)).ToArray())];
        var matching = new Matching(near, others);
        while (matching.LayOut())
        {
            for (int one = 0; one < ones; one++)
            {
                _ = matching._partner[one] == Free && matching.Extend(one);
            }
        }

        return [.. matching._partner.Select((other, one) => (one, other)).Where(p => p.other != Free)];
    }

    // How many pairs lie between each one and a free one, breadth first; false where no chain leads to a free other.
    private bool LayOut()
    {
        var next = new Queue<int>();
        for (int one = 0; one < _near.Length; one++)
        {
            _round[one] = _partner[one] == Free ? 0 : int.MaxValue;
            if (_partner[one] == Free)
            {
                next.Enqueue(one);
            }
        }

        bool leads = false;
        while (next.TryDequeue(out int one))
        {
            foreach (int other in _near[one])
            {
                leads |= _taken[other] == Free;
                if (_taken[other] != Free && _round[_taken[other]] == int.MaxValue)
                {
                    _round[_taken[other]] = _round[one] + 1;
                    next.Enqueue(_taken[other]);
                }
            }
        }

        return leads;
    }

    private bool Extend(int one)
    {
        foreach (int other in _near[one])
        {
            if (_taken[other] == Free || (_round[_taken[other]] == _round[one] + 1 && Extend(_taken[other])))
            {
                _partner[one] = other;
                _taken[other] = one;
                return true;
            }
        }

        _round[one] = int.MaxValue;
        return false;
    }
}
