namespace Proveout.Engine.Heat;

/// <summary>Runs a guard of the rise against heaters drawn evenly from their tolerances, with noise.</summary>
/// <param name="design">The heaters.</param>
/// <param name="seed">Seed of the draw.</param>
internal sealed class GuardTrials(HeaterDesign design, int seed)
{
    // A guard that looks this often within its window finds all that one finds that looks all the time.
    private const double LooksAWindow = 8;

    private readonly Random _random = new(seed);

    /// <summary>How many of some heaters the guard stops before they show their target, and how hot they are by then.</summary>
    public (int Tripped, double Hottest) Run(int trials, double window, double rise)
    {
        var span = 2 * WarmUp.SlowestSeconds(design with { SeenShare = new(1, 1) });
        var step = window / LooksAWindow;
        var (tripped, hottest) = (0, double.NegativeInfinity);
        var shares = new double[6];
        for (var trial = 0; trial < trials; trial++)
        {
            for (var share = 0; share < shares.Length; share++)
                shares[share] = _random.NextDouble();
            var heater = design.At(shares);
            var curve = HeatCurve.Of(heater, _ => 1, heater.AmbientCelsius, span, step);
            var (stopped, at) = Follow(curve, window, rise);
            tripped += stopped ? 1 : 0;
            hottest = Math.Max(hottest, curve.Real[at]);
        }

        return (tripped, hottest);
    }

    // The window starts anew whenever the rise is reached, as such guards do.
    private (bool Stopped, int At) Follow(HeatCurve curve, double window, double rise)
    {
        var (since, from) = (0, curve.Shown[0]);
        for (var at = 1; at < curve.Shown.Count; at++)
        {
            var shown = curve.Shown[at] + (design.NoiseKelvin * Normal());
            if (shown >= design.TargetCelsius - GuardThresholds.ThrottleKelvin)
                return (false, at);
            if (shown >= from + rise)
                (since, from) = (at, shown);
            else if ((at - since) * curve.StepSeconds >= window)
                return (true, at);
        }

        return (false, curve.Shown.Count - 1);
    }

    // G. E. P. Box and M. E. Muller, Annals of Mathematical Statistics 29 (1958) 610-611.
    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
