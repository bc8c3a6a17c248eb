namespace Proveout.Engine.Heat;

/// <summary>How often a guard stopped a heater.</summary>
/// <param name="Tried">Heaters that were tried.</param>
/// <param name="Tripped">Those that it stopped.</param>
public readonly record struct GuardCount(int Tried, int Tripped)
{
    /// <summary>Largest share that it may stop in truth, with 95 % confidence: 3/n when none was (rule of three; J. A. Hanley and A. Lippman-Hand, JAMA 249 (1983) 1743).</summary>
    /// <remarks>Otherwise by the upper limit of Wilson's interval, one-sided (E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209-212).</remarks>
    public double MostShare => Tripped == 0 ? Math.Min(1, 3.0 / Tried) : Wilson(Tripped);

    /// <summary>Largest share that it may miss in truth, with 95 % confidence.</summary>
    public double MostMissed => Tripped == Tried ? Math.Min(1, 3.0 / Tried) : Wilson(Tried - Tripped);

    private double Wilson(int count)
    {
        const double Z = 1.645;
        var (n, p) = ((double)Tried, (double)count / Tried);
        return Math.Min(1, (p + (Z * Z / (2 * n)) + (Z * Math.Sqrt((p * (1 - p) / n) + (Z * Z / (4 * n * n))))) / (1 + (Z * Z / n)));
    }
}
