using System.Globalization;

namespace Proveout.Benchmarks.Workshop;

/// <summary>What a load came to; the processor time is that of browsers and server together, without the database's own processes.</summary>
internal sealed record LoadFigures(double RequestsPerSecond, double Median, double Slowest, double SlowestEntering, double ProcessorMilliseconds)
{
    public static LoadFigures Of(double[] requests, double[] entered, TimeSpan elapsed, TimeSpan processor) => new(
        requests.Length / elapsed.TotalSeconds, Quantile(requests, 0.5), Quantile(requests, 0.99), Quantile(entered, 0.99), processor.TotalMilliseconds / requests.Length);

    public string Row(string store, LoadFigures bare) => string.Create(
        CultureInfo.InvariantCulture,
        $"| {store} | {RequestsPerSecond:F0} | {Median:F1} | {Slowest:F1} | {SlowestEntering:F1} | {ProcessorMilliseconds:F2} | {RequestsPerSecond / bare.RequestsPerSecond:F3} | {ProcessorMilliseconds / bare.ProcessorMilliseconds:F1} |");

    /// <summary>The smallest value that at least this share does not exceed.</summary>
    private static double Quantile(double[] values, double share) => values.Order().ElementAt((int)Math.Ceiling(share * values.Length) - 1);
}
