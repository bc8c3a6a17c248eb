namespace Proveout.Engine.Numerics;

/// <summary>What a weighted linear least-squares fit gives.</summary>
/// <param name="Values">The unknowns.</param>
/// <param name="Cofactors">Inverse of the normal matrix: the covariance of the unknowns when the stated uncertainties are right.</param>
/// <param name="Residuals">Observed less fitted.</param>
/// <param name="Redundancies">Share of each observation that the others check, 0 (nobody checks it) to 1; they add up to <paramref name="Degrees"/>.</param>
/// <param name="Degrees">Observations less unknowns.</param>
/// <param name="WeightedSquares">Sum of the squares of the residuals, each over its standard uncertainty.</param>
internal sealed record LinearFit(
    double[] Values, double[,] Cofactors, double[] Residuals, double[] Redundancies, int Degrees, double WeightedSquares)
{
    /// <summary>
    /// Residual standard deviation in units of the stated uncertainties (Birge ratio); not a number without redundancy.
    /// With unit uncertainties it is the residual standard deviation itself.
    /// </summary>
    public double Scatter => Degrees > 0 ? Math.Sqrt(WeightedSquares / Degrees) : double.NaN;

    /// <summary>Standard uncertainty of a linear combination of the unknowns by the stated uncertainties (JCGM 100:2008, equation 13).</summary>
    public double StandardOf(ReadOnlySpan<double> coefficients)
    {
        var sum = 0.0;
        for (var row = 0; row < coefficients.Length; row++)
            for (var column = 0; column < coefficients.Length; column++)
                sum += coefficients[row] * Cofactors[row, column] * coefficients[column];
        return Math.Sqrt(Math.Max(0, sum));
    }
}
