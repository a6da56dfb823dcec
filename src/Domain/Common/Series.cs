using System.Collections;
using System.Runtime.CompilerServices;

namespace Gradus.Domain;

/// <summary>An unchanging list that equals another when its items do, in the same order; so records that hold one compare by
/// value.</summary>
[CollectionBuilder(typeof(Series), nameof(Series.Of))]
public sealed class Series<T> : IReadOnlyList<T>, IEquatable<Series<T>>
{
    public static readonly Series<T> Empty = new([]);

    private readonly T[] items;

    internal Series(T[] items) => this.items = items;

    public int Count => items.Length;

    public T this[int index] => items[index];

    public bool Equals(Series<T>? other) => other is not null && items.AsSpan().SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as Series<T>);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <summary>For a loop, which needs no object for it.</summary>
    public Enumerator GetEnumerator() => new(items);

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    /// <summary>Two of them are written alike only where they are equal: of a text its length stands before it, so that "a, b" is
    /// not taken for two.</summary>
    public override string ToString() =>
        items is string[] texts
            ? "[" + string.Join(", ", texts.Select(t => FormattableString.Invariant($"{t.Length}:{t}"))) + "]"
            : "[" + string.Join(", ", items) + "]";

    public struct Enumerator
    {
        private readonly T[] items;
        private int at = -1;

        internal Enumerator(T[] items) => this.items = items;

        public readonly T Current => items[at];

        public bool MoveNext() => ++at < items.Length;
    }
}

public static class Series
{
    public static Series<T> Of<T>(ReadOnlySpan<T> items) => items.IsEmpty ? Series<T>.Empty : new(items.ToArray());

    public static Series<T> ToSeries<T>(this IEnumerable<T> items) => new([.. items]);
}
