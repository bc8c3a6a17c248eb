using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>What is read off the log of a first warm-up.</summary>
/// <param name="design">The heater as designed.</param>
internal sealed class WarmUpReadings(HeaterDesign design)
{
    /// <summary>Share of the way to the target from which a warm-up is taken to end: the last kelvins are the controller's.</summary>
    public const double EndShare = 0.95;

    private const double NoiseDeviations = 4;

    // Another body near a heater may be warmed by it that much, common practice.
    private static readonly ReadingInterval OthersRise = new(-2, 5);

    /// <summary>Seconds of full output after which the first rise is read: a quarter of what the slowest sound heater takes.</summary>
    public double EarlySeconds { get; } = Math.Max(5, Math.Round(WarmUp.SlowestSeconds(design) / 4));

    /// <summary>Seconds for which a warm-up is followed at most: four times what the slowest sound heater takes.</summary>
    public double PatienceSeconds { get; } = 4 * WarmUp.SlowestSeconds(design);

    /// <summary>The temperature that ends a warm-up.</summary>
    public double EndCelsius { get; } = design.AmbientCelsius.High + (EndShare * (design.TargetCelsius - design.AmbientCelsius.High));

    private double Noise => NoiseDeviations * design.NoiseKelvin;

    /// <summary>The intervals of all readings, in the order of <see cref="HeaterCampaign"/>'s checks, for a heater with or without a mistake.</summary>
    public ReadingInterval[] Of(HeaterDesign left, bool heatsWhenOff, bool isSeenElsewhere)
    {
        var (low, high) = (Curve(left.Coldest), Curve(left.Warmest));
        var rise = new ReadingInterval(Rise(low), Rise(high));
        var seen = isSeenElsewhere ? OthersRise : Widened(rise);
        return
        [
            heatsWhenOff && !isSeenElsewhere ? Widened(rise) : Widened(new(0, 0)),
            seen,
            isSeenElsewhere ? Widened(rise) : OthersRise,
            isSeenElsewhere ? new(double.PositiveInfinity, double.PositiveInfinity) : new(0.98 * high.SecondsTo(EndCelsius - Noise), 1.02 * low.SecondsTo(EndCelsius + Noise)),
            isSeenElsewhere || left.Watts.High == 0 ? new(100, double.PositiveInfinity) : HoldOf(left),
        ];
    }

    private HeatCurve Curve(HeaterTrial trial) => HeatCurve.Of(trial, _ => 1, trial.AmbientCelsius, PatienceSeconds, PatienceSeconds / 4000);

    private double Rise(HeatCurve curve) => curve.ShownAt(EarlySeconds) - curve.Shown[0];

    private ReadingInterval Widened(ReadingInterval interval) => new(interval.Low - Noise, interval.High + Noise);

    // In percent of full output; a controller shows no more than 100.
    private ReadingInterval HoldOf(HeaterDesign left)
    {
        var (least, most) = (left.Warmest.HoldShare(design.TargetCelsius), left.Coldest.HoldShare(design.TargetCelsius));
        return new(Math.Min(100, 98 * least), most >= 1 ? double.PositiveInfinity : 102 * most);
    }
}
