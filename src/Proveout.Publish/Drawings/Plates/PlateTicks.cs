namespace Proveout.Publish.Drawings;

/// <summary>Round figures along an axis.</summary>
internal static class PlateTicks
{
    private static readonly double[] RoundFigures = [1, 2, 5, 10];

    /// <summary>Multiples of 1, 2 or 5 times a power of ten within two ends, at most some.</summary>
    public static IEnumerable<double> Between(double from, double to, int most)
    {
        var least = (to - from) / most;
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        var step = RoundFigures.Select(factor => factor * power).First(each => each >= least * (1 - 1e-9));
        for (var index = Math.Ceiling((from / step) - 1e-9); index * step <= to + (1e-9 * step); index++)
            yield return index * step;
    }

    /// <summary>A figure without digits that say nothing; the addition takes the sign from a zero.</summary>
    public static string Words(double value) => (Math.Round(value, 6) + 0.0).ToString("0.######", System.Globalization.CultureInfo.InvariantCulture).Replace('-', '−');
}
