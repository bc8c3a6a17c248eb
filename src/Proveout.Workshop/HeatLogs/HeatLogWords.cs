using System.Globalization;
using Proveout.Engine.Heat;

namespace Proveout.Workshop;

/// <summary>Logs of heaters, in words.</summary>
public static class HeatLogWords
{
    /// <summary>What a log is, in sentences.</summary>
    internal static IReadOnlyList<string> What(LogFile file, WarmUpStretch? warmUp, HoldStretch? hold, StepStretch? step, RelayEstimate? relay)
    {
        var (log, run) = (file.Log, file.Trace.Run);
        List<string> said = [Text($"{log.Rows} rows{(log.Runs.Count > 1 ? $" in {log.Runs.Count + log.DroppedRuns} runs" : "")}, {Digits(run.StepSeconds)} s apart as a rule; `{file.Trace.Sensor.Name}` over {HeatWords.Time(run.LastsSeconds)}.")];
        foreach (var (number, each) in log.Runs.Index().Where(_ => log.Runs.Count > 1))
            said.Add(Text($"Run {number + 1}, lines {each.FirstLine} to {each.LastLine}, {HeatWords.Time(each.LastsSeconds)}{Begins(each)}{(each.FirstLine == run.FirstLine ? "; this one is judged" : "")}."));
        if (log.DroppedRuns > 0)
            said.Add(Text($"{log.DroppedRuns} shorter runs were left out."));
        if (warmUp is not null)
            said.Add(WarmUpWords(file, warmUp));
        if (step is not null)
            said.Add(Text($"In line {step.Line} the output goes from {100 * step.FromOutput:0} % to {100 * step.ToOutput:0} %, and is left alone for {HeatWords.Time(step.UntilSeconds - step.AtSeconds)}: a step."));
        if (relay is not null)
            said.Add(Text($"From line {file.Trace.LineAt(relay.FromSeconds)} on the output goes to and fro as under a relay, {relay.Cycles} cycles that are alike."));
        if (hold is not null)
            said.Add(Text($"Held at {hold.Celsius:0.0} °C from line {file.Trace.LineAt(hold.FromSeconds)} on, with {100 * hold.Output.Value:0} % of full output."));
        return said;
    }

    /// <summary>The temperature that a log is to be held at; null when neither log nor machine file tell.</summary>
    internal static double? TargetOf(LogFile file) =>
        file.Trace.Target?.Mean.Where(double.IsFinite).DefaultIfEmpty(0).Max() is > 0 and var asked ? asked : file.Body?.Target.DegreesCelsius;

    /// <summary>A title within a sentence.</summary>
    internal static string Small(string title) => char.ToLowerInvariant(title[0]) + title[1..];

    /// <summary>Why a reading was not taken.</summary>
    internal static string Of(LogReadingLack lack) => lack switch
    {
        LogReadingLack.NotOffLongEnough => "the log does not show the heater told to stay off for long enough before",
        LogReadingLack.NotCold => "it had been heated before",
        LogReadingLack.NotFullLongEnough => "output was throttled, or the log ends, before",
        LogReadingLack.Gap => "nothing was logged just then",
        LogReadingLack.NoOthers => "the log has no other temperature",
        LogReadingLack.OthersHeated => "another heater was on",
        _ => "it was not held steadily for some minutes, or its output is not logged",
    };

    /// <summary>Why no step was found.</summary>
    internal static string Of(StepLack lack) => lack switch
    {
        StepLack.NoOutput => "the log has no output",
        StepLack.NotAtRest => "what is shown was moving before the output changed; let it come to rest first",
        StepLack.NothingMoves => "what is shown hardly moves after the output changed",
        _ => "the output is never left alone for long enough after it changed",
    };

    /// <summary>Why a relay's swing does not tell.</summary>
    internal static string Of(RelayLack lack) => lack switch
    {
        RelayLack.TooFewCycles => "the output goes to and fro as under a relay, yet there are fewer than three whole cycles after the first; log more",
        RelayLack.NotSettled => "the output goes to and fro as under a relay, yet period or swing still change from cycle to cycle; log on until they do not",
        RelayLack.TooFewRows => "the output goes to and fro as under a relay, yet there are fewer than eight rows to a cycle; log faster",
        _ => "the output does not go to and fro as under a relay",
    };

    /// <summary>Settings in sentences, for all the forms that controllers ask for.</summary>
    public static IReadOnlyList<string> Settings(LoopSettingsView settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return
        [
            Text($"Standard form, output from 0 to 1: gain {Digits(settings.Gain)} for each K, integral time {settings.IntegralSeconds:0.#} s{(settings.DerivativeSeconds > 0 ? $", derivative time {settings.DerivativeSeconds.ToString("0.##", CultureInfo.InvariantCulture)} s" : "")}."),
            .. settings.Parallel.Select(form => Text($"Parallel form, output from 0 to {form.FullOutput:0}: proportional {Digits(form.Proportional)}, integral {Digits(form.Integral)} a second{(form.Derivative > 0 ? $", derivative {Digits(form.Derivative)} s" : "")}.")),
            Text($"Ms is {settings.Sensitivity:0.00} with the process as fitted and at most {Math.Ceiling(100 * settings.WorstSensitivity) / 100:0.00} with any that the log allows{(settings.IsRobust ? "" : "; above 1.8 is nervous: for comparison only")}.{(settings.OvershootKelvin is { } overshoot ? Text($" From cold it goes {Math.Ceiling(10 * overshoot) / 10:0.0} K beyond its target{(settings.SettledSeconds is { } settled ? $" and stays within 1 K after {HeatWords.Time(settled)}" : "")}.") : "")}"),
        ];
    }

    private static string Begins(LogRun run) => run.Start switch
    {
        LogRunStart.TimeBack => ", where the time jumps back: controller or logger began anew",
        LogRunStart.HeadingsAgain => ", where the headings stand again: the logger began anew",
        LogRunStart.TemperatureBack => ", where what is shown jumps back to its start: controller or logger began anew",
        _ => "",
    };

    private static string WarmUpWords(LogFile file, WarmUpStretch warmUp)
    {
        var off = warmUp.OffSeconds > 0 ? Text($"told to stay off for {HeatWords.Time(warmUp.OffSeconds)} at {warmUp.FirstCelsius:0.0} °C, ") : "";
        if (warmUp.OnSeconds is not { } on)
            return Text($"The heater is {off}never told to give all it can.");
        var taken = warmUp.IsOutputLogged ? "" : " (the log has no output: full is taken for granted from when a target is set until 10 K below it)";
        return Text($"The heater is {off}from line {file.WarmUp.LineAt(on)} on at full output for {HeatWords.Time(warmUp.FullSeconds)}{taken}.");
    }

    // Three digits that count.
    private static string Digits(double value) => value.ToString(value >= 100 ? "0" : "G3", CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
