using System.Diagnostics.Metrics;
using Proveout.Workshop;

namespace Proveout.Web.Hosting.Watching;

/// <summary>What the bench itself counts.</summary>
internal static class BenchMeter
{
    private static readonly Meter Meter = new("Proveout", ProgramVersion.Number);

    /// <summary>Windows that wait to be told of entries.</summary>
    public static UpDownCounter<long> Watching { get; } = Meter.CreateUpDownCounter<long>("proveout.bench.watching", "{window}", "Open windows that are told of new entries.");

    /// <summary>Always 1; its label says which Proveout this is.</summary>
    public static ObservableGauge<long> Version { get; } = Meter.CreateObservableGauge(
        "proveout.version", () => new Measurement<long>(1, new KeyValuePair<string, object?>("version", ProgramVersion.Number)), null, "Which Proveout this is.");
}
