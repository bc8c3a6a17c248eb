namespace Proveout.Engine.Faults;

/// <summary>For one check, the different intervals that it may show, sound (class 0) or under any fault, laid on one scale.</summary>
/// <remarks>
/// Every class spreads its readings evenly over its interval on the scale, half of them to over range where that may be shown. The share of
/// misread values is spread over the whole scale, so that no reading excludes a class with certainty.
/// </remarks>
internal sealed class ShownClasses
{
    private readonly double[] _lengths;
    private readonly (int Start, int End, double Density, double Over, double SelfInformation)[] _classes;
    private readonly double _backDensity;
    private readonly double _backOver;

    /// <summary>Lays the classes of a check on its scale.</summary>
    /// <param name="extents">The classes, different ones only.</param>
    /// <param name="wrong">Probability that a reading is wrong.</param>
    public ShownClasses(IReadOnlyList<ShownExtent> extents, double wrong)
    {
        double[] ends = [.. extents.Where(extent => !extent.IsOverOnly).SelectMany(extent => new[] { extent.Start, extent.End }).Distinct().Order()];
        _lengths = [.. ends.Skip(1).Select((end, index) => end - ends[index])];
        var span = ends.Length > 1 ? ends[^1] - ends[0] : 0;
        _backOver = wrong * (span <= 0 ? 1 : extents.Any(extent => extent.OverShare > 0) ? 0.5 : 0);
        _backDensity = span > 0 ? (wrong - _backOver) / span : 0;
        _classes = [.. extents.Select(extent => Lay(extent, ends, span, wrong))];
    }

    /// <summary>Number of classes.</summary>
    public int Count => _classes.Length;

    /// <summary>Bits that a reading is expected to tell of the class, for classes of given probabilities.</summary>
    /// <param name="probabilities">A probability for each class; they add up to 1.</param>
    /// <param name="scratch">At least one more than <see cref="Count"/> twice over.</param>
    public double Information(ReadOnlySpan<double> probabilities, Span<double> scratch)
    {
        var steps = scratch[..(_lengths.Length + 1)];
        steps.Clear();
        var over = _backOver;
        var information = 0.0;
        for (var index = 0; index < _classes.Length; index++)
            if (probabilities[index] > 0)
            {
                var (start, end, density, ofOver, own) = _classes[index];
                steps[start] += probabilities[index] * density;
                steps[end] -= probabilities[index] * density;
                over += probabilities[index] * ofOver;
                information += probabilities[index] * own;
            }

        var height = 0.0;
        for (var segment = 0; segment < _lengths.Length; segment++)
        {
            height += steps[segment];
            information -= _lengths[segment] * PLogP(Math.Max(0, height) + _backDensity);
        }

        return Math.Max(0, information - PLogP(over)) / Math.Log(2);
    }

    private (int Start, int End, double Density, double Over, double SelfInformation) Lay(ShownExtent extent, double[] ends, double span, double wrong)
    {
        var over = (1 - wrong) * extent.OverShare;
        if (extent.IsOverOnly)
            return (0, 0, 0, over, (span * PLogP(_backDensity)) + PLogP(over + _backOver));
        var width = extent.End - extent.Start;
        var density = (1 - wrong) * (1 - extent.OverShare) / width;
        var own = (width * PLogP(density + _backDensity)) + ((span - width) * PLogP(_backDensity)) + PLogP(over + _backOver);
        return (Array.BinarySearch(ends, extent.Start), Array.BinarySearch(ends, extent.End), density, over, own);
    }

    private static double PLogP(double value) => value > 0 ? value * Math.Log(value) : 0;
}
