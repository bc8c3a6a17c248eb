namespace Proveout.Engine.Numerics;

/// <summary>Where a rising function passes zero, held between two values at every step.</summary>
/// <remarks>T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145-149: inverse quadratic steps where they are safe, halving where not.</remarks>
public static class RisingRoot
{
    private const int MostDoublings = 200;
    private const int MostSteps = 200;
    private const double RelativeNearness = 1e-12;
    private const double Nearness = 1e-18;

    /// <summary>The root of a continuous function that never falls; one of them where it is zero over a stretch.</summary>
    /// <param name="function">The function.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="step">First step away from there, above zero.</param>
    /// <exception cref="ArgumentException">The function has no root.</exception>
    public static double Of(Func<double, double> function, double start, double step)
    {
        ArgumentNullException.ThrowIfNull(function);
        var (near, atNear) = (start, function(start));
        if (atNear == 0)
            return start;
        var way = atNear > 0 ? -step : step;
        for (var doubling = 0; doubling < MostDoublings; doubling++, way *= 2)
        {
            var far = near + way;
            var atFar = function(far);
            if (atFar == 0)
                return far;
            if (Math.Sign(atFar) != Math.Sign(atNear))
                return Between(function, far, atFar, near, atNear);
            (near, atNear) = (far, atFar);
        }

        throw new ArgumentException("The function does not pass zero.", nameof(function));
    }

    // The root lies between the newest point and the other one all the time; the third point only serves to guess.
    private static double Between(Func<double, double> function, double newest, double atNewest, double other, double atOther)
    {
        var (third, atThird, share) = (other, atOther, 0.5);
        for (var step = 0; step < MostSteps; step++)
        {
            var at = newest + (share * (other - newest));
            var value = function(at);
            if (Math.Sign(value) == Math.Sign(atNewest))
                (third, atThird) = (newest, atNewest);
            else
                (third, atThird, other, atOther) = (other, atOther, newest, atNewest);
            (newest, atNewest) = (at, value);
            var (best, atBest) = Math.Abs(atNewest) < Math.Abs(atOther) ? (newest, atNewest) : (other, atOther);
            var smallest = ((RelativeNearness * Math.Abs(best)) + Nearness) / Math.Abs(other - newest);
            if (atBest == 0 || smallest > 0.5)
                return best;
            share = Math.Clamp(Guess(newest, atNewest, other, atOther, third, atThird), smallest, 1 - smallest);
        }

        return (newest + other) / 2;
    }

    private static double Guess(double newest, double atNewest, double other, double atOther, double third, double atThird)
    {
        var place = (newest - other) / (third - other);
        var level = (atNewest - atOther) / (atThird - atOther);
        return level * level < place && (1 - level) * (1 - level) < 1 - place
            ? (atNewest / (atOther - atNewest) * (atThird / (atOther - atThird))) + ((third - newest) / (other - newest) * (atNewest / (atThird - atNewest)) * (atOther / (atThird - atOther)))
            : 0.5;
    }
}
