using System.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>One cycle under a relay.</summary>
/// <param name="FromSeconds">When the output goes high.</param>
/// <param name="PeriodSeconds">How long until it does so again.</param>
/// <param name="Swing">Half of the difference between the highest and the lowest that is shown.</param>
/// <param name="MeanCelsius">Mean of what is shown.</param>
/// <param name="MeanOutput">Mean output.</param>
/// <param name="Response">What the process does to the first harmonic of its output, in K for full output.</param>
/// <param name="OnCelsius">What is shown when the output goes high.</param>
/// <param name="OffCelsius">What is shown when it goes low.</param>
internal sealed record RelayCycle(
    double FromSeconds, double PeriodSeconds, double Swing, double MeanCelsius, double MeanOutput, Complex Response, double OnCelsius, double OffCelsius)
{
    /// <summary>The cycle between two rows; null when something is missing between them.</summary>
    public static RelayCycle? Of(HeaterTrace trace, int from, int to, double threshold)
    {
        var (seconds, shown, output) = (trace.Seconds, trace.Sensor.Mean, trace.Output!.Mean);
        var period = seconds[to] - seconds[from];
        var part = shown[from..(to + 1)];
        if (part.Any(double.IsNaN) || output[from..to].Any(double.IsNaN) || trace.Run.Gaps.Any(gap => gap.ToSeconds > seconds[from] && gap.FromSeconds < seconds[to]))
            return null;
        var omega = 2 * Math.PI / period;
        var (ofShown, ofOutput, meanShown, meanOutput) = (Complex.Zero, Complex.Zero, 0.0, 0.0);
        var off = -1;
        for (var at = from; at < to; at++)
        {
            var (begin, end) = (Turned(omega, seconds[at]), Turned(omega, seconds[at + 1]));
            var width = seconds[at + 1] - seconds[at];
            var slope = (shown[at + 1] - shown[at]) / width;
            // Exact for what is shown on straight lines and an output held between rows.
            ofShown += (-((shown[at + 1] * end) - (shown[at] * begin)) / new Complex(0, omega)) + (slope * (end - begin) / (omega * omega));
            ofOutput += output[at] * (end - begin) / new Complex(0, -omega);
            meanShown += width * (shown[at] + shown[at + 1]) / 2;
            meanOutput += width * output[at];
            if (off < 0 && output[at] < threshold)
                off = at;
        }

        return off < 0 ? null : new(seconds[from], period, (part.Max() - part.Min()) / 2, meanShown / period, meanOutput / period, ofShown / ofOutput, shown[from], shown[off]);
    }

    private static Complex Turned(double omega, double seconds) => Complex.FromPolarCoordinates(1, -omega * seconds);
}
