using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>One heater in a run of a log.</summary>
/// <param name="File">Name of the file as the user gave it.</param>
/// <param name="Run">The run.</param>
/// <param name="Sensor">What is shown of it, in °C.</param>
/// <param name="Output">Its output as a share of full; null when the log has none.</param>
/// <param name="Target">What is asked for; null when the log has none.</param>
/// <param name="Others">Temperatures of everything else.</param>
/// <param name="OtherOutputs">Outputs of everything else.</param>
public sealed record HeaterTrace(
    string File, LogRun Run, LogSeries Sensor, LogSeries? Output, LogSeries? Target, IReadOnlyList<LogSeries> Others, IReadOnlyList<LogSeries> OtherOutputs)
{
    private const double EnoughForNoise = 8;

    /// <summary>The heater meant in a run of a log, or why that cannot be told.</summary>
    /// <param name="log">The log.</param>
    /// <param name="run">Which run, from 0.</param>
    /// <param name="hints">What a person says of it.</param>
    /// <param name="body">Name of the heated body in the machine file; null when there is none.</param>
    public static Outcome<HeaterTrace> Of(HeatLog log, int run, LogHints hints, string? body = null)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(hints);
        var part = log.Runs[run];
        var place = new SourcePlace(log.File, 1, 1);
        // Of several temperatures that one is meant whose heading belongs to the only output.
        if ((Choose(part.Sensors, hints.Sensor, body) ?? part.Sensors.FirstOrDefault(series => hints.Sensor is null && part.Outputs is [{ Stem.Length: > 0 } only] && only.Stem == series.Stem)) is not { } sensor)
            return Outcome.Refused<HeaterTrace>([new("which-sensor", place, $"There are {part.Sensors.Count} temperatures: {Names(part.Sensors)}.", "Give the heading of the temperature meant (--sensor).")]);
        var output = part.Outputs.Count == 0 ? null : Choose(part.Outputs, hints.Output, null) ?? part.Outputs.FirstOrDefault(series => series.Stem == sensor.Stem) ?? Choose(part.Outputs, null, body);
        if (output is null && part.Outputs.Count > 0)
            return Outcome.Refused<HeaterTrace>([new("which-output", place, $"There are {part.Outputs.Count} outputs: {Names(part.Outputs)}; none is headed like {Quote.Of(sensor.Name)}.", "Give the heading of the output meant (--output).")]);
        var target = part.Targets.Count == 1 ? part.Targets[0] : part.Targets.FirstOrDefault(series => series.Stem == sensor.Stem);
        return Outcome.Of(new HeaterTrace(log.File, part, sensor, output, target, [.. part.Sensors.Where(series => series != sensor)], [.. part.Outputs.Where(series => series != output)]));
    }

    /// <summary>Times from the first row of the run.</summary>
    public double[] Seconds => Run.Seconds;

    /// <summary>Standard deviation of what is shown about a smooth curve, in K; zero when there are too few rows to tell.</summary>
    /// <remarks>From the median of second differences, which a curve hardly has (scale of the normal distribution: 1.4826), and not below what the last digit leaves (its step over √12).</remarks>
    public double NoiseKelvin()
    {
        double[] shown = [.. Sensor.Mean.Where(double.IsFinite)];
        if (shown.Length < EnoughForNoise)
            return 0;
        double[] second = [.. Enumerable.Range(1, shown.Length - 2).Select(at => Math.Abs(shown[at - 1] - (2 * shown[at]) + shown[at + 1])).Order()];
        var digit = Enumerable.Range(1, shown.Length - 1).Select(at => Math.Abs(shown[at] - shown[at - 1])).Where(step => step > 1e-9).DefaultIfEmpty(0).Min();
        return Math.Max(1.4826 * second[second.Length / 2] / Math.Sqrt(6), digit / Math.Sqrt(12));
    }

    /// <summary>A column at a time, between rows on a straight line; not a number outside the run, in a gap, or where nothing was measured.</summary>
    public double At(LogSeries series, double seconds)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (Seconds.Length == 0 || seconds < Seconds[0] || seconds > Seconds[^1] || Run.Gaps.Any(gap => gap.FromSeconds < seconds && seconds < gap.ToSeconds))
            return double.NaN;
        var after = Array.BinarySearch(Seconds, seconds);
        if (after >= 0)
            return series.Mean[after];
        after = ~after;
        var share = (seconds - Seconds[after - 1]) / (Seconds[after] - Seconds[after - 1]);
        return series.Mean[after - 1] + (share * (series.Mean[after] - series.Mean[after - 1]));
    }

    /// <summary>Mean of a column between two times; not a number when it has nothing there.</summary>
    public double MeanOf(LogSeries series, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(series);
        return Within(from, to).Select(at => series.Mean[at]).Where(double.IsFinite).DefaultIfEmpty(double.NaN).Average();
    }

    /// <summary>Numbers of the rows between two times, both included.</summary>
    public IEnumerable<int> Within(double from, double to)
    {
        for (var at = Place(from); at < Seconds.Length && Seconds[at] <= to; at++)
            yield return at;
    }

    /// <summary>Line of the row at or after a time.</summary>
    public int LineAt(double seconds) => Run.Lines[Math.Min(Place(seconds), Run.Lines.Length - 1)];

    /// <summary>The trace without what comes after a time.</summary>
    public HeaterTrace Until(double seconds)
    {
        var count = Place(seconds);
        LogSeries Cut(LogSeries series) => series with { Mean = series.Mean[..count], Least = series.Least[..count], Most = series.Most[..count] };
        return this with
        {
            Run = Run with { Seconds = Seconds[..count], Lines = Run.Lines[..count] },
            Sensor = Cut(Sensor),
            Output = Output is null ? null : Cut(Output),
            Target = Target is null ? null : Cut(Target),
            Others = [.. Others.Select(Cut)],
            OtherOutputs = [.. OtherOutputs.Select(Cut)],
        };
    }

    private int Place(double seconds)
    {
        var at = Array.BinarySearch(Seconds, seconds);
        at = at >= 0 ? at : ~at;
        while (at > 0 && at < Seconds.Length && Seconds[at - 1] >= seconds)
            at--;
        return at;
    }

    private static LogSeries? Choose(IReadOnlyList<LogSeries> all, string? named, string? body) =>
        named is not null ? all.FirstOrDefault(series => series.Name.Equals(named, StringComparison.OrdinalIgnoreCase)) ?? all.FirstOrDefault(series => named.StartsWith(series.Name, StringComparison.OrdinalIgnoreCase))
        : all.Count == 1 ? all[0]
        : body is not null && all.Where(series => Belongs(series, body)).ToArray() is [var only] ? only
        : null;

    private static bool Belongs(LogSeries series, string body) =>
        series.Stem.Contains(body, StringComparison.OrdinalIgnoreCase) || series.Name.Contains(body, StringComparison.OrdinalIgnoreCase);

    private static string Names(IEnumerable<LogSeries> all) => string.Join(", ", all.Select(series => Quote.Of(series.Name)));
}
