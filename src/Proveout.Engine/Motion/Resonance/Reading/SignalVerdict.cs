using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Judges a recording that was read to its end: whether it can be used, and what is to be said about it.</summary>
internal sealed class SignalVerdict(string name, SignalRows rows, SampleClock clock, SignalStream samples, long count, long missing)
{
    private const int LeastSegments = 4;

    // Peaks of 20 Hz and more with a few percent of damping are two bins wide at 2 Hz.
    private const double CoarsestHertz = 2;
    private const double LowestRate = 100;

    // What becomes uneven after an even beginning may do so by this much (from memory).
    private const double MostLaterScatter = 0.05;
    private const double MostRepeats = 0.02;
    private const double MostCut = 0.01;
    private const string RecordAgain = "Let the sensor's own clock stamp each sample, or record with less load on what writes the file.";

    private double Rate => 1 / (samples.Interval * rows.Columns.SecondsByUnit);

    public static Outcome<AccelerationRecord> NoTime(string name, int rows) => Refused(name, 0,
        rows < 2 ? "no-rows" : "time-stands-still",
        rows < 2 ? "There are no rows of numbers below the headings." : "The time does not advance from row to row.",
        rows < 2 ? "Record again, and see that the recorder was stopped before the file was copied." : "See that the column headed `time` is the time.");

    public static Outcome<AccelerationRecord> Uneven(string name, double scatter, int line) => Refused(name, line, "uneven-sampling",
        Text($"The sampling is uneven: the intervals scatter by {100 * scatter:0} % of their mean; {100 * SampleClock.MostScatter:0} % can be evened out."), RecordAgain);

    public Outcome<AccelerationRecord> Result()
    {
        var length = samples.Averages[0].Segments;
        var refusal = Timing() ?? TooShort(length) ?? Clipped() ?? Still();
        if (refusal is not null)
            return refusal;
        var unit = rows.Columns.AccelerationByUnit;
        DirectionRecord[] directions =
        [
            .. rows.Columns.Directions.Select((direction, index) => new DirectionRecord(
                direction.Name,
                samples.Averages[index].Result(Rate, unit),
                unit * samples.Watches[index].Mean,
                unit * unit * samples.Watches[index].Variance,
                unit * unit * samples.Averages[index].WindowedMeanSquare,
                [.. samples.Catcher.Rings.Select(rings => rings[index])])),
        ];
        var gravity = new GravityCheck(rows.Columns.AccelerationUnit, [.. directions.Select(direction => direction.Mean)]);
        return gravity.Refusal(name) is { } wrong
            ? Outcome.Refused<AccelerationRecord>([wrong])
            : Outcome.Of(new AccelerationRecord(name, Rate, count, samples.Samples / Rate, directions, [.. Notes(), .. gravity.Notes()]));
    }

    private Outcome<AccelerationRecord>? Timing()
    {
        if (clock.IsEven && samples.Scatter > MostLaterScatter)
            return Refused(name, 0, "uneven-sampling", Text($"The sampling is even at first and uneven later: over the whole recording the intervals scatter by {100 * samples.Scatter:0} % of their mean."), $"{RecordAgain} Or cut the file where it becomes uneven.");
        if (samples.Repeats.Count > MostRepeats * count)
            return Refused(name, samples.Repeats.FirstLine, "repeated-times", Text($"{samples.Repeats.Count} rows repeat the time of the row before them."), RecordAgain);
        return Rate < LowestRate
            ? Refused(name, 0, "slow-sampling", Text($"The recording holds {Rate:0.#} samples a second, which shows nothing above {Rate / 2:0.#} Hz."), "Record at least 400 samples a second; see that the unit of the time is right.")
            : null;
    }

    private Outcome<AccelerationRecord>? TooShort(int segments)
    {
        var bin = segments == 0 ? CoarsestHertz : samples.Averages[0].Result(Rate, 1).BinHertz;
        if (segments >= LeastSegments && bin <= CoarsestHertz)
            return null;
        var (longest, whole) = (samples.LongestRun / Rate, samples.Samples / Rate);
        return samples.Gaps.Count + samples.Resets.Count == 0
            ? Refused(name, 0, "short-recording", Text($"The recording lasts {whole:0.##} s, which is too short to average over."), "Record at least 10 s, better 30 s.")
            : Refused(name, samples.Gaps.FirstLine, "broken-recording", Text($"The recording breaks off {Times(samples.Gaps.Count + samples.Resets.Count)}; its longest unbroken stretch lasts {longest:0.##} s, which is too short."), RecordAgain);
    }

    private Outcome<AccelerationRecord>? Clipped()
    {
        foreach (var (index, direction) in rows.Columns.Directions.Index())
            if (samples.Watches[index].CutShare is var share && share > MostCut)
                return Refused(name, 0, "clipped-recording", Text($"Direction {direction.Name} is clipped: {100 * share:0.#} % of its samples stand at the end of the sensor's range."), "Set a larger range at the sensor, or excite the machine less, and record again.");
        return null;
    }

    private Outcome<AccelerationRecord>? Still() => samples.Watches.All(watch => watch.StepsAcross == 0)
        ? Refused(name, 0, "nothing-moves", "No direction ever changes by the smallest step.", "See that the sensor is connected, and that its axes stand in the columns.")
        : null;

    private IEnumerable<string> Notes()
    {
        if (!clock.IsEven)
            yield return Text($"The intervals between samples scatter by {100 * clock.Scatter:0.#} % of their mean; the samples were put on an even grid by interpolation, so little is claimed above {Rate / 8:0} Hz.");
        else if (clock.Quantum > 0)
            yield return Text($"The times are written in coarse steps, {clock.Quantum / clock.Interval:0.#} intervals each; the samples were taken as evenly spaced, {Rate:0.#} a second. A gap shorter than a step would not be seen.");
        if (samples.Gaps.Count > 0)
            yield return Text($"The recording breaks off or stamps late {Times(samples.Gaps.Count)}, first at line {samples.Gaps.FirstLine}, {samples.Gaps.Missing * rows.Columns.SecondsByUnit:0.###} s in all; nothing was averaged across that.");
        if (samples.Resets.Count > 0)
            yield return Text($"The time goes back {Times(samples.Resets.Count)}, first at line {samples.Resets.FirstLine}; what follows was taken as a recording of its own.");
        if (samples.Repeats.Count > 0)
            yield return Text($"The time of the row before is repeated {Times(samples.Repeats.Count)}, first at line {samples.Repeats.FirstLine}; the repetition was left out.");
        if (missing > 0)
            yield return Text($"Something was not measured {Times(missing)}; such rows were left out.");
        if (rows.EndsCutOff)
            yield return "The last line broke off and was left out.";
        foreach (var (index, direction) in rows.Columns.Directions.Index())
        {
            if (samples.Watches[index].CutShare is > 0 and var share)
                yield return Text($"Direction {direction.Name} is clipped a little ({100 * share:0.###} % of its samples): its frequencies can be trusted, its damping less.");
            if (samples.Watches[index].StepsAcross is var steps && steps < 16)
                yield return steps == 0 ? $"Direction {direction.Name} never changes: is it connected?" : Text($"Direction {direction.Name} moves over only {steps:0} steps of the sensor: excite the machine more, or set a smaller range.");
        }
    }

    private static Outcome<AccelerationRecord> Refused(string name, int line, string rule, string message, string mend) =>
        Outcome.Refused<AccelerationRecord>([new Diagnostic(rule, new SourcePlace(name, line, line == 0 ? 0 : 1), message, mend)]);

    private static string Times(long count) => count == 1 ? "once" : Text($"{count} times");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
