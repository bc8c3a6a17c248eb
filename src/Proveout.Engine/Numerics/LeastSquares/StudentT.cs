namespace Proveout.Engine.Numerics;

/// <summary>Student's t distribution.</summary>
internal static class StudentT
{
    private const double Smallest = 1e-300;

    /// <summary>The value that a share of the distribution lies within, both sides together: the factor of JCGM 100:2008, table G.2.</summary>
    /// <param name="share">Share within, between 0 and 1.</param>
    /// <param name="degrees">Degrees of freedom, at least 1.</param>
    public static double Factor(double share, double degrees)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degrees, 1);
        var (low, high) = (0.0, 1.0);
        while (Outside(high, degrees) > 1 - share)
            high *= 2;
        for (var step = 0; step < 200 && high - low > 1e-15 * high; step++)
        {
            var middle = (low + high) / 2;
            if (Outside(middle, degrees) > 1 - share)
                low = middle;
            else
                high = middle;
        }

        return high;
    }

    /// <summary>Share of the distribution that lies beyond a value, both sides together.</summary>
    public static double Outside(double value, double degrees) =>
        value == 0 ? 1 : IncompleteBeta(degrees / 2, 0.5, degrees / (degrees + (value * value)));

    // Regularised incomplete beta function by its continued fraction (NIST Digital Library of Mathematical Functions, 8.17.22).
    private static double IncompleteBeta(double a, double b, double x)
    {
        if (x <= 0 || x >= 1)
            return x <= 0 ? 0 : 1;
        if (x > (a + 1) / (a + b + 2))
            return 1 - IncompleteBeta(b, a, 1 - x);
        var front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + (a * Math.Log(x)) + (b * Math.Log(1 - x))) / a;
        var (c, d) = (1.0, 1 / Away(1 - ((a + b) * x / (a + 1))));
        var fraction = d;
        for (var m = 1; m < 500; m++)
        {
            Step(m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m))));
            var before = fraction;
            Step(-(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1)));
            if (Math.Abs(fraction - before) < 1e-16 * Math.Abs(fraction))
                break;
        }

        return front * fraction;

        void Step(double term)
        {
            d = 1 / Away(1 + (term * d));
            c = Away(1 + (term / c));
            fraction *= c * d;
        }
    }

    private static double Away(double value) => Math.Abs(value) < Smallest ? Smallest : value;

    // Stirling's series after raising the argument above 12 (Digital Library of Mathematical Functions, 5.11.1).
    private static double LogGamma(double value)
    {
        var shift = 0.0;
        while (value < 12)
            shift += Math.Log(value++);
        var square = 1 / (value * value);
        var series = (1.0 / 12) - (square * ((1.0 / 360) - (square * ((1.0 / 1260) - (square * ((1.0 / 1680) - (square / 1188)))))));
        return ((value - 0.5) * Math.Log(value)) - value + (0.5 * Math.Log(2 * Math.PI)) + (series / value) - shift;
    }
}
