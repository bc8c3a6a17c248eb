namespace Proveout.Engine.Heat;

/// <summary>
/// Thins rows while they come in: each bucket takes as many rows as the next and keeps mean, least and most of each column. When all buckets are full,
/// neighbours are joined and each takes twice as many rows. A log of few rows stays as it is.
/// </summary>
/// <param name="columns">How many columns of values there are.</param>
internal sealed class LogBuckets(int columns)
{
    private const int MostBuckets = 1 << 15;
    private const int FewestBuckets = 1 << 4;

    // Of each column: how many numbers, their sum, the least, the most. Before them: line, rows, sum of times.
    private const int Head = 3;
    private const int EachColumn = 4;

    private readonly int _stride = Head + (EachColumn * columns);
    private double[] _store = new double[FewestBuckets * (Head + (EachColumn * columns))];
    private int _buckets;
    private long _rowsEach = 1;

    /// <summary>How many buckets there are.</summary>
    public int Count => _buckets;

    /// <summary>Takes a row.</summary>
    public void Add(int line, double seconds, ReadOnlySpan<double> values)
    {
        if (_buckets == 0 || At(_buckets - 1)[1] >= _rowsEach)
            Open(line);
        var bucket = At(_buckets - 1);
        bucket[1]++;
        bucket[2] += seconds;
        for (var column = 0; column < columns; column++)
        {
            var value = values[column];
            if (double.IsNaN(value))
                continue;
            var held = bucket.Slice(Head + (EachColumn * column), EachColumn);
            held[0]++;
            held[1] += value;
            held[2] = Math.Min(held[2], value);
            held[3] = Math.Max(held[3], value);
        }
    }

    /// <summary>Line of the first row of a bucket, and the mean time of its rows.</summary>
    public (int Line, double Seconds) HeadOf(int bucket) => ((int)At(bucket)[0], At(bucket)[2] / At(bucket)[1]);

    /// <summary>Mean, least and most of a column in a bucket; not numbers when it has none.</summary>
    public (double Mean, double Least, double Most) Of(int bucket, int column)
    {
        var held = At(bucket).Slice(Head + (EachColumn * column), EachColumn);
        return held[0] > 0 ? (held[1] / held[0], held[2], held[3]) : (double.NaN, double.NaN, double.NaN);
    }

    private Span<double> At(int bucket) => _store.AsSpan(bucket * _stride, _stride);

    private void Open(int line)
    {
        if (_buckets == MostBuckets)
            JoinNeighbours();
        if ((_buckets + 1) * _stride > _store.Length)
            Array.Resize(ref _store, 2 * _store.Length);
        var bucket = At(_buckets++);
        bucket.Clear();
        bucket[0] = line;
        for (var column = 0; column < columns; column++)
            (bucket[Head + (EachColumn * column) + 2], bucket[Head + (EachColumn * column) + 3]) = (double.PositiveInfinity, double.NegativeInfinity);
    }

    private void JoinNeighbours()
    {
        for (var pair = 0; pair < _buckets / 2; pair++)
        {
            var left = At(2 * pair);
            var right = At((2 * pair) + 1);
            left[1] += right[1];
            left[2] += right[2];
            for (var column = 0; column < columns; column++)
            {
                var held = left.Slice(Head + (EachColumn * column), EachColumn);
                var other = right.Slice(Head + (EachColumn * column), EachColumn);
                held[0] += other[0];
                held[1] += other[1];
                held[2] = Math.Min(held[2], other[2]);
                held[3] = Math.Max(held[3], other[3]);
            }

            left.CopyTo(At(pair));
        }

        _buckets /= 2;
        _rowsEach *= 2;
    }
}
