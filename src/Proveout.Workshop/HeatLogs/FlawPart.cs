using System.Globalization;
using Proveout.Engine.Heat;

namespace Proveout.Workshop;

/// <summary>What is wrong with the readings of a log themselves.</summary>
internal static class FlawPart
{
    private const string Joint = "Isolate, lock off and prove dead; then tug at the sensor's wires and plugs, and measure its resistance while wiggling them.";

    public static HeatLogPart Of(LogFile file)
    {
        LogFlaw[] own = [.. file.Trace.Run.Flaws.Where(flaw => flaw.Sensor == file.Trace.Sensor.Name)];
        LogFlaw[] all = file.Stuck is { } stuck ? [.. own, stuck] : own;
        return HeatLogPart.Nothing with
        {
            Findings = [.. all.Select(Words)],
            Steps = all.Length > 0 ? [Joint] : [],
            Remarks = [.. Remarks(file)],
            IsFine = all.Length == 0,
        };
    }

    private static string Words(LogFlaw flaw) => flaw.Kind switch
    {
        LogFlawKind.OpenOrShort => Text($"Line {flaw.Line}: `{flaw.Sensor}` {(double.IsNaN(flaw.Celsius) ? "is said to be open or short" : $"shows {flaw.Celsius:0.#} °C, as an open or short sensor does")}; {Rows(flaw.Rows)} left out."),
        LogFlawKind.Spikes => Text($"Line {flaw.Line}: `{flaw.Sensor}` jumps to {flaw.Celsius:0.#} °C and back, sooner than anything heated can; {Rows(flaw.Rows)} left out. A joint of the sensor makes and breaks contact, or a wire picks up noise."),
        LogFlawKind.Jump => Text($"Line {flaw.Line}: `{flaw.Sensor}` jumps by {flaw.Celsius:+0;-0} K and stays there{(flaw.Rows > 1 ? $", and does so {flaw.Rows} times" : "")}: nothing heated can. The sensor moved, or its joint changed."),
        _ => Text($"Line {flaw.Line}: `{flaw.Sensor}` stands at exactly {flaw.Celsius:0.##} °C for {HeatWords.Time(flaw.ForSeconds)} while the heater is on: the reading is stuck. What follows is left out."),
    };

    private static IEnumerable<string> Remarks(LogFile file)
    {
        var (log, run) = (file.Log, file.Trace.Run);
        foreach (var gap in run.Gaps.Take(3))
            yield return Text($"Line {gap.Line}: nothing was logged for {HeatWords.Time(gap.ToSeconds - gap.FromSeconds)} before it.");
        if (run.Gaps.Count > 3)
            yield return Text($"There are {run.Gaps.Count - 3} more gaps.");
        if (log.IsFullOutputTaken && log.FullOutput is { } full)
            yield return Text($"The output has no scale in its heading; as its largest value is {full:0.##}, that is taken for full. If it is not, state full output (--full-output).");
        if (log.IsCutShort)
            yield return "The last row breaks off and is left out.";
        if (run.RepeatedTimes > 0)
            yield return Text($"{run.RepeatedTimes} rows bear the time of the row before, or an earlier one by less than 2 s: the clock is coarser than the log, or the logger was busy.");
        if (log.Ignored.Count > 0)
            yield return $"Columns that were not used: {string.Join(", ", log.Ignored.Select(heading => $"`{heading}`"))}.";
    }

    private static string Rows(long rows) => rows == 1 ? "that row is" : Text($"{rows} rows like that are");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
