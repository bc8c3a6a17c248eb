using System.Collections;
using System.Runtime.CompilerServices;

namespace Proveout.Engine.Machine;

/// <summary>An immutable list whose equality is that of its items, so that records holding it compare by value.</summary>
/// <typeparam name="T">The items' type.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] _items;

    internal ValueList(T[] items) => _items = items;

    /// <inheritdoc/>
    public int Count => _items.Length;

    /// <inheritdoc/>
    public T this[int index] => _items[index];

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => _items.GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) => other is not null && _items.AsSpan().SequenceEqual(other._items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var item in _items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public override string ToString() => $"[{string.Join(", ", _items)}]";
}

/// <summary>Makes value lists.</summary>
public static class ValueList
{
    /// <summary>A list of the given items.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    /// <summary>A list of the items of a sequence.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new(items.ToArray());
}
