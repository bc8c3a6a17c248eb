namespace Proveout.Engine.Heat;

/// <summary>What to set a controller's guard to, and how well that tells a sound heater from one whose sensor has fallen out.</summary>
/// <param name="WindowSeconds">While it heats up, what is shown must rise within this time ...</param>
/// <param name="LeastRiseKelvin">... by this much, or the guard stops the heater.</param>
/// <param name="StrayKelvin">While it holds, what is shown may stray from the target by this much ...</param>
/// <param name="StraySeconds">... for this long.</param>
/// <param name="FalseAlarms">What the rise guard did with sound heaters.</param>
/// <param name="Catches">What it did with heaters whose sensor has fallen out before they were heated.</param>
/// <param name="HottestBeforeTrip">Hottest in °C that such a heater became before the guard stopped it, of all that were tried.</param>
/// <param name="HottestWhileHolding">Hottest in °C that a heater becomes whose sensor falls out while it is held, before the stray guard stops it; by the worst values.</param>
public sealed record GuardThresholds(
    double WindowSeconds, double LeastRiseKelvin, double StrayKelvin, double StraySeconds, GuardCount FalseAlarms, GuardCount Catches, double HottestBeforeTrip, double HottestWhileHolding)
{
    private const int Trials = 1000;

    // Below the target by this much the guard of the rise gives way to that of the stray: there the controller throttles.
    internal const double ThrottleKelvin = 10;

    private static readonly double[] Windows = [5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 300, 600];

    /// <summary>The thresholds that let a heater with a fallen sensor become least hot, among those that no sound heater trips.</summary>
    /// <param name="design">The heater.</param>
    /// <param name="seed">Seed of the heaters that are tried: the same seed gives the same figures.</param>
    /// <returns>Null when a sound heater rises so slowly towards its target that no guard can tell.</returns>
    public static GuardThresholds? For(HeaterDesign design, int seed = 1)
    {
        ArgumentNullException.ThrowIfNull(design);
        var fallen = HeaterMistakes.Of(design).Single(mistake => mistake.Id == "sensor-out").Left;
        var candidates = Windows.Select(window => (Window: window, Rise: RiseOf(design, window))).Where(candidate => candidate.Rise >= LeastTold(design)).ToArray();
        if (candidates.Length == 0)
            return null;
        // Chosen by few heaters, then counted by many others.
        var (window, rise) = candidates.MinBy(candidate => new GuardTrials(fallen, seed).Run(40, candidate.Window, candidate.Rise).Hottest);
        var sound = new GuardTrials(design, seed + 1).Run(Trials, window, rise);
        var wrong = new GuardTrials(fallen, seed + 2).Run(Trials, window, rise);
        var (stray, patience) = StrayOf(design);
        return new(window, rise, stray, patience, new(Trials, sound.Tripped), new(Trials, wrong.Tripped), wrong.Hottest, HottestHeld(design, fallen, stray, patience));
    }

    // What noise alone may feign between two samples.
    private static double LeastTold(HeaterDesign design) => 6 * Math.Sqrt(2) * design.NoiseKelvin;

    // Six tenths of what the slowest sound heater rises in a window, near the end of its way; less what noise may hide. In whole tenths of a kelvin, downward.
    private static double RiseOf(HeaterDesign design, double window)
    {
        var span = 1.2 * WarmUp.SlowestSeconds(design);
        var curve = WarmUp.Limits(design, span, 2000).Least;
        var end = curve.SecondsTo(design.TargetCelsius - ThrottleKelvin);
        var least = double.PositiveInfinity;
        for (var from = 0.0; from + window <= end; from += span / 2000)
            least = Math.Min(least, curve.ShownAt(from + window) - curve.ShownAt(from));
        return double.IsFinite(least) ? Math.Floor(10 * ((0.6 * least) - (4 * design.NoiseKelvin))) / 10 : 0;
    }

    // A draught or a cold load doubles the loss until the controller, one lag of the sensor later, has answered: the body falls that far, and twice that is allowed.
    private static (double Kelvin, double Seconds) StrayOf(HeaterDesign design)
    {
        var worst = design.Coldest with { JoulesPerKelvin = design.JoulesPerKelvin.Low };
        var answer = design.SensorLagSeconds.High;
        var fall = worst.LossAt(design.TargetCelsius) / worst.JoulesPerKelvin * answer;
        return (Math.Ceiling(Math.Max(5, (2 * fall) + (6 * design.NoiseKelvin))), Math.Ceiling(Math.Max(10, 3 * answer)));
    }

    // The sensor cools towards what it still sees; until it has strayed for the whole patience, the heater is at full power.
    private static double HottestHeld(HeaterDesign design, HeaterDesign fallen, double stray, double patience)
    {
        var rise = design.TargetCelsius - design.AmbientCelsius.Low;
        var seen = fallen.SeenShare.High;
        if ((1 - seen) * rise <= stray)
            return double.PositiveInfinity;
        var cooling = -fallen.SensorLagSeconds.High * Math.Log(1 - (stray / ((1 - seen) * rise)));
        var heater = design.Warmest;
        return HeatCurve.Of(heater, _ => 1, design.TargetCelsius, cooling + patience, Math.Max(0.1, (cooling + patience) / 1000)).Real[^1];
    }
}
