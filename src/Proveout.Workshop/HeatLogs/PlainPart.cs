using System.Globalization;
using Proveout.Engine.Heat;

namespace Proveout.Workshop;

/// <summary>What a log tells of its heater without a machine file: only what no sound heater does.</summary>
internal static class PlainPart
{
    // A body nearby warms another one by a few kelvin at most (HeaterCampaign); a body in a room stays as it is.
    private const double OthersKelvin = 5;
    private const double StillKelvin = 2;
    private const double LeastSeconds = 30;

    private const string Mend = "Switch off and let it cool. Isolate, lock off and prove dead before a hand goes to heater, sensor or their plugs.";

    public static HeatLogPart Of(LogFile file, WarmUpStretch? warmUp)
    {
        string[] found = warmUp is null ? [] : [.. Findings(file.WarmUp, warmUp)];
        return HeatLogPart.Nothing with
        {
            Findings = found,
            Steps = found.Length > 0 ? [Mend] : [],
            Remarks = ["Without a machine file the log is not held against what a sound heater would do."],
            IsFine = found.Length == 0,
        };
    }

    private static IEnumerable<string> Findings(HeaterTrace trace, WarmUpStretch warmUp)
    {
        var still = StillKelvin + (4 * trace.NoiseKelvin());
        var first = trace.Seconds.Length > 0 ? trace.Seconds[0] : 0;
        if (warmUp.OffSeconds - first >= LeastSeconds && trace.At(trace.Sensor, warmUp.OffSeconds) - warmUp.FirstCelsius > still)
            yield return Text($"It rises by {trace.At(trace.Sensor, warmUp.OffSeconds) - warmUp.FirstCelsius:0.0} K while the heater is told to stay off: its switch conducts for good, or something else heats it.");
        if (warmUp.OnSeconds is not { } on || warmUp.FullSeconds < LeastSeconds || !(trace.At(trace.Sensor, on + warmUp.FullSeconds) - warmUp.StartCelsius < still))
            yield break;
        var other = trace.Others.FirstOrDefault(series => trace.At(series, on + warmUp.FullSeconds) - trace.At(series, on) > OthersKelvin);
        yield return other is null
            ? Text($"Line {trace.LineAt(on)}: after {HeatWords.Time(warmUp.FullSeconds)} at full output nothing has warmed up: the heater's circuit is open, the sensor is out of what is heated, or the output logged is another heater's.")
            : Text($"Line {trace.LineAt(on)}: after {HeatWords.Time(warmUp.FullSeconds)} at full output it has not warmed up, and `{other.Name}` has: the plugs of the two sensors are exchanged, or those of the two heaters.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
