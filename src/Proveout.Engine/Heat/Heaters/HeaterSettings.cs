namespace Proveout.Engine.Heat;

/// <summary>Settings to start a heater's controller with, computed before it is first heated; a step log makes better ones (<see cref="StepFit"/>).</summary>
/// <param name="Model">The process in the middle of its tolerances, around its target.</param>
/// <param name="Tuning">The settings.</param>
/// <param name="ClosedLoopSeconds">The closed-loop time constant that they were made for.</param>
/// <param name="WorstSensitivity">Largest Ms at any corner of the tolerances.</param>
/// <param name="WorstOvershootKelvin">Largest overshoot of a warm-up from cold, of the middle and the corners.</param>
/// <param name="Response">Warm-up from cold of the middle.</param>
public sealed record HeaterSettings(
    ProcessModel Model, Tuning Tuning, double ClosedLoopSeconds, double WorstSensitivity, double WorstOvershootKelvin, LoopSimulation Response)
{
    // A loop is robust up to here at every corner, nervous above (Åström and Hägglund 1995).
    private const double MostSensitivity = 1.8;

    // Output and sensor are served about once a second: together they are late by that much. Common practice.
    private const double ServiceSeconds = 1;

    private const double BandKelvin = 1;

    /// <summary>PID by SIMC, as quick as all corners of the tolerances bear.</summary>
    /// <param name="design">The heater; it can hold its target.</param>
    /// <returns>Null when it cannot hold its target, so that there is nothing to control.</returns>
    public static HeaterSettings? For(HeaterDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var middle = design.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
        if (design.Coldest.HoldShare(design.TargetCelsius) >= 1)
            return null;
        ProcessModel[] corners = [.. Corners(design).Select(trial => ModelOf(trial, design.TargetCelsius))];
        var model = ModelOf(middle, design.TargetCelsius);
        var lag = ServiceSeconds + (0.5 * model.SecondTimeConstantSeconds);
        for (var factor = 1.0; ; factor *= 1.25)
        {
            var tuning = TuningRules.SimcPid(model, factor * lag);
            var worst = corners.Max(corner => LoopRobustness.LargestSensitivity(corner, tuning));
            if (worst > MostSensitivity)
                continue;
            var span = 2 * WarmUp.SlowestSeconds(design);
            LoopSimulation Run(ProcessModel process) => LoopSimulation.Of(process, tuning, middle.AmbientCelsius, design.TargetCelsius, BandKelvin, span);
            var response = Run(model);
            return new(model, tuning, factor * lag, worst, corners.Select(Run).Append(response).Max(run => run.Overshoot), response);
        }
    }

    // From rest to target in one: the gain is what full output would reach if the loss went on as it is on the way there.
    private static ProcessModel ModelOf(HeaterTrial trial, double target)
    {
        var gain = (target - trial.AmbientCelsius) / trial.HoldShare(target);
        var slow = trial.JoulesPerKelvin * gain / (trial.Watts * trial.SeenShare);
        return new ProcessModel(gain, Math.Max(slow, trial.SensorLagSeconds), Math.Min(slow, trial.SensorLagSeconds), ServiceSeconds);
    }

    // Power, capacity, loss and lag at their ends.
    private static IEnumerable<HeaterTrial> Corners(HeaterDesign design)
    {
        for (var corner = 0; corner < 16; corner++)
            yield return design.At([corner & 1, (corner >> 1) & 1, (corner >> 2) & 1, (corner >> 3) & 1, 0.5, 0.5]);
    }
}
