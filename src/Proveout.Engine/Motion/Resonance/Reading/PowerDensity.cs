namespace Proveout.Engine.Motion;

/// <summary>Power spectral density of one direction, one-sided.</summary>
/// <param name="BinHertz">Distance of two values.</param>
/// <param name="Values">Density at each multiple of it, in (m/s²)²/Hz.</param>
/// <param name="Highest">The highest that any segment had there: what a sweep leaves behind it.</param>
/// <param name="Segments">How many segments were averaged.</param>
public sealed record PowerDensity(double BinHertz, IReadOnlyList<double> Values, IReadOnlyList<double> Highest, int Segments)
{
    /// <summary>Bandwidth of the window in bins: Hann 1.5 (F. J. Harris, Proc. IEEE 66 (1978) 51-83, table 1).</summary>
    public const double WindowBins = 1.5;

    /// <summary>
    /// Independent segments that scatter as much: neighbours that overlap by half share something (P. D. Welch, IEEE Trans. Audio Electroacoustics 15 (1967) 70-73; for the Hann window the
    /// squared correlation is 1/36).
    /// </summary>
    public double IndependentSegments => Segments / (1 + (2.0 / 36 * (1 - (1.0 / Segments))));

    /// <summary>Mean square between two frequencies, in (m/s²)².</summary>
    public double MeanSquare(double fromHertz, double toHertz)
    {
        var sum = 0.0;
        for (var bin = Math.Max(0, (int)Math.Ceiling(fromHertz / BinHertz)); bin < Values.Count && bin * BinHertz <= toHertz; bin++)
            sum += Values[bin];
        return sum * BinHertz;
    }
}
