using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Starts a build in the journal with readings that were taken elsewhere.</summary>
/// <param name="bench">Keeps the record.</param>
public sealed class ImportedReadings(IBench bench)
{
    /// <summary>Starts the build and enters the readings in their order. Once begun it is not cancelled, so that no half of them is left.</summary>
    public async Task<Outcome<BenchState>> StartAsync(StartBuild start, IReadOnlyList<TypedReading> readings)
    {
        var started = await bench.StartAsync(start, CancellationToken.None);
        if (started.Value is not { } build)
            return Outcome.Refused<BenchState>(started.Diagnostics);
        foreach (var reading in readings)
        {
            var entered = await bench.EnterReadingAsync(
                build.Id, new ReadingRequest(reading.CheckId, reading.Text, start.Builder, Guid.CreateVersion7()), CancellationToken.None);
            if (entered.Value is null)
                return entered;
        }

        return Outcome.Of((await bench.StateAsync(build.Id, CancellationToken.None))!);
    }
}
