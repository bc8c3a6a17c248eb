namespace Proveout.Engine.Numerics;

/// <summary>Finds a minimum of a function of a few variables without derivatives.</summary>
/// <remarks>
/// J. A. Nelder and R. Mead, A simplex method for function minimization, Computer Journal 7 (1965) 308-313, with the coefficients of J. C. Lagarias
/// and others, SIAM Journal on Optimization 9 (1998) 112-147. Finds one minimum near the start, not the lowest of all.
/// </remarks>
public static class SimplexSearch
{
    private const int MostSteps = 4000;

    /// <summary>The point of a minimum.</summary>
    /// <param name="function">What to make small; may be infinite where a point is not allowed.</param>
    /// <param name="start">Where to start.</param>
    /// <param name="spans">How far to look along each variable at first; not zero.</param>
    /// <param name="tolerance">Share by which the values of all corners agree at the end.</param>
    public static double[] Minimise(Func<double[], double> function, double[] start, double[] spans, double tolerance = 1e-12)
    {
        ArgumentNullException.ThrowIfNull(function);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(spans);
        var size = start.Length;
        var corners = Enumerable.Range(0, size + 1).Select(corner => (double[])[.. start.Select((value, index) => index == corner - 1 ? value + spans[index] : value)]).ToArray();
        var values = corners.Select(function).ToArray();
        for (var step = 0; step < MostSteps; step++)
        {
            Array.Sort(values, corners);
            if (values[size] - values[0] <= tolerance * (Math.Abs(values[0]) + double.Epsilon) && IsSmall(corners, spans, tolerance))
                break;
            var centre = Enumerable.Range(0, size).Select(index => corners[..size].Average(corner => corner[index])).ToArray();
            Move(function, corners, values, centre);
        }

        Array.Sort(values, corners);
        return corners[0];
    }

    private static void Move(Func<double[], double> function, double[][] corners, double[] values, double[] centre)
    {
        var size = centre.Length;
        var reflected = Along(centre, corners[size], -1);
        var value = function(reflected);
        if (value < values[0])
        {
            var farther = Along(centre, corners[size], -2);
            var beyond = function(farther);
            (corners[size], values[size]) = beyond < value ? (farther, beyond) : (reflected, value);
        }
        else if (value < values[size - 1])
        {
            (corners[size], values[size]) = (reflected, value);
        }
        else
        {
            var nearer = Along(centre, corners[size], value < values[size] ? -0.5 : 0.5);
            var between = function(nearer);
            if (between < Math.Min(value, values[size]))
                (corners[size], values[size]) = (nearer, between);
            else
                Shrink(function, corners, values);
        }
    }

    private static void Shrink(Func<double[], double> function, double[][] corners, double[] values)
    {
        for (var corner = 1; corner < corners.Length; corner++)
        {
            corners[corner] = Along(corners[0], corners[corner], 0.5);
            values[corner] = function(corners[corner]);
        }
    }

    private static double[] Along(double[] from, double[] to, double share) => [.. from.Zip(to, (one, other) => one + (share * (other - one)))];

    private static bool IsSmall(double[][] corners, double[] spans, double tolerance) =>
        corners.Skip(1).All(corner => corner.Zip(corners[0], (one, other) => Math.Abs(one - other)).Zip(spans, (apart, span) => apart <= Math.Sqrt(tolerance) * Math.Abs(span)).All(small => small));
}
