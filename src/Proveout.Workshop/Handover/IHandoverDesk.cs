using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Hands a machine over to use: what its controllers have to be told, and what to watch afterwards.</summary>
public interface IHandoverDesk
{
    /// <summary>The settings of a machine as designed; null when there is no such machine.</summary>
    SettingsView? SettingsOfMachine(string machineId);

    /// <summary>The settings of a build, with what was measured on it; null when there is no such build or its machine is not at hand.</summary>
    Task<SettingsView?> SettingsOfBuildAsync(string buildId, CancellationToken cancellation);

    /// <summary>What to watch, prove and look at again of a machine; null when there is no such machine.</summary>
    AcceptanceView? AcceptanceOfMachine(string machineId);

    /// <summary>The same for a build, with what was found; null when there is no such build or its machine is not at hand.</summary>
    Task<BuildAcceptance?> AcceptanceOfBuildAsync(string buildId, CancellationToken cancellation);

    /// <summary>Keeps what was found of an item.</summary>
    /// <param name="buildId">The build.</param>
    /// <param name="itemId">The item.</param>
    /// <param name="found">One of <see cref="AcceptanceAnswers"/>.</param>
    /// <param name="note">What was noted; needed when it is not good.</param>
    /// <param name="person">Who looked.</param>
    /// <param name="key">Made by the face once a form.</param>
    /// <param name="cancellation">Stops it.</param>
    Task<Outcome<KeptMeasurement>> AcceptAsync(string buildId, string itemId, string found, string note, string person, Guid key, CancellationToken cancellation);
}
