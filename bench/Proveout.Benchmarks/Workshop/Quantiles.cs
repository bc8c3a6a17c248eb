namespace Proveout.Benchmarks.Workshop;

/// <summary>Quantiles of measured times.</summary>
internal static class Quantiles
{
    /// <summary>The smallest value that at least this share does not exceed.</summary>
    /// <param name="sorted">The values, rising.</param>
    /// <param name="share">Above 0, at most 1.</param>
    public static double At(double[] sorted, double share) => sorted[(int)Math.Ceiling(share * sorted.Length) - 1];
}
