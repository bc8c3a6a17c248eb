using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Keeps measurements and their data files in the record of a build.</summary>
public interface IMeasuringDesk
{
    /// <summary>Keeps a measurement.</summary>
    Task<Outcome<KeptMeasurement>> KeepAsync(string buildId, MeasurementRequest request, CancellationToken cancellation);

    /// <summary>Every measurement of a build, oldest first; null when there is no such build.</summary>
    Task<IReadOnlyList<KeptMeasurement>?> OfBuildAsync(string buildId, CancellationToken cancellation);

    /// <summary>The data file of a measurement by its hash; null when the build has none of it.</summary>
    Task<MeasuredFile?> FileAsync(string buildId, string sha256, CancellationToken cancellation);
}
