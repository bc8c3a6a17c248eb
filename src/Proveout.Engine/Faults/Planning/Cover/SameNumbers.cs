namespace Proveout.Engine.Faults;

/// <summary>Compares lists of numbers by what they hold.</summary>
internal sealed class SameNumbers : IEqualityComparer<int[]>
{
    /// <summary>The only one that is needed.</summary>
    public static SameNumbers Comparer { get; } = new();

    /// <inheritdoc/>
    public bool Equals(int[]? one, int[]? two) => one.AsSpan().SequenceEqual(two);

    /// <inheritdoc/>
    public int GetHashCode(int[] numbers)
    {
        var hash = default(HashCode);
        foreach (var number in numbers)
            hash.Add(number);
        return hash.ToHashCode();
    }
}
