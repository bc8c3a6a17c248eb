using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Opens the parcel: which parts of a build came, which did not, and which came as another.</summary>
public interface IReceivingDesk
{
    /// <summary>Every part of the build's machine in the order of the part list; null when there is no such build.</summary>
    Task<IReadOnlyList<ArrivedPart>?> PartsAsync(string buildId, CancellationToken cancellation);

    /// <summary>Puts down what came of a part; a later answer stands in the place of an earlier one.</summary>
    Task<Outcome<ArrivedPart>> NoteAsync(string buildId, ArrivalRequest request, CancellationToken cancellation);
}
