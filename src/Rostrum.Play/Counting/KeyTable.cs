namespace Rostrum.Play.Counting;

/// <summary>Keys of positions, each with a number that adds up: a table with open addresses over blocks of bytes. No key is ever taken for another.</summary>
internal sealed class KeyTable
{
    private const int BlockSize = 1 << 20;

    private readonly List<byte[]> _blocks = [];
    private readonly List<(int Block, int At, int Length)> _keys = [];
    private readonly List<UInt128> _sums = [];
    private int[] _slots = new int[1024];
    private int _end = BlockSize;

    /// <summary>How many keys there are.</summary>
    public int Count => _keys.Count;

    /// <summary>A key by the order in which it was added.</summary>
    public ReadOnlySpan<byte> Key(int at) => _blocks[_keys[at].Block].AsSpan(_keys[at].At, _keys[at].Length);

    /// <summary>What was added for a key.</summary>
    public UInt128 Sum(int at) => _sums[at];

    /// <summary>Adds a number for a key.</summary>
    /// <returns>True where the key is new.</returns>
    public bool Add(ReadOnlySpan<byte> key, UInt128 number)
    {
        if (2 * (Count + 1) > _slots.Length)
        {
            Grow();
        }

        int slot = Find(key);
        if (_slots[slot] > 0)
        {
            _sums[_slots[slot] - 1] = checked(_sums[_slots[slot] - 1] + number);
            return false;
        }

        Store(key);
        _sums.Add(number);
        _slots[slot] = Count;
        return true;
    }

    /// <summary>The order in which a key was added; -1 where it is not there.</summary>
    public int IndexOf(ReadOnlySpan<byte> key) => _slots[Find(key)] - 1;

    private int Find(ReadOnlySpan<byte> key)
    {
        int mask = _slots.Length - 1;
        var hash = default(HashCode);
        hash.AddBytes(key);
        int slot = hash.ToHashCode() & mask;
        while (_slots[slot] > 0 && !Key(_slots[slot] - 1).SequenceEqual(key))
        {
            slot = (slot + 1) & mask;
        }

        return slot;
    }

    private void Store(ReadOnlySpan<byte> key)
    {
        if (_end + key.Length > BlockSize)
        {
            _blocks.Add(new byte[Math.Max(BlockSize, key.Length)]);
            _end = 0;
        }

        key.CopyTo(_blocks[^1].AsSpan(_end));
        _keys.Add((_blocks.Count - 1, _end, key.Length));
        _end += key.Length;
    }

    private void Grow()
    {
        _slots = new int[2 * _slots.Length];
        for (int i = 0; i < Count; i++)
        {
            _slots[Find(Key(i))] = i + 1;
        }
    }
}
