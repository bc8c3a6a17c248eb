namespace Proveout.Engine.Heat;

/// <summary>The part of a log in which a heater is held at a temperature.</summary>
/// <param name="FromSeconds">When it begins.</param>
/// <param name="ToSeconds">When it ends.</param>
/// <param name="Celsius">Mean of what is shown.</param>
/// <param name="Output">Mean output as a share of full, with its standard uncertainty from the scatter of its parts.</param>
/// <param name="DeviationKelvin">Standard deviation of what is shown.</param>
public sealed record HoldStretch(double FromSeconds, double ToSeconds, double Celsius, Estimate Output, Estimate DeviationKelvin)
{
    private const double BandKelvin = 3;
    private const double ShortestSeconds = 120;
    private const double DriftKelvin = 0.5;

    // Parts whose means are taken as independent: batch means (from memory; A. M. Law, Simulation Modeling and Analysis).
    private const int Parts = 8;

    /// <summary>Finds the last one that is steady; null when there is none.</summary>
    /// <param name="trace">The heater; its output is logged.</param>
    public static HoldStretch? Of(HeaterTrace trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        if (trace.Output is null || trace.Seconds.Length == 0 || LastBand(trace) is not { } band)
            return null;
        // Its first half may still settle.
        var from = (band.From + band.To) / 2;
        return band.To - from < ShortestSeconds ? null : Between(trace, from, band.To);
    }

    private static HoldStretch? Between(HeaterTrace trace, double from, double to)
    {
        var part = (to - from) / Parts;
        double[] outputs = [.. Enumerable.Range(0, Parts).Select(index => trace.MeanOf(trace.Output!, from + (index * part), from + ((index + 1) * part)))];
        double[] shown = [.. trace.Within(from, to).Select(at => trace.Sensor.Mean[at]).Where(double.IsFinite)];
        var middle = (from + to) / 2;
        if (!outputs.All(double.IsFinite) || !(Math.Abs(trace.MeanOf(trace.Sensor, from, middle) - trace.MeanOf(trace.Sensor, middle, to)) < DriftKelvin))
            return null;
        var (celsius, output) = (shown.Average(), outputs.Average());
        var deviation = Math.Sqrt(shown.Sum(value => (value - celsius) * (value - celsius)) / Math.Max(1, shown.Length - 1));
        var standard = Math.Sqrt(outputs.Sum(value => (value - output) * (value - output)) / (Parts - 1) / Parts);
        // Neighbouring rows are alike; as many are counted as there are parts.
        return new(from, to, celsius, new(output, standard), new(deviation, deviation / Math.Sqrt(2 * Parts)));
    }

    // The last stretch within the band around its own last value, or around the target where the log has one; the heater is on.
    private static (double From, double To)? LastBand(HeaterTrace trace)
    {
        var last = trace.Seconds.Length - 1;
        for (; last >= 0 && !(trace.Output!.Mean[last] > 0 && double.IsFinite(trace.Sensor.Mean[last]) && IsNear(last, last)); last--)
        {
        }

        if (last < 0)
            return null;
        var first = last;
        while (first > 0 && (!double.IsFinite(trace.Sensor.Mean[first - 1]) || IsNear(first - 1, last)))
            first--;
        return (trace.Seconds[first], trace.Seconds[last]);

        bool IsNear(int at, int end) => Math.Abs(trace.Sensor.Mean[at] - (trace.Target is { } target && double.IsFinite(target.Mean[at]) ? target.Mean[at] : trace.Sensor.Mean[end])) <= BandKelvin;
    }
}
