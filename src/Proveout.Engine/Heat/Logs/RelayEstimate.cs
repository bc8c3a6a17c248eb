using Proveout.Engine.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>Why a log is no relay's, or does not tell a process.</summary>
public enum RelayLack
{
    /// <summary>The output does not go to and fro between two values.</summary>
    NoRelay,

    /// <summary>There are fewer than three whole cycles after the first.</summary>
    TooFewCycles,

    /// <summary>Period or swing still change from cycle to cycle.</summary>
    NotSettled,

    /// <summary>There are fewer than eight rows to a cycle.</summary>
    TooFewRows,
}

/// <summary>A process known from the steady swing under a relay.</summary>
/// <param name="Period">Period in s.</param>
/// <param name="Swing">Half of the swing of what is shown, in K.</param>
/// <param name="CycleGain">Gain of a controller that would keep up a swing of this period: one over what the process does to the first harmonic.</param>
/// <param name="LagDegrees">How far what is shown lags behind the output at this period; about 180 under a relay without hysteresis.</param>
/// <param name="HalfHysteresis">Half of the relay's dead band, in K, as seen at its switching.</param>
/// <param name="MeanOutput">Mean output, as a share of full.</param>
/// <param name="Cycles">How many cycles were taken.</param>
/// <param name="FromSeconds">When the first of them begins.</param>
/// <param name="Process">The process of first order with dead time; null when the room's temperature is not known, or none fits.</param>
/// <remarks>
/// K. J. Åström and T. Hägglund, Automatica 20 (1984) 645. In a steady cycle a linear process does to the mean and to each harmonic just what its frequency response says; so the
/// mean above the room over the mean output is k, and the first harmonics give one more point, whatever hysteresis and shares of time the relay has. The describing function
/// 4d/(πa) takes the swing for its first harmonic and is 11 to 19 % low for such processes.
/// </remarks>
public sealed record RelayEstimate(
    Estimate Period, Estimate Swing, Estimate CycleGain, double LagDegrees, double HalfHysteresis, double MeanOutput, int Cycles, double FromSeconds, ProcessEstimate? Process)
{
    private const int FewestCycles = 3;
    private const int FewestRows = 8;

    // Cycles that are alike within this share, and do not drift by more, are settled.
    private const double Settled = 0.05;

    /// <summary>What the last settled cycles say, or why they say nothing.</summary>
    /// <param name="trace">The log.</param>
    /// <param name="roomCelsius">What is shown without any output; null when it is not known.</param>
    public static (RelayEstimate? Found, RelayLack? Lack) Of(HeaterTrace trace, double? roomCelsius)
    {
        ArgumentNullException.ThrowIfNull(trace);
        if (Switchings(trace) is not { } switchings)
            return (null, RelayLack.NoRelay);
        var (ons, threshold) = switchings;
        if (ons.Length < FewestCycles + 1)
            return (null, RelayLack.TooFewCycles);
        if (ons[^1] - ons[^2] < FewestRows)
            return (null, RelayLack.TooFewRows);
        // The first cycle is the way up.
        RelayCycle[] cycles = [.. ons.Skip(1).Zip(ons.Skip(2), (from, to) => RelayCycle.Of(trace, from, to, threshold)).OfType<RelayCycle>()];
        if (cycles.Length < FewestCycles)
            return (null, RelayLack.TooFewCycles);
        for (var from = 0; cycles.Length - from >= FewestCycles; from++)
            if (IsSettled(cycles[from..]))
                return (Of(cycles[from..], roomCelsius), null);
        return (null, RelayLack.NotSettled);
    }

    private static (int[] Ons, double Threshold)? Switchings(HeaterTrace trace)
    {
        double[] outputs = trace.Output is null ? [] : [.. trace.Output.Mean.Where(double.IsFinite)];
        if (outputs.Length == 0)
            return null;
        var (low, high) = (outputs.Min(), outputs.Max());
        if (high - low < 0.05 || outputs.Count(output => Math.Min(output - low, high - output) > 0.1 * (high - low)) > 0.02 * outputs.Length)
            return null;
        var threshold = (low + high) / 2;
        int[] ons = [.. Enumerable.Range(1, trace.Seconds.Length - 1).Where(at => trace.Output!.Mean[at] >= threshold && trace.Output.Mean[at - 1] < threshold)];
        // A log that begins with the output high begins on the way up.
        if (outputs[0] >= threshold)
            ons = [0, .. ons];
        // A relay switches on where it is cold; a stretch that is switched on and off by the clock does not mind.
        var isRelay = ons.Length > 2 && ons.Skip(1).All(at => !(trace.Sensor.Mean[at] > trace.MeanOf(trace.Sensor, trace.Seconds[ons[1]], trace.Seconds[ons[^1]])));
        return isRelay ? (ons, threshold) : null;
    }

    private static bool IsSettled(RelayCycle[] cycles) =>
        IsSteady([.. cycles.Select(cycle => cycle.PeriodSeconds)]) && IsSteady([.. cycles.Select(cycle => cycle.Swing)])
        && Math.Abs(cycles[^1].MeanCelsius - cycles[0].MeanCelsius) <= 2 * Settled * cycles[0].Swing;

    private static bool IsSteady(double[] values)
    {
        var mean = values.Average();
        var half = values.Length / 2;
        return values.All(value => Math.Abs(value - mean) <= 2 * Settled * mean) && Math.Abs(values[^half..].Average() - values[..half].Average()) <= Settled * mean;
    }

    private static RelayEstimate Of(RelayCycle[] cycles, double? room)
    {
        ProcessModel?[] models = [.. cycles.Select(cycle => room is { } rest ? ModelOf(cycle, rest) : null)];
        var response = cycles.Aggregate(System.Numerics.Complex.Zero, (sum, cycle) => sum + cycle.Response) / cycles.Length;
        return new(
            Mean([.. cycles.Select(cycle => cycle.PeriodSeconds)]),
            Mean([.. cycles.Select(cycle => cycle.Swing)]),
            Mean([.. cycles.Select(cycle => 1 / cycle.Response.Magnitude)]),
            LagOf(response) * 180 / Math.PI,
            Math.Max(0, cycles.Average(cycle => cycle.OffCelsius - cycle.OnCelsius) / 2),
            cycles.Average(cycle => cycle.MeanOutput),
            cycles.Length,
            cycles[0].FromSeconds,
            models.All(model => model is not null) ? ProcessOf([.. models.OfType<ProcessModel>()]) : null);
    }

    private static double LagOf(System.Numerics.Complex response) => -response.Phase is var lag && lag < 0 ? lag + (2 * Math.PI) : -response.Phase;

    private static ProcessModel? ModelOf(RelayCycle cycle, double room)
    {
        var gain = (cycle.MeanCelsius - room) / cycle.MeanOutput;
        var (omega, ratio) = (2 * Math.PI / cycle.PeriodSeconds, gain / cycle.Response.Magnitude);
        if (!(ratio > 1))
            return null;
        var slow = Math.Sqrt((ratio * ratio) - 1) / omega;
        var dead = (LagOf(cycle.Response) - Math.Atan(omega * slow)) / omega;
        return dead > 0 ? new ProcessModel(gain, slow, 0, dead) : null;
    }

    // Cycles are as good as independent; few of them tell their scatter badly, which Student's factor makes up for (JCGM 100:2008, G.3).
    private static Estimate Mean(double[] values)
    {
        var mean = values.Average();
        return new(mean, Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1) / values.Length) * Few(values.Length));
    }

    private static double Few(int count) => StudentT.Factor(0.9545, count - 1) / 2;

    private static ProcessEstimate ProcessOf(ProcessModel[] models)
    {
        double[][] each = [.. models.Select(model => (double[])[Math.Log(model.Gain), Math.Log(model.TimeConstantSeconds), model.DeadTimeSeconds])];
        double[] mean = [.. Enumerable.Range(0, 3).Select(index => each.Average(values => values[index]))];
        var covariance = new double[3, 3];
        var factor = Few(models.Length) * Few(models.Length) / (models.Length * (models.Length - 1.0));
        for (var row = 0; row < 3; row++)
            for (var column = 0; column < 3; column++)
                covariance[row, column] = factor * each.Sum(values => (values[row] - mean[row]) * (values[column] - mean[column]));
        return new(new(Math.Exp(mean[0]), Math.Exp(mean[1]), 0, mean[2]), covariance);
    }
}
