namespace Rostrum.Play.Formulas;

/// <summary>A growing list of numbers that is used again and again.</summary>
internal sealed class Elements
{
    private int[] _items = new int[16];

    /// <summary>True for a list that never changes and is shared, such as the spaces of a straight line; it is not used again for anything else.</summary>
    public bool IsConstant { get; private init; }

    /// <summary>How many elements there are.</summary>
    public int Count { get; private set; }

    /// <summary>The element at a 0-based position.</summary>
    public int this[int at]
    {
        get => _items[at];
        set => _items[at] = value;
    }

    /// <summary>The elements in order; valid until the list changes.</summary>
    public ReadOnlySpan<int> Span => _items.AsSpan(0, Count);

    /// <summary>The elements in order, to be sorted or changed in place.</summary>
    public Span<int> Items => _items.AsSpan(0, Count);

    /// <summary>A list that never changes.</summary>
    public static Elements Of(params int[] items) => new() { _items = items, Count = items.Length, IsConstant = true };

    /// <summary>Adds an element behind the others.</summary>
    public void Add(int element)
    {
        if (Count == _items.Length)
        {
            Array.Resize(ref _items, Math.Max(16, 2 * Count));
        }

        _items[Count++] = element;
    }

    /// <summary>Adds several.</summary>
    public void AddRange(ReadOnlySpan<int> elements)
    {
        if (Count + elements.Length > _items.Length)
        {
            Array.Resize(ref _items, Math.Max(2 * _items.Length, Count + elements.Length));
        }

        elements.CopyTo(_items.AsSpan(Count));
        Count += elements.Length;
    }

    /// <summary>Makes it so many times the same element.</summary>
    public void Fill(int element, int count)
    {
        if (count > _items.Length)
        {
            _items = new int[count];
        }

        Count = count;
        Items.Fill(element);
    }

    /// <summary>Keeps only the first so many.</summary>
    public void Cut(int count) => Count = Math.Min(Count, count);

    /// <summary>Takes all out.</summary>
    public void Clear() => Count = 0;

    /// <summary>True where an element is in it.</summary>
    public bool Contains(int element) => Span.Contains(element);
}
