using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>What a log calls full output.</summary>
/// <param name="Full">Its number; null when the log has no output.</param>
/// <param name="IsTaken">True when it follows from the largest value.</param>
/// <param name="Each">The number of each output.</param>
internal sealed record LogScale(double? Full, bool IsTaken, IReadOnlyList<double> Each)
{
    private static readonly double[] Usual = [1, 100, 255];

    /// <summary>The scale of a log, or why it cannot be told.</summary>
    public static Outcome<LogScale> Of(LogColumns columns, IReadOnlyList<LogRun> runs, LogHints hints)
    {
        LogColumn[] outputs = [.. columns.Values.Where(column => column.Role == LogRole.Output)];
        if (outputs.Length == 0)
            return Outcome.Of(new LogScale(null, false, []));
        double Largest(int output) => runs.SelectMany(run => run.Outputs[output].Most).Where(double.IsFinite).DefaultIfEmpty(0).Max();
        double[] largest = [.. outputs.Index().Select(output => Largest(output.Index))];
        double?[] each = [.. outputs.Select(column => column.FullOutput ?? hints.FullOutput ?? (column.Unit == "W" ? hints.Watts : null))];
        // Columns that say nothing have one scale: that of the largest value of them all.
        var open = outputs.Index().Where(output => each[output.Index] is null).Select(output => largest[output.Index]).ToArray();
        double? taken = open.Length == 0 ? null : Usual.Where(full => Math.Abs(open.Max() - full) <= 0.01 * full).Select(full => (double?)full).FirstOrDefault();
        if (open.Length > 0 && (taken is null || outputs.Index().Any(output => each[output.Index] is null && output.Item.Unit == "W")) && open.Max() > 0)
            return Refused(columns, outputs.Index().First(output => each[output.Index] is null).Item, open.Max());
        double[] known = [.. each.Select(full => full ?? taken ?? 1)];
        foreach (var (index, column) in outputs.Index())
            if (largest[index] > 1.02 * known[index])
                return Outcome.Refused<LogScale>([new("output-beyond-full", new SourcePlace(columns.File, 0, 0), Text($"{Quote.Of(column.Name)} goes up to {largest[index]:0.##}, beyond full output, {known[index]:0.##}."), "State the right full output (--full-output), or put it in the heading, such as `output [0-255]`.")]);
        return Outcome.Of(new LogScale(known[0], open.Length > 0, known));
    }

    /// <summary>The run with its outputs as shares of full.</summary>
    public LogRun Apply(LogRun run) => run with { Outputs = [.. run.Outputs.Zip(Each, (series, full) => series.Times(1 / full))] };

    private static Outcome<LogScale> Refused(LogColumns columns, LogColumn column, double largest) => Outcome.Refused<LogScale>(
    [
        new(
            "full-output",
            new SourcePlace(columns.File, 0, 0),
            column.Unit == "W"
                ? Text($"{Quote.Of(column.Name)} is in watts, and nothing says how many are full output; the most is {largest:0.##} W.")
                : Text($"{Quote.Of(column.Name)} goes up to {largest:0.##}, and nothing says what full output is: 1, 100 or 255?"),
            "State full output (--full-output), or put it in the heading, such as `output [0-255]` or `output [%]`."),
    ]);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
