using System.Globalization;
using Proveout.Engine.Heat;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>The process behind a step or a relay's swing, settings for it, and the guard that goes with it.</summary>
internal sealed record ProcessPart(HeatLogPart Part, IReadOnlyList<LoopSettingsView> Settings, GuardView? Guard)
{
    // A controller that strays further than this is nervous, or its heater cannot follow: common practice.
    private const double StrayKelvin = 1.5;

    // Less of the way does not tell gain and time constant apart.
    private const double WholeWay = 0.9;

    private const string NoGuard = "The log does not tell what to set a guard to: its gain is not known to a third, or the heater rises too slowly near its target. Take the guard of the page Heat.";

    /// <summary>The first settings that are robust, in standard form, and the guard.</summary>
    public IEnumerable<SheetFigure> ToSet
    {
        get
        {
            if (Settings.FirstOrDefault(settings => settings.IsRobust) is { } best)
            {
                yield return SheetFigures.Of("gain, standard form, output 0 to 1", best.Gain, "1/K");
                yield return SheetFigures.Of("integral time", best.IntegralSeconds, "s");
                yield return SheetFigures.Of("derivative time", best.DerivativeSeconds, "s");
            }

            if (Guard is not { } guard)
                yield break;
            yield return SheetFigures.Of("guard: least rise in its window", guard.LeastRiseKelvin, "K");
            yield return SheetFigures.Of("guard: window", guard.WindowSeconds, "s");
            yield return SheetFigures.Of("guard: may stray while held by", guard.StrayKelvin, "K");
            yield return SheetFigures.Of("guard: for", guard.StraySeconds, "s");
        }
    }

    public static ProcessPart Of(
        LogFile file, (StepStretch? Found, StepLack? Lack) ofStep, (RelayEstimate? Found, RelayLack? Lack) ofRelay, double? room, HoldStretch? hold, double? target)
    {
        var ((step, stepLack), (relay, relayLack)) = (ofStep, ofRelay);
        var fit = step?.Fit();
        var held = OfHold(hold);
        var useRelay = relay?.Process is not null && !(fit?.SettledShare > 0.5);
        var process = useRelay ? relay!.Process : fit?.Process;
        var part = new HeatLogPart(
            [.. fit is null || useRelay ? [] : FiguresOf(fit), .. relay is null ? [] : FiguresOf(relay), .. process is null ? [] : FiguresOf(process), .. held.Figures],
            [.. held.Findings],
            [],
            [.. Remarks(fit, stepLack, relay, relayLack, room, useRelay)],
            held.IsFine,
            fit is null || useRelay ? [] : [HeatLogPlots.Fit(file, step!, fit)]);
        if (process is null)
            return new(part, [], null);
        var rest = useRelay ? room!.Value : fit!.Rest.Value - (process.Model.Gain * step!.FromOutput);
        return WithSettings(file, part, process, rest, target ?? HeatLogWords.TargetOf(file) ?? file.Trace.Sensor.Mean.Where(double.IsFinite).Max());
    }

    private static ProcessPart WithSettings(LogFile file, HeatLogPart part, ProcessEstimate process, double rest, double target)
    {
        if (process.Model.Gain < 0)
            return new(part with { Findings = [.. part.Findings, "What is shown falls when the output rises: it is another heater's sensor, or something else heats it."], IsFine = false }, [], null);
        if (!(process.Rate.Value > 0 && 2 * process.Rate.Standard < process.Rate.Value / 3))
            return new(part with { Remarks = [.. part.Remarks, "How quickly it heats up is not known to a third, so no settings follow: log a step of the output from rest, and leave it alone until hardly anything moves."] }, [], null);
        var settings = LoopSettings.For(process, rest, target);
        var best = settings.FirstOrDefault(each => each.IsRobust);
        var design = MeasuredHeater.Of(file.Body?.Name ?? "heater", process, target, file.Trace.NoiseKelvin());
        if (settings.Count <= 2)
            part = part with { Remarks = [.. part.Remarks, "The log does not tell the dead time from none, so the rules by ultimate gain and period do not serve."] };
        var guard = design is null || design.Coldest.HoldShare(target) >= 1 ? null : HeatPrediction.GuardOf(design);
        IReadOnlyList<PlotView> plots = best?.Response is { } response ? [.. part.Plots, HeatLogPlots.Response(best.Rule, response, target)] : part.Plots;
        return new(part with { Plots = plots, Remarks = [.. part.Remarks, .. guard is null ? [NoGuard] : Array.Empty<string>()] }, [.. settings.Select(View)], guard);
    }

    private static LoopSettingsView View(LoopSettings settings) => new(
        settings.Rule,
        settings.IsRobust,
        settings.Tuning.Gain,
        settings.Tuning.IntegralSeconds,
        settings.Tuning.DerivativeSeconds,
        [.. HeatPrediction.FullOutputs.Select(full => HeatPrediction.ParallelOf(settings.Tuning, full))],
        settings.Sensitivity,
        settings.WorstSensitivity,
        settings.Response?.Overshoot,
        settings.Response?.SettledSeconds);

    private static IEnumerable<SheetFigure> FiguresOf(ProcessEstimate process)
    {
        yield return Figure("Gain at full output", process.Gain, "K");
        yield return Figure("Time constant", process.TimeConstant, "s");
        if (process.IsSecondOrder)
            yield return Figure("Second time constant", process.SecondTimeConstant, "s");
        yield return Figure("Dead time", process.DeadTime, "s");
        yield return Figure("Rise at full output without loss", process.Rate, "K/s");
        if (UltimatePoint.Of(process.Model) is not { } ultimate || process.DeadTime.Value <= 2 * process.DeadTime.Standard)
            yield break;
        yield return Figure("Ultimate gain, output 0 to 1", process.Of(model => UltimatePoint.Of(model)?.Gain ?? ultimate.Gain), "1/K");
        yield return Figure("Ultimate period", process.Of(model => UltimatePoint.Of(model)?.PeriodSeconds ?? ultimate.PeriodSeconds), "s");
    }

    private static IEnumerable<SheetFigure> FiguresOf(StepEstimate fit) =>
        [Figure("Shown before the step", fit.Rest, "°C"), SheetFigures.Of("What the fit leaves, standard deviation", fit.ResidualDeviation, "K")];

    private static IEnumerable<SheetFigure> FiguresOf(RelayEstimate relay) =>
    [
        Figure("Period under the relay", relay.Period, "s"),
        Figure("Swing either way under the relay", relay.Swing, "K"),
        Figure("Gain that keeps up a swing of that period, output 0 to 1", relay.CycleGain, "1/K"),
    ];

    private static HeatLogPart OfHold(HoldStretch? hold)
    {
        if (hold is null)
            return HeatLogPart.Nothing;
        var strays = hold.DeviationKelvin.Value > StrayKelvin;
        return HeatLogPart.Nothing with
        {
            Figures = [Figure("Output while held", new(100 * hold.Output.Value, 100 * hold.Output.Standard), "%"), Figure("Standard deviation while held", hold.DeviationKelvin, "K")],
            Findings = strays ? [string.Create(CultureInfo.InvariantCulture, $"Held at {hold.Celsius:0} °C it strays with a standard deviation of {hold.DeviationKelvin.Value:0.0} K: the controller's settings do not fit the heater, or it works as a relay.")] : [],
            IsFine = !strays,
        };
    }

    private static IEnumerable<string> Remarks(StepEstimate? fit, StepLack? stepLack, RelayEstimate? relay, RelayLack? relayLack, double? room, bool useRelay)
    {
        string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
        if (fit is null && relay is null)
            yield return $"No process was fitted: {HeatLogWords.Of(stepLack ?? StepLack.NothingMoves)}{(relayLack is { } lack and not RelayLack.NoRelay ? $"; {HeatLogWords.Of(lack)}" : "")}.";
        if (fit is not null && !useRelay && fit.SettledShare < WholeWay)
            yield return Text($"The log shows {100 * fit.SettledShare:0} % of the way to where full output would lead: gain and time constant are known badly apart, their ratio and the dead time well. That is what settings need.");
        if (fit is not null && !useRelay && fit.NeighbourCorrelation > 0.5)
            yield return Text($"What the fit leaves is no mere noise (neighbours are alike by {fit.NeighbourCorrelation:0.00}): the heater is not quite of first or second order. The uncertainties count that in.");
        if (relay is null)
            yield break;
        yield return Text($"The swing under the relay is steady over {relay.Cycles} cycles; what is shown lags {relay.LagDegrees:0} degrees behind the output, and the relay's dead band is {2 * relay.HalfHysteresis:0.0} K as seen.");
        if (relay.Process is null)
            yield return room is null
                ? "Without the temperature of the room the cycle does not tell the gain: state that temperature (--room)."
                : "No process of first order with dead time has just this cycle: no settings follow from it.";
    }

    private static SheetFigure Figure(string name, Estimate estimate, string unit) => SheetFigures.Of(name, new Uncertain(estimate.Value, estimate.Standard), unit);
}
