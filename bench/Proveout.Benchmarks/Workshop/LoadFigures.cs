using System.Globalization;

namespace Proveout.Benchmarks.Workshop;

/// <summary>What a load came to; the processor time is that of browsers and server together, without the database's own processes.</summary>
internal sealed record LoadFigures(double RequestsPerSecond, double Median, double Slowest, double SlowestEntering, double ProcessorMilliseconds)
{
    public static LoadFigures Of(double[] requests, double[] entered, TimeSpan elapsed, TimeSpan processor)
    {
        Array.Sort(requests);
        Array.Sort(entered);
        return new(
            requests.Length / elapsed.TotalSeconds, Quantiles.At(requests, 0.5), Quantiles.At(requests, 0.99), Quantiles.At(entered, 0.99), processor.TotalMilliseconds / requests.Length);
    }

    public string Row(string store, LoadFigures bare) => string.Create(
        CultureInfo.InvariantCulture,
        $"| {store} | {RequestsPerSecond:F0} | {Median:F1} | {Slowest:F1} | {SlowestEntering:F1} | {ProcessorMilliseconds:F2} | {RequestsPerSecond / bare.RequestsPerSecond:F3} | {ProcessorMilliseconds / bare.ProcessorMilliseconds:F1} |");
}
