using Proveout.Engine.Heat;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Predicts what everything that a machine heats will do.</summary>
public static class HeatPrediction
{
    private const int CurvePoints = 120;
    internal static readonly double[] FullOutputs = [1, 100, 255];
    private static readonly double[] SensorCelsius = [0, 15, 25, 40, 60, 80, 100, 150, 200, 250, 300];

    /// <summary>The view of a machine; without bodies when its file says nothing of what it heats.</summary>
    public static HeatView Of(MachineSummary machine, MachineDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new(machine, [.. design.Heated.Select(Of)]);
    }

    private static HeatedView Of(HeatedBody body)
    {
        var (heater, sensor) = (HeatedBodies.HeaterOf(body), HeatedBodies.SensorOf(body));
        return new(
            body.Name,
            body.Heater,
            heater.TargetCelsius,
            HeatedBodies.WattsPerSquareCentimetre(body),
            (WarmUp.QuickestSeconds(heater), WarmUp.SlowestSeconds(heater)),
            (100 * heater.Warmest.HoldShare(heater.TargetCelsius), 100 * heater.Coldest.HoldShare(heater.TargetCelsius)),
            CurveOf(heater),
            GuardOf(heater),
            ControllerOf(heater),
            sensor.Type.Name,
            [.. SensorCelsius.Where(celsius => celsius <= Math.Max(100, heater.TargetCelsius + 50)).Select(celsius => PointOf(sensor, celsius))],
            MistakeTables.Of(SensorCampaign.Of(sensor)),
            MistakeTables.Of(HeaterCampaign.Of(heater)));
    }

    private static (double Seconds, double Least, double Most)[] CurveOf(HeaterDesign heater)
    {
        var (least, most) = WarmUp.Limits(heater, 1.2 * WarmUp.SlowestSeconds(heater), CurvePoints);
        return [.. Enumerable.Range(0, least.Shown.Count).Select(at => (at * least.StepSeconds, least.Shown[at], most.Shown[at]))];
    }

    internal static GuardView? GuardOf(HeaterDesign heater) => GuardThresholds.For(heater) is { } guard
        ? new(
            guard.WindowSeconds, guard.LeastRiseKelvin, guard.StrayKelvin, guard.StraySeconds, 100 * guard.FalseAlarms.MostShare, 100 * guard.Catches.MostMissed, guard.HottestBeforeTrip,
            double.IsFinite(guard.HottestWhileHolding) ? guard.HottestWhileHolding : null)
        : null;

    private static ControllerView? ControllerOf(HeaterDesign heater)
    {
        if (HeaterSettings.For(heater) is not { } settings)
            return null;
        var (tuning, response) = (settings.Tuning, settings.Response);
        var every = Math.Max(1, response.Seconds.Count / CurvePoints);
        return new(
            tuning.Gain,
            tuning.IntegralSeconds,
            tuning.DerivativeSeconds,
            [.. FullOutputs.Select(full => ParallelOf(tuning, full))],
            settings.WorstSensitivity,
            settings.WorstOvershootKelvin,
            response.SettledSeconds,
            [.. Enumerable.Range(0, response.Seconds.Count / every).Select(at => new ResponsePoint(response.Seconds[at * every], response.Measured[at * every], 100 * response.Output[at * every]))]);
    }

    internal static ParallelSettings ParallelOf(Tuning tuning, double fullOutput)
    {
        var (proportional, integral, derivative) = tuning.Parallel(fullOutput);
        return new(fullOutput, proportional, integral, derivative);
    }

    private static SensorPoint PointOf(SensorChannel sensor, double celsius)
    {
        var ((low, high), (least, most)) = (sensor.OhmsBetween(celsius, celsius), sensor.ErrorAt(celsius));
        return new(celsius, low, high, 100 * sensor.Input.ShareAt(sensor.Type.Curve.OhmsAt(celsius)), least, most, sensor.Input.StepKelvin(sensor.Type.Curve, celsius));
    }
}
