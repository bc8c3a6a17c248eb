namespace Proveout.Engine.Heat;

/// <summary>The part of a log in which a heater is told to stay off, then to give all it can.</summary>
/// <param name="OffSeconds">For how long the log shows the heater told to stay off, from its first row.</param>
/// <param name="FirstCelsius">What is shown in the first rows.</param>
/// <param name="OnSeconds">When full output begins; null when it never does.</param>
/// <param name="StartCelsius">What is shown then.</param>
/// <param name="FullSeconds">For how long it is full.</param>
/// <param name="IsOutputLogged">False when the log has no output, so that it is taken to be full from when a target is set until near it.</param>
public sealed record WarmUpStretch(double OffSeconds, double FirstCelsius, double? OnSeconds, double StartCelsius, double FullSeconds, bool IsOutputLogged)
{
    private const double Full = 0.97;
    private const double Off = 0.02;

    // A target so far above what is shown is a new one.
    private const double NewTargetKelvin = 15;

    // What is shown at rest is the mean of the rows in this time.
    private const double RestSeconds = 20;
    private const int FirstRows = 3;

    /// <summary>Finds it; null when the log has neither an output nor a target, or no reading.</summary>
    public static WarmUpStretch? Of(HeaterTrace trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        var first = Array.FindIndex(trace.Sensor.Mean, double.IsFinite);
        if (first < 0 || (trace.Output is null && trace.Target is null))
            return null;
        var on = Find(trace);
        var until = on is null ? trace.Run.LastsSeconds : trace.Seconds[on.Value];
        // What is heated though told not to be moves on at once.
        var begin = trace.Sensor.Mean.Skip(first).Where(double.IsFinite).Take(FirstRows).Average();
        // Rows before the output rises show the rest; without any the first row does.
        var start = on is null ? begin : Rest(trace, Math.Max(0, until - RestSeconds), until);
        return new(OffUntil(trace, on), begin, on is null ? null : until, start, on is null ? 0 : FullFor(trace, on.Value), trace.Output is not null);
    }

    private static int? Find(HeaterTrace trace)
    {
        for (var at = 0; at < trace.Seconds.Length; at++)
            if (trace.Output is { } output ? output.Mean[at] >= Full : trace.Target!.Mean[at] > trace.Sensor.Mean[at] + NewTargetKelvin)
                return at;
        return null;
    }

    private static double Rest(HeaterTrace trace, double from, double to)
    {
        // The row at the end may have been measured after the output rose: it is left out when there are others.
        double[] shown = [.. trace.Within(from, to).Select(at => trace.Sensor.Mean[at]).Where(double.IsFinite)];
        return shown.Length == 0 ? trace.Sensor.Mean.First(double.IsFinite) : shown.Length == 1 ? shown[0] : shown[..^1].Average();
    }

    private static double OffUntil(HeaterTrace trace, int? on)
    {
        if (trace.Output is not { } output)
            return 0;
        var count = output.Mean.AsSpan(0, on ?? output.Mean.Length).IndexOfAnyExceptInRange(double.NegativeInfinity, Off);
        var end = count >= 0 ? count : on ?? (output.Mean.Length - 1);
        return end < 0 || output.Mean[0] > Off ? 0 : trace.Seconds[end];
    }

    // Without an output it is taken to be full until the controller is near its target.
    private static double FullFor(HeaterTrace trace, int on)
    {
        var at = on;
        while (at + 1 < trace.Seconds.Length && Goes(at + 1))
            at++;
        return trace.Seconds[at] - trace.Seconds[on];

        bool Goes(int row) => trace.Output is { } output
            ? !(output.Mean[row] < Full)
            : trace.Target!.Mean[row] > NewTargetKelvin && !(trace.Sensor.Mean[row] > trace.Target.Mean[row] - GuardThresholds.ThrottleKelvin);
    }
}
