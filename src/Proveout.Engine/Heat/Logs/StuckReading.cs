namespace Proveout.Engine.Heat;

/// <summary>Tells a reading that is stuck from one that is held.</summary>
public static class StuckReading
{
    private const double ShortestSeconds = 30;
    private const int FewestRows = 20;

    // A reading without decimals stands still for longer on its way.
    private const double SecondsForAKelvin = 120;

    // At rest in the room, and near its target, a reading may well stand still.
    private const double RestKelvin = 5;
    private const double HeldKelvin = 3;
    private const double LeastOutput = 0.5;

    /// <summary>The stretch in which one and the same reading stands though the heater is on; null when there is none.</summary>
    public static LogFlaw? Of(HeaterTrace trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        if (trace.Run.LongestSame.FirstOrDefault(same => same.Sensor == trace.Sensor.Name) is not { } same || trace.Sensor.Mean.FirstOrDefault(double.IsFinite) is not (> 0 and var first))
            return null;
        var target = trace.Target?.Mean.Where(double.IsFinite).DefaultIfEmpty(double.NaN).Max() ?? double.NaN;
        var isOn = trace.Output is null || trace.MeanOf(trace.Output, same.Seconds, same.Seconds + same.ForSeconds) >= LeastOutput;
        return isOn && same.Rows >= FewestRows && same.ForSeconds >= Math.Max(ShortestSeconds, SecondsForAKelvin * DigitOf(trace))
            && same.Celsius > first + RestKelvin && !(Math.Abs(same.Celsius - target) < HeldKelvin)
            ? same
            : null;
    }

    private static double DigitOf(HeaterTrace trace) => Enumerable.Range(1, Math.Max(0, trace.Seconds.Length - 1))
        .Select(at => Math.Abs(trace.Sensor.Mean[at] - trace.Sensor.Mean[at - 1])).Where(step => step > 1e-9).DefaultIfEmpty(0).Min();
}
