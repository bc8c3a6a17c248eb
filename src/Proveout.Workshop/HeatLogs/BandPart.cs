using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Heat;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Holds the warm-up in a log against what the machine file predicts, and names the mistakes that explain it.</summary>
internal static class BandPart
{
    internal const int MostSuspects = 8;

    public static (HeatLogPart Part, DiagnosisView? Diagnosis) Of(LogFile file, WarmUpStretch? warmUp, HoldStretch? hold, double? room)
    {
        if (file.Body is not { } body)
            return (PlainPart.Of(file, warmUp), null);
        if (warmUp is null)
            return (CannotTell("the log has neither an output nor a target, so nobody knows when the heater was told to heat"), null);
        if (RestPart.Of(file, body, warmUp, room) is { } wrong)
            return wrong;
        var design = LoggedHeater.Of(HeatedBodies.HeaterOf(body), file.WarmUp, warmUp, hold);
        var dictionary = LogCampaign.Of(design, warmUp.FullSeconds);
        var taken = LogReadings.Of(design, file.WarmUp, warmUp, hold);
        if (taken.Readings.Count == 0)
            return (CannotTell($"it gives none of the readings of a warm-up. {string.Join(" ", Lacking(dictionary, taken))}"), null);
        return Judge(file, warmUp, design, dictionary, taken);
    }

    private static (HeatLogPart Part, DiagnosisView? Diagnosis) Judge(LogFile file, WarmUpStretch warmUp, HeaterDesign design, FaultDictionary dictionary, LogReadings taken)
    {
        var posterior = Diagnosis.Of(dictionary, taken.Readings);
        var leaving = BandLeaving.Of(design, file.WarmUp, warmUp);
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

    private static SheetFigure FigureOf(FaultDictionary dictionary, HeaterDesign design, Reading reading)
    {
        var check = dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value];
        return check.Unit == "K" ? SheetFigures.Of(check.Title, new Uncertain(reading.Value, Math.Sqrt(2) * design.NoiseKelvin), "K") : SheetFigures.Of(check.Title, reading.Value, check.Unit);
    }

    internal static FailedReading? FailedOf(FaultDictionary dictionary, Reading reading)
    {
        var check = dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value];
        return check.Judge(reading.Value) == Verdict.Fail ? new FailedReading(check, CheckWords.Shown(check, reading.Value), CheckWords.Expected(check)) : null;
    }

    internal static HeatLogPart CannotTell(string why) => HeatLogPart.Nothing with { Findings = [$"Whether the heater is sound cannot be told: {why}."], IsFine = false };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
