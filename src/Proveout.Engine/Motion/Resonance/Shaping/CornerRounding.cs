namespace Proveout.Engine.Motion;

/// <summary>
/// What a shaper does to a square corner when both axes are shaped alike: one axis stops and the other starts at the same instant, each from or to a speed that it keeps through the
/// corner, with one acceleration. The shaped path passes the corner at a distance. Exact for impulses; our own derivation, docs/methods/resonance.md.
/// </summary>
public static class CornerRounding
{
    private const int Halvings = 200;

    /// <summary>Distance from the corner at which the shaped path passes it, in m.</summary>
    /// <param name="shaper">The shaper of both axes.</param>
    /// <param name="speed">Speed that each axis keeps at the corner, in m/s.</param>
    /// <param name="acceleration">Acceleration before and after it, in m/s².</param>
    public static double Error(InputShaper shaper, double speed, double acceleration)
    {
        ArgumentNullException.ThrowIfNull(shaper);
        // What is still missing along the first axis falls with time, what has begun along the second rises: the path is nearest where they are alike.
        var (early, late) = (0.0, shaper.DurationSeconds);
        for (var step = 0; step < Halvings && late > early; step++)
        {
            var middle = (early + late) / 2;
            if (middle == early || middle == late)
                break;
            if (Missing(shaper, middle, speed, acceleration) > Begun(shaper, middle, speed, acceleration))
                early = middle;
            else
                late = middle;
        }

        return Math.Sqrt(2) * Missing(shaper, (early + late) / 2, speed, acceleration);
    }

    /// <summary>The highest acceleration, in m/s², at which the path passes a corner within an error; 0 when the speed alone is too much.</summary>
    /// <param name="shaper">The shaper of both axes.</param>
    /// <param name="error">The error, in m.</param>
    /// <param name="speed">Speed that each axis keeps at the corner, in m/s.</param>
    public static double HighestAcceleration(InputShaper shaper, double error, double speed)
    {
        ArgumentNullException.ThrowIfNull(shaper);
        if (Error(shaper, speed, 0) >= error)
            return 0;
        // Without the speed the error is in proportion to the acceleration, so that this one is surely too high.
        var (low, high) = (0.0, error / Error(shaper, 0, 1));
        for (var step = 0; step < Halvings; step++)
        {
            var middle = (low + high) / 2;
            if (middle == low || middle == high)
                break;
            if (Error(shaper, speed, middle) <= error)
                low = middle;
            else
                high = middle;
        }

        return low;
    }

    private static double Begun(InputShaper shaper, double time, double speed, double acceleration) =>
        shaper.Impulses.Sum(impulse => impulse.Share * Way(time - impulse.Seconds, speed, acceleration));

    private static double Missing(InputShaper shaper, double time, double speed, double acceleration) =>
        shaper.Impulses.Sum(impulse => impulse.Share * Way(impulse.Seconds - time, speed, acceleration));

    private static double Way(double time, double speed, double acceleration) => time <= 0 ? 0 : (speed * time) + (acceleration * time * time / 2);
}
