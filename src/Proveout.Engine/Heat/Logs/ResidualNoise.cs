namespace Proveout.Engine.Heat;

/// <summary>Noise of equally spaced residuals of which neighbours may be alike.</summary>
/// <remarks>
/// Autocorrelations r(k) = r(1) φ^(k−1): those of an autoregressive process of first order, alone or under white noise (G. E. P. Box, G. M. Jenkins, Time Series Analysis,
/// section 3.4, from memory). Estimated ones lie too low by about (1 + 4r)/n (F. H. C. Marriott and J. A. Pope, Biometrika 41 (1954) 390-402), which is given back.
/// </remarks>
/// <param name="Variance">Variance of one residual.</param>
/// <param name="First">r(1).</param>
/// <param name="Ratio">φ, below 1.</param>
internal sealed record ResidualNoise(double Variance, double First, double Ratio)
{
    private const double MostRatio = 0.995;

    /// <summary>The noise of residuals of a fit with some parameters.</summary>
    public static ResidualNoise Of(double[] residuals, int parameters)
    {
        var count = residuals.Length;
        var squares = residuals.Sum(value => value * value);
        double Correlation(int lag)
        {
            var sum = 0.0;
            for (var at = lag; at < count; at++)
                sum += residuals[at] * residuals[at - lag];
            var found = squares > 0 ? sum / squares : 0;
            return found + ((1 + (4 * Math.Max(0, found)) + (parameters * (1 - found))) / count * Math.Sign(Math.Max(0, found)));
        }

        var (first, second) = (Correlation(1), Correlation(2));
        var isWhite = first < 2 / Math.Sqrt(count);
        var ratio = isWhite ? 0 : Math.Clamp(Math.Max(first, second / first), 0, MostRatio);
        // As many as are independent, less the parameters, are left to tell the variance.
        var independent = isWhite ? count : Math.Max(parameters + 2, count * (1 - ratio) / (1 + ratio));
        return new(squares / Math.Max(1, count - parameters) * (isWhite ? 1 : independent / (independent - parameters)), isWhite ? 0 : Math.Min(first, MostRatio), ratio);
    }

    /// <summary>How many independent residuals tell as much as so many of these.</summary>
    public double Independent(int count) => First <= 0 ? count : count / (1 + (2 * First / (1 - Ratio)));

    /// <summary>Jᵀ R J for the rows of J, R being the covariance of the residuals.</summary>
    public double[,] Weigh(double[][] rows)
    {
        var size = rows[0].Length;
        var sum = new double[size, size];
        // What earlier rows add, each φ times less than the one after it.
        var earlier = new double[size];
        for (var at = 0; at < rows.Length; at++)
        {
            var row = rows[at];
            for (var left = 0; left < size; left++)
                for (var right = 0; right < size; right++)
                    sum[left, right] += Variance * ((row[left] * row[right]) + (row[left] * earlier[right]) + (earlier[left] * row[right]));
            for (var index = 0; index < size; index++)
                earlier[index] = (Ratio * earlier[index]) + (First * row[index]);
        }

        return sum;
    }
}
