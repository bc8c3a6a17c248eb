using System.Diagnostics.Metrics;
using System.Globalization;

namespace Proveout.Benchmarks.Workshop;

/// <summary>Milliseconds that a server of this process took for each request since this was made, by the framework's own instrument.</summary>
internal sealed class ServerTimes : IDisposable
{
    private readonly MeterListener _listener = new();
    private readonly List<double> _milliseconds = [];
    private readonly Lock _lock = new();

    public ServerTimes()
    {
        _listener.InstrumentPublished = (instrument, listener) =>
        {
            if (instrument.Name == "http.server.request.duration")
                listener.EnableMeasurementEvents(instrument);
        };
        _listener.SetMeasurementEventCallback<double>((_, seconds, _, _) =>
        {
            lock (_lock)
                _milliseconds.Add(1e3 * seconds);
        });
        _listener.Start();
    }

    public string Row(string name, TimeSpan elapsed, double busy)
    {
        lock (_lock)
        {
            double[] sorted = [.. _milliseconds.Order()];
            return string.Create(
                CultureInfo.InvariantCulture,
                $"| {name} | {sorted.Length} | {sorted.Length / elapsed.TotalSeconds:F1} | {Quantiles.At(sorted, 0.5):F1} | {Quantiles.At(sorted, 0.95):F1} | {Quantiles.At(sorted, 0.99):F1} | {sorted[^1]:F1} | {busy:P0} |");
        }
    }

    public void Dispose() => _listener.Dispose();
}
