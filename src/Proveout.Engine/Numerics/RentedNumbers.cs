using System.Buffers;

namespace Proveout.Engine.Numerics;

/// <summary>Arrays of whole numbers that are needed for a moment, and then given back.</summary>
/// <param name="count">How many each holds at least.</param>
internal sealed class RentedNumbers(int count) : IDisposable
{
    private readonly List<int[]> _rented = [];

    /// <summary>One more array, all zero up to the count.</summary>
    public int[] Next()
    {
        var numbers = ArrayPool<int>.Shared.Rent(count);
        numbers.AsSpan(0, count).Clear();
        _rented.Add(numbers);
        return numbers;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var numbers in _rented)
            ArrayPool<int>.Shared.Return(numbers);
    }
}
