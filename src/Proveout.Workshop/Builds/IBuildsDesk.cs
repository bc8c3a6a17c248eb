using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Where many builds are looked at together, and where one learns from another.</summary>
public interface IBuildsDesk
{
    /// <summary>A page of all builds whose serial number, builder or machine holds a text, newest first.</summary>
    Task<Paged<BuildSummary>> FindAsync(BuildsQuery query, CancellationToken cancellation);

    /// <summary>Reads what all builds recorded, so that the first page does not wait for it.</summary>
    Task PrepareAsync(CancellationToken cancellation);

    /// <summary>All builds of a machine, side by side; null when there is no such machine.</summary>
    Task<MachineBuilds?> OfMachineAsync(string machineId, BuildsQuery query, CancellationToken cancellation);

    /// <summary>What other builds of the machine noted as different at this check or at what it touches, newest first.</summary>
    Task<IReadOnlyList<DeviationHint>> HintsAsync(string buildId, string checkId, CancellationToken cancellation);

    /// <summary>Enters whether what another build noted is so here too.</summary>
    Task<Outcome<BuildSummary>> AnswerAsync(string buildId, DeviationAnswer answer, CancellationToken cancellation);
}
