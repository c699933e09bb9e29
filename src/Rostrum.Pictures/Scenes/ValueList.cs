using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Rostrum.Pictures;

/// <summary>An immutable list that is equal to another one with equal items in the same order.</summary>
/// <typeparam name="T">What it holds.</typeparam>
/// <remarks>Immutable arrays compare by reference, which would break the equality of the records that hold them.</remarks>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public readonly struct ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly ImmutableArray<T> _items;

    internal ValueList(ImmutableArray<T> items) => _items = items;

    /// <summary>How many items; 0 for the default value.</summary>
    public int Count => _items.IsDefault ? 0 : _items.Length;

    /// <summary>The item at a place, counted from 0.</summary>
    public T this[int index] => _items[index];

    /// <inheritdoc />
    public bool Equals(ValueList<T> other) => this.SequenceEqual(other);

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (T item in this)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc />
    public IEnumerator<T> GetEnumerator() => (_items.IsDefault ? [] : _items.AsEnumerable()).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Whether two lists hold equal items in the same order.</summary>
    public static bool operator ==(ValueList<T> left, ValueList<T> right) => left.Equals(right);

    /// <summary>Whether two lists differ in an item or in length.</summary>
    public static bool operator !=(ValueList<T> left, ValueList<T> right) => !left.Equals(right);
}

/// <summary>Builds <see cref="ValueList{T}"/> values, also for collection expressions.</summary>
public static class ValueList
{
    /// <summary>A list of the items in their order.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new([.. items]);
}
