namespace Proveout.Engine.Heat;

/// <summary>A heater as its log shows it, for the guard that watches it from now on.</summary>
public static class MeasuredHeater
{
    // From day to day: mains and supply to a tenth of the power, common practice.
    private const double PowerShare = 0.1;

    // What a log does not say of other days: what lies on a plate, a draught.
    private const double UptakeShare = 0.05;
    private static readonly Between Air = new(0.8, 1.25);
    private static readonly Between Lag = new(0.6, 1.5);
    private static readonly Between Room = new(10, 35);

    /// <summary>The heater; null when its gain is not known to a third.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="process">The process fitted to its log.</param>
    /// <param name="targetCelsius">What it is to hold.</param>
    /// <param name="noiseKelvin">Standard deviation of what is shown.</param>
    /// <remarks>Watts do not matter: what is shown depends on power over capacity, and on loss over power. The power is taken as 1.</remarks>
    public static HeaterDesign? Of(string name, ProcessEstimate process, double targetCelsius, double noiseKelvin)
    {
        ArgumentNullException.ThrowIfNull(process);
        var (gain, rate) = (process.Gain, process.Rate);
        if (!(gain.Value > 0 && 2 * gain.Standard < gain.Value / 3 && rate.Value > 0 && 2 * rate.Standard < rate.Value))
            return null;
        var share = 2 * gain.Standard / gain.Value;
        return new HeaterDesign(
            name,
            Between.Around(1, PowerShare),
            Between.Around(1 / rate.Value, Math.Min(0.9, UptakeShare + (2 * rate.Standard / rate.Value))),
            new LumpedLoss(1 / gain.Value),
            Air.Times(new Between(1 - share, 1 + share)),
            Lag.Times(Math.Max(1, process.Model.SecondTimeConstantSeconds + process.Model.DeadTimeSeconds)),
            Room,
            targetCelsius)
        {
            SeenShare = new(1, 1),
            NoiseKelvin = Math.Max(0.1, noiseKelvin),
        };
    }
}
