namespace Proveout.Engine.Heat;

/// <summary>A thermistor by three coefficients: 1/T = A + B ln R + C (ln R)³, T in kelvin, R in ohms.</summary>
/// <remarks>I. S. Steinhart and S. R. Hart, Calibration curves for thermistors, Deep-Sea Research 15 (1968) 497-503.</remarks>
/// <param name="A">First coefficient in 1/K.</param>
/// <param name="B">Second coefficient in 1/K, above zero.</param>
/// <param name="C">Third coefficient in 1/K, zero or above: then the curve falls everywhere.</param>
public sealed record SteinhartHart(double A, double B, double C) : IResistanceCurve
{
    /// <inheritdoc/>
    public double LowestCelsius => -40;

    /// <inheritdoc/>
    public double HighestCelsius => 350;

    /// <inheritdoc/>
    public double CelsiusAt(double ohms)
    {
        var logarithm = Math.Log(ohms);
        return Kelvin.OfInverse(A + (logarithm * (B + (C * logarithm * logarithm))));
    }

    /// <inheritdoc/>
    public double OhmsAt(double celsius)
    {
        var inverse = 1 / Kelvin.Of(celsius);
        if (C <= 0)
            return Math.Exp((inverse - A) / B);
        // The real root of the cubic in ln R; with B and C above zero there is one only.
        var (half, third) = ((inverse - A) / (2 * C), B / (3 * C));
        var root = Math.Sqrt((third * third * third) + (half * half));
        return Math.Exp(Math.Cbrt(root + half) - Math.Cbrt(root - half));
    }

    /// <summary>The curve through points of a part's table: exactly through three, closest in 1/T to more.</summary>
    /// <param name="points">At least three points with different resistances above zero.</param>
    /// <returns>Null when the points have fewer than three different resistances, or ask for a curve that does not fall everywhere.</returns>
    public static SteinhartHart? Fit(IReadOnlyList<(double Celsius, double Ohms)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Select(point => point.Ohms).Distinct().Count() < 3 || points.Any(point => point.Ohms <= 0))
            return null;
        double[] logarithms = [.. points.Select(point => Math.Log(point.Ohms))];
        double[] wanted = [.. points.Select(point => 1 / Kelvin.Of(point.Celsius))];
        // Columns made orthogonal one after the other (modified Gram-Schmidt), then solved back.
        double[][] columns = [[.. logarithms.Select(_ => 1.0)], logarithms, [.. logarithms.Select(x => x * x * x)]];
        var triangle = new double[3, 3];
        for (var column = 0; column < 3; column++)
            for (var later = column + 1; later < 3; later++)
            {
                triangle[column, later] = Dot(columns[column], columns[later]) / Dot(columns[column], columns[column]);
                columns[later] = [.. columns[later].Zip(columns[column], (one, other) => one - (triangle[column, later] * other))];
            }

        var parts = new double[3];
        for (var column = 0; column < 3; column++)
        {
            parts[column] = Dot(columns[column], wanted) / Dot(columns[column], columns[column]);
            wanted = [.. wanted.Zip(columns[column], (one, other) => one - (parts[column] * other))];
        }

        var c = parts[2];
        var b = parts[1] - (triangle[1, 2] * c);
        var a = parts[0] - (triangle[0, 1] * b) - (triangle[0, 2] * c);
        return b > 0 && c >= 0 ? new SteinhartHart(a, b, c) : null;
    }

    private static double Dot(IReadOnlyList<double> one, IReadOnlyList<double> other) => one.Zip(other, (x, y) => x * y).Sum();
}
