namespace Proveout.Web.Hosting.Watching;

/// <summary>The values of one instrument under one set of labels.</summary>
/// <param name="bounds">Upper bounds of the sizes that are counted apart; empty for a value alone.</param>
internal sealed class MetricSeries(IReadOnlyList<double> bounds)
{
    private readonly Lock _gate = new();
    private readonly long[] _counts = new long[bounds.Count + 1];
    private double _value;

    public void Set(double value)
    {
        lock (_gate)
            _value = value;
    }

    public void Add(double value)
    {
        lock (_gate)
            _value += value;
    }

    /// <summary>Counts a value by its size.</summary>
    public void Count(double value)
    {
        var place = 0;
        while (place < bounds.Count && value > bounds[place])
            place++;
        lock (_gate)
        {
            _counts[place]++;
            _value += value;
        }
    }

    /// <summary>The value, or the sum of what was counted; and how many had each size, the last those above every bound.</summary>
    public (double Value, long[] Counts) Read()
    {
        lock (_gate)
            return (_value, [.. _counts]);
    }
}
