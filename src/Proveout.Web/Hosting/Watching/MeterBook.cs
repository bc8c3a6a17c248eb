using System.Collections.Concurrent;
using System.Diagnostics.Metrics;

namespace Proveout.Web.Hosting.Watching;

/// <summary>
/// Keeps what the instruments of this program, of its web server and of its runtime count and measure, to be told when asked.
/// Nothing is sent anywhere. The names are those of OpenTelemetry's semantic conventions, which the framework's instruments have.
/// </summary>
internal sealed class MeterBook : IDisposable
{
    // Our own is asked for its name, so that it is made before the listener starts: what is made while it starts it does not hear of.
    private readonly string[] _meters = [BenchMeter.Version.Meter.Name, "Proveout.Journal", "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "System.Runtime"];

    private readonly ConcurrentDictionary<string, MetricFamily> _families = new(StringComparer.Ordinal);
    private readonly MeterListener _listener;

    /// <summary>Begins to listen.</summary>
    /// <param name="ours">Made the instruments of this host; those of another host in the same process do not count.</param>
    public MeterBook(IMeterFactory ours)
    {
        _listener = new MeterListener
        {
            InstrumentPublished = (instrument, listener) =>
            {
                if (_meters.Contains(instrument.Meter.Name) && (instrument.Meter.Scope is null || ReferenceEquals(instrument.Meter.Scope, ours)))
                    listener.EnableMeasurementEvents(instrument, _families.GetOrAdd(instrument.Name, _ => MetricFamily.Of(instrument)));
            },
        };
        _listener.SetMeasurementEventCallback<int>((_, value, tags, family) => Take(family, value, tags));
        _listener.SetMeasurementEventCallback<long>((_, value, tags, family) => Take(family, value, tags));
        _listener.SetMeasurementEventCallback<double>((_, value, tags, family) => Take(family, value, tags));
        _listener.Start();
    }

    /// <summary>Everything as it is now, by name.</summary>
    public IReadOnlyList<MetricFamily> Read()
    {
        _listener.RecordObservableInstruments();
        return [.. _families.Values.OrderBy(family => family.Name, StringComparer.Ordinal)];
    }

    /// <summary>Listens no more.</summary>
    public void Dispose() => _listener.Dispose();

    private static void Take(object? family, double value, ReadOnlySpan<KeyValuePair<string, object?>> tags) => (family as MetricFamily)?.Take(value, tags);
}
