using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Heat;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Holds the warm-up in a log against what the machine file predicts, and names the mistakes that explain it.</summary>
internal static class BandPart
{
    // A machine that has cooled down begins between these.
    private const double ColdestRoom = 5;
    private const double WarmestRoom = 40;

    // Sound sensors of a cold machine agree within this, common practice.
    private const double SameRoomKelvin = 5;

    private const int MostSuspects = 8;

    public static (HeatLogPart Part, DiagnosisView? Diagnosis) Of(LogFile file, WarmUpStretch? warmUp, HoldStretch? hold)
    {
        if (file.Body is not { } body)
            return (HeatLogPart.Nothing with { Remarks = ["Without a machine file the log is not held against what a sound heater would do."] }, null);
        if (warmUp is null)
            return (CannotTell("the log has neither an output nor a target, so nobody knows when the heater was told to heat"), null);
        if (warmUp.FirstCelsius is < ColdestRoom or > WarmestRoom)
            return (CannotTell(Text($"it begins at {warmUp.FirstCelsius:0.#} °C, which is no room's temperature: the machine had not cooled down, the unit is another, or the sensor is of another kind or set wrongly. Let it cool, hold a thermometer beside it, and check the sensor as the page Heat says")), null);
        if (Stranger(file.Trace, warmUp) is { } stranger)
            return (CannotTell(stranger), null);
        var design = LoggedHeater.Of(HeatedBodies.HeaterOf(body), file.Trace, warmUp, hold);
        var dictionary = LogCampaign.Of(design, warmUp.FullSeconds);
        var taken = LogReadings.Of(design, file.Trace, warmUp, hold);
        if (taken.Readings.Count == 0)
            return (CannotTell($"it gives none of the readings of a warm-up. {string.Join(" ", Lacking(dictionary, taken))}"), null);
        return Judge(file, warmUp, design, dictionary, taken);
    }

    private static (HeatLogPart Part, DiagnosisView? Diagnosis) Judge(LogFile file, WarmUpStretch warmUp, HeaterDesign design, FaultDictionary dictionary, LogReadings taken)
    {
        var posterior = Diagnosis.Of(dictionary, taken.Readings);
        var leaving = BandLeaving.Of(design, file.Trace, warmUp);
        var diagnosis = new DiagnosisView(
            taken.Readings.Count,
            [.. taken.Readings.Select(reading => FailedOf(dictionary, reading)).OfType<FailedReading>()],
            Suspects.Of(dictionary, null, posterior, taken.Readings, MostSuspects),
            null)
        {
            Unknown = posterior.IsOff ? posterior.Unknown : 0,
        };
        var isSound = !posterior.IsOff && leaving is null;
        var figures = taken.Readings.Where(reading => double.IsFinite(reading.Value)).Select(reading => FigureOf(dictionary, design, reading));
        return (
            new HeatLogPart(
                [.. figures],
                [.. Findings(file, dictionary, taken, leaving, isSound)],
                posterior.IsOff ? ["Switch off and let it cool. Isolate, lock off and prove dead before a hand goes to heater or sensor; look at the suspects in their order, mend, and log a warm-up anew."] : [],
                [.. Lacking(dictionary, taken)],
                isSound,
                warmUp is { OnSeconds: not null, FullSeconds: > 1 } ? [HeatLogPlots.Band(file, warmUp, design)] : []),
            diagnosis);
    }

    private static IEnumerable<string> Findings(LogFile file, FaultDictionary dictionary, LogReadings taken, BandLeaving? leaving, bool isSound)
    {
        if (leaving is not null)
            yield return Text($"Line {leaving.Line}, {HeatWords.Time(leaving.Seconds)} after full output began: it shows {leaving.Celsius:0.#} °C, {(leaving.Celsius > leaving.Limit ? "more" : "less")} than any sound heater ({leaving.Limit:0.#} °C).");
        if (!isSound)
        {
            yield return $"The {file.Body!.Name} does not warm up as the machine file says it should.";
            yield break;
        }

        yield return $"The {file.Body!.Name} warms up as a sound one does: {(taken.Readings.Count == 1 ? "the one reading" : $"all {taken.Readings.Count} readings")} of this log and the whole of its curve.";
        Fault[] left = [.. dictionary.Faults.Index().Where(fault => taken.Readings.All(reading => dictionary.IntervalOf(fault.Index, dictionary.IndexOfCheck(reading.CheckId)!.Value).Contains(reading.Value))).Select(fault => fault.Item)];
        if (left.Length > 0)
            yield return $"What this log cannot exclude, because it would look the same within the tolerances: {string.Join(" ", left.OrderByDescending(fault => fault.Severity).Select(fault => $"{fault.Sentence} What shows it: {fault.OtherEvidence}."))}";
    }

    private static IEnumerable<string> Lacking(FaultDictionary dictionary, LogReadings taken) =>
        taken.Lacking.Where(lack => dictionary.IndexOfCheck(lack.Key) is not null).Select(lack => $"Not read: {HeatLogWords.Small(dictionary.Checks[dictionary.IndexOfCheck(lack.Key)!.Value].Title)}; {HeatLogWords.Of(lack.Value)}.");

    // Another channel of a cold machine shows the same room.
    private static string? Stranger(HeaterTrace trace, WarmUpStretch warmUp)
    {
        foreach (var other in trace.Others)
            if (other.Mean.FirstOrDefault(double.IsFinite) is var shown && shown != 0 && Math.Abs(shown - warmUp.FirstCelsius) > SameRoomKelvin)
                return Text($"it begins at {warmUp.FirstCelsius:0.#} °C where `{other.Name}` begins at {shown:0.#} °C: something had not cooled down, or one of the two sensors is of another kind or set wrongly. Let it cool, and check both as the page Heat says");
        return null;
    }

    private static SheetFigure FigureOf(FaultDictionary dictionary, HeaterDesign design, Reading reading)
    {
        var check = dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value];
        return check.Unit == "K" ? SheetFigures.Of(check.Title, new Uncertain(reading.Value, Math.Sqrt(2) * design.NoiseKelvin), "K") : SheetFigures.Of(check.Title, reading.Value, check.Unit);
    }

    private static FailedReading? FailedOf(FaultDictionary dictionary, Reading reading)
    {
        var check = dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value];
        return check.Judge(reading.Value) == Verdict.Fail ? new FailedReading(check, CheckWords.Shown(check, reading.Value), CheckWords.Expected(check)) : null;
    }

    private static HeatLogPart CannotTell(string why) => HeatLogPart.Nothing with { Findings = [$"Whether the heater is sound cannot be told: {why}."], IsFine = false };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
